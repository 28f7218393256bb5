namespace LaunchSim.Figures.Families;

/// <summary>How near the rear tyres come to their grip's end, and how far they slip.</summary>
internal sealed class GripFigures : IFigureFamily
{
    private static readonly FigureDefinition
        Margin = new("grip_margin_lowest_ratio", "Grip margin, lowest", FigureUnit.Ratio,
            "lowest 1 − |F_x|/(μ·F_z) at the rear while the tyre carries more than 5 % of its static load"),
        MarginTime = new("grip_margin_lowest_time_s", "Grip margin, lowest, at", FigureUnit.Time, "when that is"),
        Beyond = new("slip_beyond_peak_time_s", "Slip beyond the peak", FigureUnit.Time, "total time with the rear slip ratio beyond the tyre's peak, either way"),
        First = new("slip_beyond_peak_first_s", "Slip beyond the peak from", FigureUnit.Time, "first time at which the rear slip ratio is beyond the tyre's peak"),
        Speed = new("slip_speed_largest_mps", "Slip speed, largest", FigureUnit.Speed, "largest slip speed of the rear tyres, spinning positive");

    public string Title => "Grip";

    public IReadOnlyList<FigureDefinition> Definitions { get; } = [Margin, MarginTime, Beyond, First, Speed];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        if (figures.Wants(Margin, MarginTime))
        {
            string noLoad = launch.Nodes == 0 ? NoFigure.NoRun : "the rear tyres never carry more than 5 % of their static load";
            Extremum margin = launch.Smallest(Signal.GripMargin);
            figures.Set(Margin, margin.Value, noLoad);
            figures.Set(MarginTime, margin.Time, noLoad);
        }

        if (figures.Wants(Speed))
        {
            figures.Set(Speed, launch.Largest(Signal.RearSlipSpeed).Value, NoFigure.NoRun);
        }

        if (figures.Wants(Beyond, First))
        {
            double peak = launch.Solution.Car.Model.RearTire.PeakSlip;
            int node = 0;
            bool any = launch.NextAbove(Signal.RearSlip, peak, ref node, out (double From, double To) first);
            figures.Set(Beyond, launch.TimeAbove(Signal.RearSlip, peak));
            figures.Set(First, any ? first.From : double.NaN, "the rear tyres stay below their peak slip");
        }
    }
}
