using LaunchSim.Charts.Drawing;
using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>Engine and gearbox speed, and the torque that the axle shafts get; for a car with an engine.</summary>
internal sealed class DrivelineChart : LaunchChart
{
    public override string Name => "driveline";

    public override bool IsFor(Car car) => car.Driveline is EngineDriveline;

    public override string Title(LaunchView view)
    {
        Scale rotation = Readout.Rotation;
        double start = ((EngineDriveline)view.Car.Driveline).Engine.LaunchSpeed;
        double lowest = view.Course.Largest((in Observation o) => -o.EngineSpeed) is var least && double.IsNaN(least) ? start : -least;
        string engine = rotation.IsZero(start - lowest) ? $"The engine never falls below its {rotation.Text(start)}" : $"The engine falls from {rotation.Text(start)} to {rotation.Text(lowest)}";
        return view["clutch_locks_s"] is { } locks ? $"{engine}; the clutch locks at {Readout.Time.Text(locks)}"
            : ((EngineDriveline)view.Car.Driveline).Coupling is Clutch ? $"{engine}; the clutch never locks"
            : engine;
    }

    public override string Explanation(LaunchView view) =>
        "Where engine and gearbox turn apart, clutch or converter slips between them. Below: the torque of both axle shafts together.";

    public override void Draw(ChartPage page)
    {
        LaunchView view = page.View;
        Scale torque = view.Readout.Torque;
        var engine = (EngineDriveline)view.Car.Driveline;
        DataPoint[] turns = view.Course.Against((in Observation o) => o.EngineSpeed, Readout.Rotation);
        DataPoint[] input = view.Course.Against((in Observation o) => Input(engine, o), Readout.Rotation);
        DataPoint[] axle = view.Course.Against((in Observation o) => o.AxleTorque, torque);
        var lanes = new EventLanes(view, [LaunchEventKind.ClutchLocked, LaunchEventKind.Shift, LaunchEventKind.RearSlipPastPeak]);
        OxyRect[] rows = page.Rows(lanes, 1.5, 1);
        TimeAxis bare = page.Time(named: false), time = page.Time();
        Plot upper = page.Plot(rows[0], bare, Extent.Of(turns.Concat(input).Select(point => point.Y), 1000), $"Speed, {Readout.Rotation.Unit}");
        Curve gearbox = upper.Line(input, new Pen(Theme.Fourth, 2.4, Theme.LongDash)), crank = upper.Line(turns, new Pen(Theme.Ink, 2.4));
        upper.Draw();
        upper.Name(crank, "engine");
        upper.Name(gearbox, "gearbox input");
        Plot lower = page.Plot(rows[1], time, Extent.Of(axle.Select(point => point.Y), 100), $"Axle torque, both shafts, {torque.Unit}");
        Curve shafts = lower.Line(axle, Pen.Rear);
        lower.Draw();
        lower.Name(shafts, "axle shafts");
        lanes.Draw(page.Canvas, upper);
        page.Finish(time, upper, lower);
    }

    // The driveshaft turns with the rims over the housing; with no gear in there is no input speed.
    internal static double Input(EngineDriveline line, in Observation seen) =>
        seen.Gear >= 1 ? line.Ratios[(int)seen.Gear - 1] * line.FinalDrive * (seen.WheelSpeed + seen.PitchRate + seen.PinionRate) : double.NaN;
}
