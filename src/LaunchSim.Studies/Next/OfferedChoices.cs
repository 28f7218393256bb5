using System.Globalization;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;
using LaunchSim.Scenarios.Varying;

namespace LaunchSim.Studies.Next;

/// <summary>
/// What can sensibly be changed on a car whose file has no <c>choices</c>: the holes that it has, its clicks, pressure, springs and
/// ride height, by steps and minutes that are usual (common practice, no source).
/// </summary>
public static class OfferedChoices
{
    private const double MinutesForHole = 15, MinutesForClicks = 1, MinutesForPressure = 2, MinutesForSpring = 40, MinutesForRideHeight = 20;

    /// <summary>The choices, those that the scenario allows.</summary>
    /// <param name="scenario">The scenario, read for a run.</param>
    public static IReadOnlyList<Variation> Of(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var all = new List<Variation>();
        foreach (string bracket in scenario.Brackets.Where(bracket => bracket.Value.Holes.Count > 1).Select(bracket => bracket.Key))
        {
            Add($"{bracket}.use", "all", MinutesForHole);
        }

        foreach ((string side, ClickInfo clicks) in scenario.Clicks)
        {
            (double least, double most) = (Math.Max(clicks.Entered[0], clicks.Set - 2), Math.Min(clicks.Entered[^1], clicks.Set + 2));
            Add($"{side}.set", Range(clicks.Set, 1, least, most, ""), MinutesForClicks);
        }

        Steps("rear.tire.pressure.set", unit => unit switch { "psi" => 0.5, "bar" => 0.05, "kPa" => 5, _ => 0 }, MinutesForPressure);
        Steps("rear.spring.rate", unit => unit switch { "lb/in" => 25, "N/mm" => 5, _ => 0 }, MinutesForSpring);
        Steps("front.spring.rate", unit => unit switch { "lb/in" => 25, "N/mm" => 5, _ => 0 }, MinutesForSpring);
        bool shop = scenario.UnitSystem == UnitSystem.Shop;
        if (scenario.Find("car.ride_height.rear") is { } height)
        {
            double step = height.Unit.Text switch { "in" => 0.25, "mm" => 5, "cm" => 0.5, _ => 0 };
            Add("car.ride_height.rear", step > 0 ? Around(height.Numbers[0], step, height.Unit.Text) : "", MinutesForRideHeight);
        }
        else
        {
            Add("car.ride_height.rear", shop ? Around(0, 0.25, "in") : Around(0, 5, "mm"), MinutesForRideHeight);
        }

        return all;

        void Steps(string path, Func<string, double> stepOf, double minutes)
        {
            if (scenario.Find(path) is { Count: 1 } now && stepOf(now.Unit.Text) is > 0 and var step)
            {
                Add(path, Around(now.Numbers[0], step, now.Unit.Text), minutes);
            }
        }

        void Add(string path, string values, double minutes)
        {
            // What this car does not allow is not offered.
            if (values.Length > 0 && VariationReader.Read(scenario, [$"{path}={values}"], "offered") is { Variations: [var variation] } && variation.Values.Count > 1)
            {
                all.Add(variation with { Minutes = minutes });
            }
        }
    }

    private static string Around(double now, double step, string unit) => Range(now, step, now - (2 * step), now + (2 * step), unit);

    // From the present value outwards, so that it is among them to the last digit.
    private static string Range(double now, double step, double least, double most, string unit)
    {
        IEnumerable<double> numbers = Enumerable.Range(-2, 5).Select(i => i == 0 ? now : Math.Round(now + (i * step), 10)).Where(number => number >= least - 1e-9 && number <= most + 1e-9);
        return $"{string.Join(' ', numbers.Select(number => number.ToString("R", CultureInfo.InvariantCulture)))} {unit}".Trim();
    }
}
