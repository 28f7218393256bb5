using LaunchSim.Dynamics;

namespace LaunchSim.Figures.Families;

/// <summary>The largest torques, and what clutch and gearbox did.</summary>
internal sealed class DrivelineFigures : IFigureFamily
{
    private const string NoEngine = "there is no engine in this car, only an axle torque";

    private static readonly FigureDefinition
        Axle = new("axle_torque_largest_nm", "Axle torque, largest", FigureUnit.Torque, "largest torque of both axle shafts together"),
        AxleTime = new("axle_torque_largest_time_s", "Axle torque, largest, at", FigureUnit.Time, "when that is first reached"),
        Driveshaft = new("driveshaft_torque_largest_nm", "Driveshaft torque, largest", FigureUnit.Torque, "largest axle torque over the final drive"),
        Locks = new("clutch_locks_s", "Clutch locks", FigureUnit.Time, "first time at which the clutch stops slipping"),
        Shifts = new("shift_count", "Shifts", FigureUnit.Count, "shifts begun"),
        FirstShift = new("first_shift_s", "First shift", FigureUnit.Time, "when the first shift begins");

    public string Title => "Driveline";

    public IReadOnlyList<FigureDefinition> Definitions { get; } = [Axle, AxleTime, Driveshaft, Locks, Shifts, FirstShift];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        Extremum axle = launch.Largest(Signal.AxleTorque);
        figures.Set(Axle, axle.Value, NoFigure.NoRun);
        figures.Set(AxleTime, axle.Time, NoFigure.NoRun);
        if (launch.Nodes == 0)
        {
            figures.None(Driveshaft, NoFigure.NoRun);
            figures.None(Locks, NoFigure.NoRun);
            figures.None(Shifts, NoFigure.NoRun);
            figures.None(FirstShift, NoFigure.NoRun);
            return;
        }

        launch.Solution.At(axle.Step, axle.Time, out Observation seen);
        bool hasEngine = double.IsFinite(seen.EngineSpeed);
        LaunchEvents events = launch.Events;
        figures.Set(Driveshaft, seen.DriveshaftTorque, "the final drive is not known");
        figures.Set(Locks, events.First(LaunchEventKind.ClutchLocked)?.Time ?? double.NaN, hasEngine ? "no clutch locks in this run" : NoEngine);
        figures.Set(Shifts, hasEngine ? events.CountOf(LaunchEventKind.Shift) : double.NaN, NoEngine);
        figures.Set(FirstShift, events.First(LaunchEventKind.Shift)?.Time ?? double.NaN, hasEngine ? "no shift in this run" : NoEngine);
    }
}
