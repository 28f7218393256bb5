using System.Globalization;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Web.Desk;

/// <summary>
/// What may be moved on the desk: first what the file's <c>choices</c> name, with exactly their values, then what else one
/// would reach for at the track: holes, clicks, pressures, ride heights, springs, ballast.
/// </summary>
public static class Controls
{
    // More clicks than this are no adjuster; they are moved as a number.
    private const int MostClicks = 400;

    /// <summary>The controls of a scenario, in the order in which they are to be shown; a path once.</summary>
    /// <param name="scenario">The scenario, read for a run.</param>
    public static IReadOnlyList<Control> Of(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var all = new List<Control>();
        foreach (Choice choice in scenario.Choices)
        {
            all.Add(Chosen(scenario, choice));
        }

        foreach (Control control in Usual(scenario))
        {
            if (!all.Exists(one => one.Path == control.Path))
            {
                all.Add(control);
            }
        }

        return all;
    }

    private static Control Chosen(Scenario scenario, Choice choice) => new()
    {
        Path = choice.Path,
        Label = ControlWords.Of(scenario, choice.Path),
        Kind = choice.Path.EndsWith(".use", StringComparison.Ordinal) ? ControlKind.Holes : ControlKind.Steps,
        Value = scenario.FindText(choice.Path) ?? (scenario.Find(choice.Path) is { } now ? Plain(now) : ""),
        Unit = scenario.Find(choice.Path)?.Unit.Text ?? "",
        Values = choice.Values,
        Minutes = choice.Minutes,
        IsChoice = true,
    };

    private static IEnumerable<Control> Usual(Scenario scenario)
    {
        foreach ((string path, Bracket bracket) in scenario.Brackets.Where(bracket => bracket.Value.Holes.Count > 1))
        {
            yield return Listed(scenario, path + ".use", ControlKind.Holes, bracket.Use, [.. bracket.Holes.Select(hole => hole.Key)]);
        }

        foreach ((string side, ClickInfo clicks) in scenario.Clicks)
        {
            if (OfClicks(scenario, side + ".set", clicks) is { } control)
            {
                yield return control;
            }
        }

        bool isShop = scenario.UnitSystem == UnitSystem.Shop;
        foreach (string path in (string[])["front.tire.pressure.set", "rear.tire.pressure.set", "car.ride_height.front", "car.ride_height.rear", "front.spring.rate", "rear.spring.rate", .. Ballast(scenario)])
        {
            // A ride height that was left out is 0: it can be moved all the same.
            Quantity? now = scenario.Find(path);
            if (now is null && path.StartsWith("car.ride_height.", StringComparison.Ordinal))
            {
                _ = Quantity.TryParse(isShop ? "0 in" : "0 mm", QuantityKind.Length, out now, out _);
            }

            if (now is not null)
            {
                yield return Ranged(scenario, path, now);
            }
        }
    }

    private static Control? OfClicks(Scenario scenario, string path, ClickInfo clicks)
    {
        double first = Math.Ceiling(clicks.Entered[0] - 1e-9), last = Math.Floor(clicks.Entered[^1] + 1e-9);
        string now = clicks.Set.ToString("R", CultureInfo.InvariantCulture);
        if (!(last > first))
        {
            return null;
        }

        Control control = Listed(scenario, path, ControlKind.Steps, now, []);
        return last - first > MostClicks
            ? control with { Kind = ControlKind.Number, Range = new ControlRange(first, last, 1, "between the entered clicks") }
            : control with { Values = [.. Enumerable.Range(0, (int)(last - first) + 1).Select(i => (first + i).ToString("R", CultureInfo.InvariantCulture))] };
    }

    private static IEnumerable<string> Ballast(Scenario scenario)
    {
        for (int i = 0; scenario.Find(Path(i)) is not null; i++)
        {
            yield return Path(i);
        }

        static string Path(int i) => string.Create(CultureInfo.InvariantCulture, $"car.ballast[{i}].mass");
    }

    private static Control Listed(Scenario scenario, string path, ControlKind kind, string now, IReadOnlyList<string> values) =>
        new() { Path = path, Label = ControlWords.Of(scenario, path), Kind = kind, Value = now, Unit = "", Values = values };

    private static Control Ranged(Scenario scenario, string path, Quantity now) => new()
    {
        Path = path,
        Label = ControlWords.Of(scenario, path),
        Kind = ControlKind.Number,
        Value = Plain(now),
        Unit = now.Unit.Text,
        Range = ControlRanges.Of(path, now, KnownCar.Of(scenario)),
    };

    private static string Plain(Quantity quantity) => new Quantity(quantity.Numbers, quantity.Unit).ToString();
}
