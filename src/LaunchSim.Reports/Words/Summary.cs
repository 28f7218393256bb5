using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>What a launch does, in plain sentences: the register of sentence builders, one line a subject.</summary>
public static class Summary
{
    private const int Few = 3;

    private static readonly Action<FigureSet, Readout, List<Sentence>>[] Subjects =
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
    public static List<Sentence> Of(FigureSet figures, Readout readout)
    {
        var said = new List<Sentence>();
        if (figures["run_end_s"] is > 0)
        {
            foreach (Action<FigureSet, Readout, List<Sentence>> subject in Subjects)
            {
                subject(figures, readout, said);
            }
        }

        return said;
    }

    /// <summary>
    /// The sentences that matter most, three at the most, one a subject and without what stands behind a semicolon. What is alarming comes
    /// first: that the run stopped, that the car goes over, that the rear tyres leave the ground, that they spin, that
    /// the rear dampers reach a stop. The rest is who comes up first, how far body and axle move and what travel is left, and
    /// what grip there is to spare. The front's stops are left to the full report: they take nothing from the driven tyres.
    /// </summary>
    /// <param name="run">The launch.</param>
    /// <param name="readout">The units.</param>
    public static IReadOnlyList<Sentence> Foremost(LaunchOutcome run, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(run);
        FigureSet figures = run.Figures;
        var said = new List<Sentence>();
        if (run.Failure is { } failure)
        {
            said.Add(new("run.stopped", FailureWords.Of(failure)));
        }

        if (figures["run_end_s"] is > 0)
        {
            bool spins = figures["slip_beyond_peak_time_s"] is > 0;
            bool stops = figures.Events.First(LaunchEventKind.RearTopStop) is not null || figures.Events.First(LaunchEventKind.RearBottomStop) is not null;
            Action<FigureSet, Readout, List<Sentence>>[] alarming = [PitchWords.Say, TireWords.Rear, .. Where(spins, GripWords.Say), .. Where(stops, StopWords.Rear)];
            Action<FigureSet, Readout, List<Sentence>>[] calm = [RiseWords.Say, .. Where(!stops, SeparationWords.Say), .. Where(!spins, GripWords.Say)];
            foreach (Action<FigureSet, Readout, List<Sentence>> subject in alarming.Concat(calm))
            {
                var all = new List<Sentence>();
                subject(figures, readout, all);
                said.AddRange(all.Take(1));
            }
        }

        return [.. said.Take(Few).Select(Main)];
    }

    private static Action<FigureSet, Readout, List<Sentence>>[] Where(bool holds, Action<FigureSet, Readout, List<Sentence>> subject) => holds ? [subject] : [];

    // What stands behind a semicolon says more about the same.
    private static Sentence Main(Sentence sentence) =>
        sentence.Text.IndexOf("; ", StringComparison.Ordinal) is > 0 and var end ? sentence with { Text = sentence.Text[..end] + "." } : sentence;
}
