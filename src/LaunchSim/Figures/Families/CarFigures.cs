using LaunchSim.Dynamics;

namespace LaunchSim.Figures.Families;

/// <summary>How the whole car goes: acceleration, pitch, and where the run ended.</summary>
internal sealed class CarFigures : IFigureFamily
{
    private static readonly FigureDefinition
        Acceleration = new("acceleration_largest_mps2", "Acceleration, largest", FigureUnit.Acceleration, "largest acceleration of the sprung CG along the track"),
        AccelerationTime = new("acceleration_largest_time_s", "Acceleration, largest, at", FigureUnit.Time, "when that is"),
        Pitch = new("pitch_nose_up_largest_rad", "Pitch, largest", FigureUnit.Angle, "largest change of pitch since standing, nose up"),
        PitchTime = new("pitch_nose_up_largest_time_s", "Pitch, largest, at", FigureUnit.Time, "when that is"),
        Duration = new("run_end_s", "Run ends", FigureUnit.Time, "how long the run lasted"),
        Distance = new("distance_at_end_m", "Distance at the end", FigureUnit.Length, "distance of the sprung CG along the track where the run ends"),
        Speed = new("speed_at_end_mps", "Speed at the end", FigureUnit.Speed, "speed of the sprung CG where the run ends");

    public string Title => "Car";

    public IReadOnlyList<FigureDefinition> Definitions { get; } = [Acceleration, AccelerationTime, Pitch, PitchTime, Duration, Distance, Speed];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        if (figures.Wants(Acceleration, AccelerationTime))
        {
            Extremum acceleration = launch.Largest(Signal.Acceleration);
            figures.Set(Acceleration, acceleration.Value, NoFigure.NoRun);
            figures.Set(AccelerationTime, acceleration.Time, NoFigure.NoRun);
        }

        if (figures.Wants(Pitch, PitchTime))
        {
            Extremum pitch = launch.Largest(Signal.Pitch);
            figures.Set(Pitch, pitch.Value, NoFigure.NoRun);
            figures.Set(PitchTime, pitch.Time, NoFigure.NoRun);
        }

        figures.Set(Duration, launch.Duration);
        if (!figures.Wants(Distance, Speed))
        {
            return;
        }

        if (launch.Nodes == 0)
        {
            figures.None(Distance, NoFigure.NoRun);
            figures.None(Speed, NoFigure.NoRun);
            return;
        }

        launch.Solution.At(launch.Duration, out Observation last);
        figures.Set(Distance, last.Distance);
        figures.Set(Speed, last.Speed);
    }
}
