namespace LaunchSim.Figures.Families;

/// <summary>
/// How far each end has opened since standing: what the wheel openings and sensors on the dampers show. The tyres
/// squash, so the gaps open before the body rises.
/// </summary>
internal sealed class GapFigures : IFigureFamily
{
    /// <summary>A quarter inch, m.</summary>
    private const double FirstMove = 6.35e-3;

    private static readonly FigureDefinition
        Lag = new("gap_lag_s", "Gap lag", FigureUnit.Time,
            "first 6.35 mm (1/4 in) of the front gap less the same of the rear gap, in time: positive means that the rear moves first"),
        FrontTime = new("front_gap_6_35mm_s", "Front gap, first 1/4 in", FigureUnit.Time, "first time at which the front has opened by 6.35 mm"),
        RearTime = new("rear_gap_6_35mm_s", "Rear gap, first 1/4 in", FigureUnit.Time, "first time at which the rear has opened by 6.35 mm");

    private static readonly InstantFigures
        Front = new("front_gap", "Front gap", Signal.FrontGap, "how far the front has opened since standing"),
        Rear = new("rear_gap", "Rear gap", Signal.Separation, "how far the rear has opened since standing: the separation");

    public string Title => "Gaps";

    public IReadOnlyList<FigureDefinition> Definitions { get; } = [Lag, FrontTime, RearTime, .. Front.Definitions, .. Rear.Definitions];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        if (figures.Wants(Lag, FrontTime, RearTime))
        {
            double front = launch.FirstAt(Signal.FrontGap, FirstMove), rear = launch.FirstAt(Signal.Separation, FirstMove);
            const string noFront = "the front never opened by 1/4 in", noRear = "the rear never opened by 1/4 in";
            figures.Set(FrontTime, front, noFront);
            figures.Set(RearTime, rear, noRear);
            figures.Set(Lag, front - rear, double.IsNaN(rear) ? noRear : noFront);
        }

        Front.Read(launch, figures);
        Rear.Read(launch, figures);
    }
}
