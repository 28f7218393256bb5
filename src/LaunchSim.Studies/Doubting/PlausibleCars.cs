using LaunchSim.Launch;
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

    private readonly HaltonSequence _sequence;
    private readonly ulong _seed;
    private readonly Correlator? _correlator;
    private readonly (DoubtfulNumber Number, int Dimension)[][] _numbers;

    /// <summary>The plausible cars of one set-up or of several.</summary>
    /// <param name="setUps">The set-ups, read for a run; at least one.</param>
    /// <param name="seed">Seed of the draw.</param>
    /// <param name="withTypical">Whether numbers without a doubt of their own are drawn from the usual one; they are anyway when no doubt was entered at all.</param>
    /// <param name="correlations">How the numbers' doubts hang together, by path; null when they do not.</param>
    public PlausibleCars(IReadOnlyList<Scenario> setUps, ulong seed, bool withTypical, NormalCorrelations? correlations = null)
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
        _seed = seed;
        _correlator = correlations?.For(paths);
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
        if (Numbers.Count == 0)
        {
            return;
        }

        if (draw == 0)
        {
            _sequence.Point(car, u);
        }
        else
        {
            // Elsewhere on the sequence some coordinates would stay where they are, impossible again. Chance has no such habits.
            var random = new SplitMix64(SplitMix64.Stream(_seed, draw).Next() ^ new SplitMix64((ulong)car).Next());
            foreach (ref double value in u)
            {
                value = random.NextUniform();
            }
        }

        _correlator?.Correlate(u);
    }

    /// <summary>A car drawn for all set-ups: drawn again while one of them would be refused.</summary>
    /// <param name="car">The car's number, from 0.</param>
    /// <param name="u">Receives the uniform draw that was taken; of a car that was given up the last one.</param>
    public PlausibleCar Draw(long car, Span<double> u)
    {
        var cars = new StandingCar[SetUps.Count];
        string? refusal = null;
        for (int draw = 0; draw < MostDraws; draw++)
        {
            Uniform(car, draw, u);
            int made = 0;
            while (made < cars.Length && Make(made, u, ref refusal) is { } own)
            {
                cars[made++] = own;
            }

            if (made == cars.Length)
            {
                return new PlausibleCar(cars, draw, refusal);
            }

            if (Numbers.Count == 0)
            {
                // There is nothing that another draw would change.
                break;
            }
        }

        return new PlausibleCar(null, MostDraws, refusal);
    }

    /// <summary>How far a uniform draw moves a number, in shares of its doubt: half the entered width is one standard deviation.</summary>
    /// <param name="u">The draw, strictly between 0 and 1.</param>
    public static double ShareOfDoubt(double u) => 0.5 * NormalQuantile.Of(u);

    private StandingCar? Make(int setUp, ReadOnlySpan<double> u, ref string? refusal)
    {
        Scenario scenario = SetUps[setUp];
        var edits = new List<ScenarioEdit>(64);
        foreach ((DoubtfulNumber number, int dimension) in _numbers[setUp])
        {
            edits.AddRange(number.Edits(ShareOfDoubt(u[dimension])));
        }

        Car? car = scenario.Car;
        if (edits.Count > 0)
        {
            KeptTireShape.Keep(scenario, edits);
            ReadResult read = scenario.With(edits, putsTogether: false);
            car = read.Scenario?.Car;
            if (car is null)
            {
                // Without the number drawn, so that like refusals can be counted.
                Diagnostic error = read.Errors[0];
                refusal ??= $"{error.Path} beyond what is possible{(error.Allowed.Length > 0 ? $" ({error.Allowed})" : "")}";
                return null;
            }
        }

        if (!StandingCar.TryFind(car!, out StandingCar? standing, out IReadOnlyList<StandingProblem> problems))
        {
            refusal ??= $"{problems[0].Path}, with which the car cannot stand";
        }

        return standing;
    }
}

/// <summary>One draw.</summary>
/// <param name="Cars">The standing car for each set-up; null when none could be drawn that all set-ups allow.</param>
/// <param name="Redrawn">How often it was drawn again.</param>
/// <param name="Refusal">Why the first draw was impossible; null when it was not.</param>
public readonly record struct PlausibleCar(IReadOnlyList<StandingCar>? Cars, int Redrawn, string? Refusal);
