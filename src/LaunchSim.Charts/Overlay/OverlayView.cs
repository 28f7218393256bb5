using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.Launch;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Charts.Overlay;

/// <summary>What the pictures of several launches are drawn from.</summary>
internal sealed class OverlayView
{
    /// <summary>Several launches.</summary>
    /// <param name="launches">The launches, the first the one that the others are compared with.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version, for the foot of each picture.</param>
    public OverlayView(IReadOnlyList<OverlayLaunch> launches, Readout readout, string program)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(launches.Count, OverlayPens.All.Count);
        ArgumentOutOfRangeException.ThrowIfZero(launches.Count);
        (Readout, Program) = (readout, program);
        Launches = [.. launches.Select((launch, i) => new Overlaid(launch.Name, new LaunchView(launch.Run, readout, program), OverlayPens.All[i]))];
    }

    /// <summary>The launches.</summary>
    public IReadOnlyList<Overlaid> Launches { get; }

    /// <summary>The units.</summary>
    public Readout Readout { get; }

    /// <summary>Program and version.</summary>
    public string Program { get; }

    /// <summary>Where time axes end, s.</summary>
    public double End => Launches.Max(launch => launch.View.End);

    /// <summary>A value of each launch in a sentence, as in <c>A 47 ms, B 12 ms</c>.</summary>
    /// <param name="value">The words for one launch.</param>
    public string Each(Func<LaunchView, string> value) => string.Join(", ", Launches.Select(launch => $"{launch.Name} {value(launch.View)}"));
}

/// <summary>One launch of an overlay.</summary>
/// <param name="Name">What stands at its curves.</param>
/// <param name="View">The launch.</param>
/// <param name="Pen">Its line.</param>
internal sealed record Overlaid(string Name, LaunchView View, Pen Pen);
