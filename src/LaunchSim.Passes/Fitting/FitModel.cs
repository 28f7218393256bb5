using System.Collections.Concurrent;
using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;

namespace LaunchSim.Passes.Fitting;

/// <summary>
/// Passes and a car's doubtful numbers as one least-squares problem. The unknowns are the numbers, in standard deviations of what
/// the file knows of them, then a shift for each clock, in standard deviations of its zero. The residuals are the unknowns
/// themselves (the prior), then every channel's spans, then what was seen, all in standard deviations. Safe for several threads.
/// </summary>
public sealed class FitModel
{
    /// <summary>Relative tolerance of the launches: their noise is far below what a step of the fit changes.</summary>
    public const double Tolerance = 1e-7;

    // Beyond the last that was measured: for clocks that run late.
    private const double Margin = 0.05;

    // A prediction that is late by as much still comes to the beam, s.
    private const double BeyondBeam = 0.75;

    private readonly PassModel[] _passes;
    private readonly ConcurrentBag<FitWorkspace> _free = [];
    private long _launches;

    private FitModel(IReadOnlyList<FitParameter> parameters, PassModel[] passes)
    {
        (Parameters, _passes) = (parameters, passes);
        Clocks = [.. passes.SelectMany(pass => pass.Clocks)];
        Channels = [.. passes.SelectMany(pass => pass.Logs).SelectMany(log => log.Channels)];
        ResidualCount = Parameters.Count + Clocks.Count + passes.Sum(pass => pass.ResidualCount);
    }

    /// <summary>The numbers that are moved.</summary>
    public IReadOnlyList<FitParameter> Parameters { get; }

    /// <summary>The clocks whose zero is moved: those of logs and, where times were seen, that of who saw them.</summary>
    public IReadOnlyList<FitClock> Clocks { get; }

    /// <summary>How many unknowns.</summary>
    public int UnknownCount => Parameters.Count + Clocks.Count;

    /// <summary>How many residuals.</summary>
    public int ResidualCount { get; }

    /// <summary>Where the residuals of data begin.</summary>
    public int DataStart => UnknownCount;

    /// <summary>How many launches were solved so far.</summary>
    public long Launches => Interlocked.Read(ref _launches);

    internal IReadOnlyList<FitChannel> Channels { get; }

    internal IReadOnlyList<PassModel> Passes => _passes;

    /// <summary>Makes a model.</summary>
    /// <param name="parameters">The numbers that are moved.</param>
    /// <param name="passes">The passes.</param>
    public static FitModel Of(IReadOnlyList<FitParameter> parameters, IReadOnlyList<FitPass> passes)
    {
        ArgumentNullException.ThrowIfNull(parameters);
        ArgumentNullException.ThrowIfNull(passes);
        return new FitModel(parameters, [.. passes.Select(pass => PassModel.Of(pass, parameters))]);
    }

    /// <summary>The residuals.</summary>
    /// <param name="unknowns">The unknowns.</param>
    /// <param name="residuals">Receives them.</param>
    /// <returns>False where one of the cars is impossible or does not come to the end of its launch.</returns>
    public bool Residuals(ReadOnlySpan<double> unknowns, Span<double> residuals)
    {
        if (!_free.TryTake(out FitWorkspace? workspace))
        {
            workspace = Workspace();
        }

        try
        {
            unknowns.CopyTo(residuals);
            int at = UnknownCount, clock = Parameters.Count;
            for (int i = 0; i < _passes.Length; i++)
            {
                PassModel pass = _passes[i];
                if (workspace.Launch(i, pass, unknowns[..Parameters.Count]) is not { } launch
                    || !pass.Residuals(launch, unknowns.Slice(clock, pass.Clocks.Count), residuals.Slice(at, pass.ResidualCount)))
                {
                    return false;
                }

                at += pass.ResidualCount;
                clock += pass.Clocks.Count;
            }

            return true;
        }
        finally
        {
            _free.Add(workspace);
        }
    }

    /// <summary>What a fit makes as small as it can: the prior's squares and the data's costs; infinite where a car is impossible.</summary>
    internal double Sum(ReadOnlySpan<double> unknowns)
    {
        double[] residuals = new double[ResidualCount];
        if (!Residuals(unknowns, residuals))
        {
            return double.PositiveInfinity;
        }

        double sum = 0;
        for (int i = 0; i < residuals.Length; i++)
        {
            sum += (i < DataStart ? RobustLoss.None : RobustLoss.Huber).Cost(residuals[i]);
        }

        return double.IsFinite(sum) ? sum : double.PositiveInfinity;
    }

    internal FitWorkspace Workspace() => new(_passes.Length, () => Interlocked.Increment(ref _launches));

    /// <summary>The changes that put the numbers of one pass where the unknowns say.</summary>
    internal static List<ScenarioEdit> Edits(IReadOnlyList<FitParameter?> own, Scenario setUp, ReadOnlySpan<double> deviations)
    {
        var edits = new List<ScenarioEdit>(32);
        for (int i = 0; i < own.Count; i++)
        {
            if (own[i] is { } parameter && deviations[i] != 0)
            {
                edits.AddRange(parameter.Edits(deviations[i]));
            }
        }

        Scenarios.Doubtful.KeptTireShape.Keep(setUp, edits);
        return edits;
    }

    /// <summary>How long a pass is run for: for what was seen, and for what of its logs counts.</summary>
    internal static RunSettings Settings(FitPass pass)
    {
        RunSettings own = pass.Run;
        double measured = pass.Logs.SelectMany(log => log.Series).Where(series => series.Times.Count > 0).Select(series => series.Times[^1]).DefaultIfEmpty(0).Max();
        double needed = Math.Min(measured, PassModel.To) + Margin;
        double seen = pass.Seen.Marks.Count == 0 && !pass.Seen.Moments().Any() ? 0
            : own.Duration ?? (pass.Seen.Marks.Select(mark => mark.Time).DefaultIfEmpty(0).Max() + BeyondBeam);

        // What nobody looked at need not be run.
        double duration = Math.Max(needed, seen);
        return own with { Duration = duration, Tolerance = Tolerance };
    }
}

/// <summary>A clock whose zero a fit moves.</summary>
/// <param name="Name">Whose clock.</param>
/// <param name="Sd">One standard deviation of its zero, s.</param>
public sealed record FitClock(string Name, double Sd);
