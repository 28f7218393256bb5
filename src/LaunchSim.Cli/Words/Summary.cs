using LaunchSim.Cli.Output;
using LaunchSim.Figures;

namespace LaunchSim.Cli.Words;

/// <summary>What a launch does, in plain sentences: the register of sentence builders, one line a subject.</summary>
internal static class Summary
{
    private static readonly Func<FigureSet, Readout, IEnumerable<string>>[] Subjects =
    [
        RiseWords.Of,
        GapWords.Of,
        SeparationWords.Of,
        RearLoadWords.Of,
        StopWords.Of,
        SpringWords.Of,
        TireWords.Front,
        TireWords.Rear,
        WheelieBarWords.Of,
        GripWords.Of,
        DrivelineWords.Of,
        MarkWords.Of,
    ];

    /// <summary>All sentences in order.</summary>
    /// <param name="figures">The launch's figures.</param>
    /// <param name="readout">The units.</param>
    public static IReadOnlyList<string> Of(FigureSet figures, Readout readout) =>
        figures["run_end_s"] is > 0 ? [.. Subjects.SelectMany(subject => subject(figures, readout))] : [];
}
