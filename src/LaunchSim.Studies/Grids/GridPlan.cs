using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Running;
using LaunchSim.Vehicle;

namespace LaunchSim.Studies.Grids;

/// <summary>What a study over a grid of set-ups runs, and what it reads of each launch. Immutable.</summary>
public sealed record GridPlan
{
    /// <summary>The study.</summary>
    public required Study Study { get; init; }

    /// <summary>The set-ups.</summary>
    public required SetUpGrid Grid { get; init; }

    /// <summary>What is wanted.</summary>
    public required AimSet Aims { get; init; }

    /// <summary>Keys of the figures in the table, those of the aims included.</summary>
    public required IReadOnlyList<string> Figures { get; init; }

    /// <summary>Duration, marks and tolerance of all launches.</summary>
    public required RunSettings Settings { get; init; }

    /// <summary>The tolerance of studies unless another is asked for: figures are right to four digits or better.</summary>
    public const double Tolerance = 1e-6;

    /// <summary>A plan.</summary>
    /// <param name="study">The study.</param>
    /// <param name="grid">The set-ups.</param>
    /// <param name="aims">What is wanted.</param>
    /// <param name="figures">Keys of figures beside those of the aims.</param>
    /// <param name="tolerance">The tolerance of all launches.</param>
    public static GridPlan Of(Study study, SetUpGrid grid, AimSet aims, IEnumerable<string> figures, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(aims);
        return new GridPlan
        {
            Study = study,
            Grid = grid,
            Aims = aims,
            Figures = [.. aims.Keys, .. figures.Except(aims.Keys, StringComparer.Ordinal)],
            Settings = study.Scenario.Run with { Tolerance = tolerance },
            HoldsGrip = grid.Variations.Any(variation => variation.Path.EndsWith(".pressure.set", StringComparison.Ordinal)),
        };
    }

    /// <summary>Whether what is varied touches a pressure with a grip slope: then set-ups are ranked with the grip held.</summary>
    public bool HoldsGrip { get; private init; }

    /// <summary>What decides the content of the table.</summary>
    /// <param name="kind">What kind of study it is.</param>
    /// <param name="shard">The part that is run.</param>
    /// <param name="program">The program with its version.</param>
    public StudyIdentity Identity(string kind, Shard shard, string program) => new(
    [
        new("study", kind),
        new("program", program),
        new("scenario", Study.Scenario.ContentHash),
        new("cars", CarsHash()),
        .. Grid.Variations.Select(variation => new KeyValuePair<string, string>($"vary {variation.Path}", string.Join(" | ", variation.Values.Select(value => value.Value)))),
        .. Aims.Facts,
        new("figures", string.Join(' ', Figures)),
        new("tolerance", Settings.Tolerance.ToString("R", CultureInfo.InvariantCulture)),
        new("rows", Grid.Size.ToString(CultureInfo.InvariantCulture)),
        new("part", shard.ToString()),
    ]);

    // A hole that is not in use, or a row of clicks, is no part of the scenario's own hash; as a value it is.
    private string CarsHash()
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (ScenarioEdit value in Grid.Variations.SelectMany(variation => variation.Values))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(Study.Scenario.With([value], putsTogether: false).Scenario?.ContentHash ?? "refused"));
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
