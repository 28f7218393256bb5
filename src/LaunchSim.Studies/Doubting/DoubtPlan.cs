using System.Globalization;
using LaunchSim.Figures;
using LaunchSim.Reports.Decisive;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Running;
using LaunchSim.Vehicle;

namespace LaunchSim.Studies.Doubting;

/// <summary>What a study of a car's doubts runs, and what it reads of each launch. Immutable.</summary>
public sealed class DoubtPlan
{
    // What a person compares by, beside the aims and the answer; in the order of the catalogue.
    private static readonly string[] Usual =
    [
        "standing_anti_squat_percent", "rear_tire_load_static_n", "rear_rise_peak_m", "front_rise_peak_m", "rise_lag_s", "gap_lag_s",
        "separation_peak_m", "separation_peak_travel_left_m", "squat_peak_m", "hit_n", "lowest_rear_load_after_hit_n", "load_unrest_n",
        "front_tire_zero_load_time_s", "grip_margin_lowest_ratio", "slip_beyond_peak_time_s",
    ];

    /// <summary>A plan.</summary>
    /// <param name="scenario">The scenario, read for a run.</param>
    /// <param name="aims">What is wanted.</param>
    /// <param name="settings">How cars are drawn and launched.</param>
    public DoubtPlan(Scenario scenario, AimSet aims, DoubtSettings settings)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(aims);
        ArgumentNullException.ThrowIfNull(settings);
        (Scenario, Aims, Settings) = (scenario, aims, settings);
        Run = scenario.Run with { Tolerance = settings.Tolerance };
        Plausible = new PlausibleCars([scenario], settings.Seed, settings.WithTypical, settings.Correlations);
        IEnumerable<string> marks = Enumerable.Range(1, Run.Marks.Count).Select(mark => string.Create(CultureInfo.InvariantCulture, $"mark_{mark}_time_s"));
        var wanted = new HashSet<string>([.. aims.Keys, .. AnswerFigures.All.Select(figure => figure.Key), .. Usual, .. marks], StringComparer.Ordinal);
        Figures = [.. FigureCatalog.For(Run.Marks.Count).Definitions.Where(figure => wanted.Contains(figure.Key))];
        string[] keys = [.. Figures.Select(figure => figure.Key)];
        AimPlaces = [.. aims.Keys.Select(key => Array.IndexOf(keys, key))];
    }

    /// <summary>The scenario.</summary>
    public Scenario Scenario { get; }

    /// <summary>What is wanted.</summary>
    public AimSet Aims { get; }

    /// <summary>How cars are drawn and launched.</summary>
    public DoubtSettings Settings { get; }

    /// <summary>Duration, marks and tolerance of all launches.</summary>
    public RunSettings Run { get; }

    /// <summary>The cars.</summary>
    public PlausibleCars Plausible { get; }

    /// <summary>The numbers that are drawn.</summary>
    public IReadOnlyList<DoubtfulNumber> Numbers => Plausible.Numbers;

    /// <summary>The figures that are read of each launch, in the order of the catalogue.</summary>
    public IReadOnlyList<FigureDefinition> Figures { get; }

    /// <summary>Where the figures that the aims need stand among <see cref="Figures"/>.</summary>
    internal int[] AimPlaces { get; }

    /// <summary>Scores a launch by its figures.</summary>
    /// <param name="figures">In the order of <see cref="Figures"/>.</param>
    public AimScore Score(ReadOnlySpan<double> figures) => Aims.Score(ForAims(figures, stackalloc double[AimPlaces.Length]));

    /// <summary>Picks the figures that the aims need.</summary>
    /// <param name="figures">In the order of <see cref="Figures"/>.</param>
    /// <param name="room">Receives them in the order of the aims' keys.</param>
    internal Span<double> ForAims(ReadOnlySpan<double> figures, Span<double> room)
    {
        for (int i = 0; i < AimPlaces.Length; i++)
        {
            room[i] = figures[AimPlaces[i]];
        }

        return room;
    }

    /// <summary>What decides the content of the table.</summary>
    /// <param name="shard">The part that is run.</param>
    /// <param name="program">The program with its version.</param>
    public StudyIdentity Identity(Shard shard, string program) => new(
    [
        new("study", "doubt"),
        new("program", program),
        new("scenario", Scenario.ContentHash),
        .. Numbers.Select(number => new KeyValuePair<string, string>($"doubt {number.Path}", string.Join(" | ", number.Edits(1).Select(edit => edit.ToString())))),
        .. Aims.Facts,
        new("seed", Settings.Seed.ToString(CultureInfo.InvariantCulture)),
        new("tolerance", Settings.Tolerance.ToString("R", CultureInfo.InvariantCulture)),
        new("rows", Settings.Cars.ToString(CultureInfo.InvariantCulture)),
        new("part", shard.ToString()),
    ]);
}
