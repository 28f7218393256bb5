using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>What a launch does, in plain sentences: the register of sentence builders, one line a subject.</summary>
public static class Summary
{
    private static readonly Action<FigureSet, Readout, List<string>>[] Subjects =
    [
        PitchWords.Say,
        RiseWords.Say,
        GapWords.Say,
        SeparationWords.Say,
        RearLoadWords.Say,
        StopWords.Say,
        SpringWords.Say,
        TireWords.Front,
        TireWords.Rear,
        WheelieBarWords.Say,
        GripWords.Say,
        DrivelineWords.Say,
        MarkWords.Say,
    ];

    /// <summary>All sentences in order.</summary>
    /// <param name="figures">The launch's figures.</param>
    /// <param name="readout">The units.</param>
    public static List<string> Of(FigureSet figures, Readout readout)
    {
        var said = new List<string>();
        if (figures["run_end_s"] is > 0)
        {
            foreach (Action<FigureSet, Readout, List<string>> subject in Subjects)
            {
                subject(figures, readout, said);
            }
        }

        return said;
    }
}
