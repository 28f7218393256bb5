using LaunchSim.Dynamics;

namespace LaunchSim.Figures.Families;

/// <summary>How far body and rear axle move apart and together, and what is left of the damper's travel there.</summary>
internal sealed class SeparationFigures : IFigureFamily
{
    // Less than this is rounding of the integration, not a movement, m.
    private const double LeastMove = 1e-6;

    private static readonly FigureDefinition
        Peak = new("separation_peak_m", "Separation, largest", FigureUnit.Length, "largest separation at the rear axle; 0 when it never separates"),
        PeakTime = new("separation_peak_time_s", "Separation, largest, at", FigureUnit.Time, "when that is"),
        PeakLeft = new("separation_peak_travel_left_m", "Travel left to the top stop", FigureUnit.Length,
            "rear damper's way left to its top stop at the largest separation; negative in the stop"),
        Squat = new("squat_peak_m", "Separation, lowest (squat)", FigureUnit.Length, "largest negative separation, as a negative number; 0 when it never squats"),
        SquatTime = new("squat_peak_time_s", "Separation, lowest (squat), at", FigureUnit.Time, "when that is"),
        SquatLeft = new("squat_peak_travel_left_m", "Travel left to the bottom stop", FigureUnit.Length,
            "rear damper's way left to its bottom stop at the largest squat; negative in the stop");

    public string Title => "Separation and squat";

    public IReadOnlyList<FigureDefinition> Definitions { get; } = [Peak, PeakTime, PeakLeft, Squat, SquatTime, SquatLeft];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        LaunchModel model = launch.Solution.Car.Model;
        Write(1, Peak, PeakTime, PeakLeft, "the rear never separates");
        Write(-1, Squat, SquatTime, SquatLeft, "the rear never squats");

        void Write(int sign, FigureDefinition peak, FigureDefinition time, FigureDefinition left, string never)
        {
            if (!figures.Wants(peak, time, left))
            {
                return;
            }

            Extremum extremum = sign > 0 ? launch.Largest(Signal.Separation) : launch.Smallest(Signal.Separation);
            string reason = launch.Nodes == 0 ? NoFigure.NoRun : never;
            figures.Set(peak, sign * Math.Max(0, sign * extremum.Value), reason);
            if (!(sign * extremum.Value > LeastMove))
            {
                figures.None(time, reason);
                figures.None(left, reason);
                return;
            }

            launch.Solution.At(extremum.Step, extremum.Time, out Observation seen);
            figures.Set(time, extremum.Time);
            figures.Set(left, sign > 0 ? seen.RearTopLeft : model.TopLength - model.BottomLength - seen.RearTopLeft);
        }
    }
}
