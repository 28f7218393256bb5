using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;

namespace LaunchSim.Passes.Fitting;

/// <summary>One pass made ready for the fit.</summary>
internal sealed class PassModel
{
    // A launch is over long before; what comes later says nothing of how the car left.
    public const double From = -0.1, To = 1.2;

    private readonly SeenResiduals _seen;

    private PassModel(FitPass pass, IReadOnlyList<FitParameter?> own, RunSettings settings, LogModel[] logs, SeenResiduals seen)
    {
        (Pass, Own, Settings, Logs, _seen) = (pass, own, settings, logs, seen);
        Clocks = [.. logs.Select(log => new FitClock(log.Log.Name, log.Log.ShiftSd)), .. seen.HasClock ? [new FitClock($"{pass.Name}, what was seen", seen.ClockSd)] : Array.Empty<FitClock>()];
        ResidualCount = logs.Sum(log => log.Channels.Sum(channel => channel.Count)) + seen.Count;
    }

    public FitPass Pass { get; }

    /// <summary>The fit's numbers as this set-up has them; null where it has not.</summary>
    public IReadOnlyList<FitParameter?> Own { get; }

    public RunSettings Settings { get; }

    public LogModel[] Logs { get; }

    public IReadOnlyList<FitClock> Clocks { get; }

    public int ResidualCount { get; }

    public SeenResiduals Seen => _seen;

    public static PassModel Of(FitPass pass, IReadOnlyList<FitParameter> parameters)
    {
        RunSettings settings = FitModel.Settings(pass);
        LogModel[] logs = [.. pass.Logs.Select(log => new LogModel(log, [.. log.Series.Select(series => FitChannel.Of(series, From, To)).Where(channel => channel.Count > 0)]))];
        return new PassModel(pass, [.. parameters.Select(parameter => parameter.In(pass.SetUp))], settings, logs, SeenResiduals.Of(pass.Seen));
    }

    /// <summary>Residuals of all channels, then of what was seen.</summary>
    /// <param name="launch">The predicted launch.</param>
    /// <param name="clocks">The clocks' shifts in standard deviations.</param>
    /// <param name="residuals">Receives them.</param>
    public bool Residuals(LaunchSolution launch, ReadOnlySpan<double> clocks, Span<double> residuals)
    {
        int at = 0;
        for (int i = 0; i < Logs.Length; i++)
        {
            double shift = clocks[i] * Logs[i].Log.ShiftSd;
            foreach (FitChannel channel in Logs[i].Channels)
            {
                if (!channel.Residuals(launch, shift, residuals.Slice(at, channel.Count)))
                {
                    return false;
                }

                at += channel.Count;
            }
        }

        _seen.Write(launch, Settings, _seen.HasClock ? clocks[^1] * _seen.ClockSd : 0, residuals[at..]);
        return true;
    }
}

/// <summary>One log made ready.</summary>
/// <param name="Log">The log.</param>
/// <param name="Channels">Its channels.</param>
internal sealed record LogModel(FitLog Log, IReadOnlyList<FitChannel> Channels);
