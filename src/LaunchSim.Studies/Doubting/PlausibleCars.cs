using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Studies.Chance;
using LaunchSim.Vehicle;

namespace LaunchSim.Studies.Doubting;

/// <summary>
/// The cars that may stand behind what was measured: each doubtful number drawn from its doubt, quasi-random and seeded, and
/// for every set-up compared the same draw. A car's number gives its draw, in whatever order and on whatever thread it is
/// asked for. Immutable.
/// </summary>
public sealed class PlausibleCars
{
    /// <summary>So often a car is drawn again before it is given up.</summary>
    public const int MostDraws = 50;

    // Draws that take the place of impossible ones come from far along the sequence, where no first draw is.
    private const long Again = 1L << 32;

    private static readonly string[] Tires = ["front.tire", "rear.tire"];

    private readonly HaltonSequence _sequence;
    private readonly (DoubtfulNumber Number, int Dimension)[][] _numbers;

    /// <summary>The plausible cars of one set-up or of several.</summary>
    /// <param name="setUps">The set-ups, read for a run; at least one.</param>
    /// <param name="seed">Seed of the draw.</param>
    /// <param name="withTypical">Whether numbers without a doubt of their own are drawn from the usual one; they are anyway when no doubt was entered at all.</param>
    public PlausibleCars(IReadOnlyList<Scenario> setUps, ulong seed, bool withTypical)
    {
        ArgumentNullException.ThrowIfNull(setUps);
        SetUps = setUps;
        IReadOnlyList<DoubtfulNumber>[] all = [.. setUps.Select(DoubtfulNumbers.Of)];
        UsesTypical = withTypical || !all.Any(numbers => numbers.Any(number => number.IsEntered));
        var paths = new List<string>();
        var numbers = new List<DoubtfulNumber>();
        foreach (DoubtfulNumber number in all.SelectMany(numbers => numbers).Where(number => UsesTypical || number.IsEntered))
        {
            if (!paths.Contains(number.Path))
            {
                paths.Add(number.Path);
                numbers.Add(number);
            }
        }

        Numbers = numbers;
        _numbers = [.. all.Select(own => own.Where(number => paths.Contains(number.Path)).Select(number => (number, paths.IndexOf(number.Path))).ToArray())];
        _sequence = new HaltonSequence(Math.Max(1, paths.Count), seed);
    }

    /// <summary>The set-ups.</summary>
    public IReadOnlyList<Scenario> SetUps { get; }

    /// <summary>The numbers that are drawn, each once.</summary>
    public IReadOnlyList<DoubtfulNumber> Numbers { get; }

    /// <summary>Whether usual doubts are among them.</summary>
    public bool UsesTypical { get; }

    /// <summary>The uniform draw of a car, before it was looked at.</summary>
    /// <param name="car">The car's number, from 0.</param>
    /// <param name="draw">Which draw of it, from 0.</param>
    /// <param name="u">Receives a number within 0 and 1 for each of <see cref="Numbers"/>.</param>
    public void Uniform(long car, int draw, Span<double> u)
    {
        if (Numbers.Count > 0)
        {
            _sequence.Point(car + (draw * Again), u);
        }
    }

    /// <summary>A car drawn for all set-ups: drawn again while one of them would be refused.</summary>
    /// <param name="car">The car's number, from 0.</param>
    /// <param name="u">Receives the uniform draw that was taken.</param>
    /// <param name="stands">Tells whether a car can stand; a car that cannot is drawn again.</param>
    public PlausibleCar Draw(long car, Span<double> u, Func<Car, bool> stands)
    {
        ArgumentNullException.ThrowIfNull(stands);
        var cars = new Car[SetUps.Count];
        for (int draw = 0; draw < MostDraws; draw++)
        {
            Uniform(car, draw, u);
            int made = 0;
            while (made < cars.Length && Make(made, u) is { } own && stands(own))
            {
                cars[made++] = own;
            }

            if (made == cars.Length)
            {
                return new PlausibleCar(cars, draw);
            }
        }

        return new PlausibleCar(null, MostDraws);
    }

    private Car? Make(int setUp, ReadOnlySpan<double> u)
    {
        var edits = new List<ScenarioEdit>(64);
        foreach ((DoubtfulNumber number, int dimension) in _numbers[setUp])
        {
            // Half the entered width is one standard deviation.
            edits.AddRange(number.Edits(0.5 * NormalQuantile.Of(u[dimension])));
        }

        Scenario scenario = SetUps[setUp];
        return edits.Count == 0 ? scenario.Car : scenario.With(edits, putsTogether: false).Scenario?.Car is { } car ? KeepShape(scenario, car, edits) : null;
    }

    /// <summary>
    /// Grip and peak slip are drawn apart from the slip stiffness, but a tyre with more grip is no other rubber: the stiffness
    /// follows grip over peak slip, so that the curve keeps its shape.
    /// </summary>
    private static Car KeepShape(Scenario scenario, Car car, List<ScenarioEdit> edits)
    {
        foreach (string at in Tires)
        {
            if (!edits.Exists(edit => edit.Path == at + ".grip" || edit.Path == at + ".peak_slip"))
            {
                continue;
            }

            bool front = at == Tires[0];
            (Tire before, Tire drawn) = front ? (scenario.Car!.Front.Tire, car.Front.Tire) : (scenario.Car!.Rear.Tire, car.Rear.Tire);
            double share = drawn.Grip / before.Grip / (drawn.PeakSlip / before.PeakSlip);
            Tire kept = drawn with { SlipStiffness = drawn.SlipStiffness * share };
            car = front ? car with { Front = car.Front with { Tire = kept } } : car with { Rear = car.Rear with { Tire = kept } };
        }

        return car;
    }
}

/// <summary>One draw.</summary>
/// <param name="Cars">The car for each set-up; null when none could be drawn that all set-ups allow.</param>
/// <param name="Redrawn">How often it was drawn again.</param>
public readonly record struct PlausibleCar(IReadOnlyList<Car>? Cars, int Redrawn);
