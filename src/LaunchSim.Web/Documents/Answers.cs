using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;

namespace LaunchSim.Web.Documents;

/// <summary>One answer of a page's first view: a few words that stand at the part they belong to, and the sentence behind them.</summary>
/// <param name="Part">Where it stands: <c>ends</c>, <c>instant-centre</c>, <c>rear-tire</c>, <c>rear-damper</c>, <c>contact</c>.</param>
/// <param name="Lead">The few words.</param>
/// <param name="Text">The sentence of the report; empty when there is none.</param>
internal sealed record Answer(string Part, string Lead, string Text)
{
    /// <summary>A launch's answers: do the ends come up in step, how hard is the hit, what is left of travel and of grip, the static line.</summary>
    /// <param name="run">The launch.</param>
    /// <param name="readout">The units.</param>
    public static IReadOnlyList<Answer> Of(LaunchOutcome run, Readout readout)
    {
        FigureSet figures = run.Figures;
        List<Sentence> said = Summary.Of(figures, readout);
        StandingCar car = run.Solution.Car;
        return
        [
            new("instant-centre", StaticLineWords.Percent(car.Line.Percent), StaticLineWords.Of(car.Line, car.Standing.Wheelbase, readout) + "."),
            .. When(run.Solution.Duration > 0, () => new Answer("ends", Ends(figures, said), Find(said, "rise."))),
            .. When(figures["hit_n"] is not null, () => new Answer("rear-tire", Hit(figures, readout), Find(said, "hit.") + " " + Find(said, "low."))),
            .. When(figures["separation_peak_m"] is not null, () => new Answer("rear-damper", Travel(figures, readout), Find(said, "separation."))),
            .. When(figures["grip_margin_lowest_ratio"] is not null || figures["slip_beyond_peak_first_s"] is not null, () => new Answer("contact", Grip(figures), Find(said, "grip."))),
        ];
    }

    private static Answer[] When(bool holds, Func<Answer> make) => holds ? [make()] : [];

    private static string Find(List<Sentence> said, string subject) =>
        said.Find(sentence => sentence.Key.StartsWith(subject, StringComparison.Ordinal))?.Text ?? "";

    // Which of the cases it is, the sentence has decided.
    private static string Ends(FigureSet figures, List<Sentence> said)
    {
        double lag = (figures["front_rise_t50_s"] - figures["rear_rise_t50_s"]) ?? 0;
        return said.Find(sentence => sentence.Key.StartsWith("rise.", StringComparison.Ordinal))?.Key switch
        {
            "rise.together" => "Both ends together",
            "rise.rear_first" => $"Rear first, front {Readout.Lag.Text(lag)} late",
            "rise.front_first" => $"Front first, rear {Readout.Lag.Text(-lag)} late",
            "rise.only_front" => "Only the front comes up",
            "rise.only_rear" => "Only the rear comes up",
            _ => "Neither end comes up",
        };
    }

    private static string Hit(FigureSet figures, Readout readout)
    {
        double hit = figures["hit_n"]!.Value, standing = figures["rear_tire_load_static_n"] ?? hit;
        return readout.Force.IsZero(hit - standing) ? "No hit" : $"Hit {readout.Force.Text(hit)}, {readout.Force.WithSign(hit - standing)}";
    }

    private static string Travel(FigureSet figures, Readout readout)
    {
        if (figures.Events.First(LaunchEventKind.RearTopStop) is { } top)
        {
            return $"Tops out at {Readout.Time.Text(top.Time)}";
        }

        if (figures.Events.First(LaunchEventKind.RearBottomStop) is { } bottom)
        {
            return $"Bottoms at {Readout.Time.Text(bottom.Time)}";
        }

        double apart = figures["separation_peak_m"] ?? 0, together = -(figures["squat_peak_m"] ?? 0);
        return apart >= together
            ? $"Opens {readout.Travel.Text(apart)}{Left(figures["separation_peak_travel_left_m"], readout)}"
            : $"Closes {readout.Travel.Text(together)}{Left(figures["squat_peak_travel_left_m"], readout)}";
    }

    private static string Left(double? left, Readout readout) => left is { } way ? $", {readout.Travel.Text(way)} left" : "";

    private static string Grip(FigureSet figures) => figures["slip_beyond_peak_first_s"] is { } first
        ? $"Spins from {Readout.Time.Text(first)}"
        : $"{Readout.Percent.Text(100 * figures["grip_margin_lowest_ratio"]!.Value)} grip to spare";
}
