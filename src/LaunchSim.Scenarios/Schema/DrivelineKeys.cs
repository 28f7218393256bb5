using LaunchSim.Scenarios.Units;
using static LaunchSim.Scenarios.Schema.Keys;

namespace LaunchSim.Scenarios.Schema;

/// <summary>Keys of the driveline, one form a kind.</summary>
internal static class DrivelineKeys
{
    public static Section Driveline() => new(
        Word("type", "Which kind of driveline", Need.Run, null, "axle-torque", "engine"),
        Part("power", "A factor against time on the torque, or on the engine's torque", new Section(
            Row("time", QuantityKind.Time, Limits.Any, "0 0.3 s", "Times after the release; the end values hold", "The ignition's or throttle's programme", rising: true),
            Row("share", QuantityKind.Number, Limits.NotNegative, "0.9 1.0", "Factor at each time", "The share of torque that is left", against: "time")), Need.Optional, "all of it"))
    {
        Selector = "type",
        Forms =
        [
            new("axle-torque", "Torque at the axle against time", new Section(
                Row("time", QuantityKind.Time, Limits.Any, "0 0.05 0.25 0.60 1.0 s", "Times after the release; the end values hold", "Data log", rising: true),
                Row("torque", QuantityKind.Torque, Limits.Any, "0 3900 4400 4800 4800 lb-ft", "Torque of both axle shafts together at each time", "Driveshaft torque × final drive, or engine torque × gear × final drive", against: "time"))),
            new("engine", "Engine, clutch or converter, gears and final drive", Engine()),
        ],
    };

    private static Section Engine() => new(
        Part("engine", "The engine and what turns with it", new Section(
            Row("speed", QuantityKind.AngularSpeed, Limits.NotNegative, "2000 3000 4500 6000 7000 rpm", "Engine speeds of the dyno sheet; the end values hold", "Engine dyno", rising: true),
            Row("torque", QuantityKind.Torque, Limits.Any, "480 600 680 650 560 lb-ft", "Torque at each speed; below 0 it brakes", "Engine dyno", against: "speed"),
            Number("inertia", QuantityKind.Inertia, Limits.Positive, "0.35 kg·m²", "Inertia of crank, flywheel or converter's pump, and clutch", "The makers'; the flywheel is most of it"),
            Number("launch_speed", QuantityKind.AngularSpeed, Limits.Positive, "4200 rpm", "Engine speed held before the release", "The launch limiter's"))),
        Part("gears", "The gearbox", new Section(
            Row("ratios", QuantityKind.Number, Limits.Positive, "2.10 1.45 1.0", "Gear ratios, first to last", "The maker's"),
            Row("shift_at", QuantityKind.AngularSpeed, Limits.Positive, "6800 rpm", "Engine speed at which a shift starts: one for all, or one for each shift", "The shift light's", need: Need.Optional, leftOut: "only with a single gear"),
            Optional("shift_time", QuantityKind.Time, Limits.NotNegative, "0.05 s", "only with a single gear", "How long a shift takes, without torque", "Data log"))),
        Number("final_drive", QuantityKind.Number, Limits.Positive, "3.70", "Final drive ratio", "Teeth of the ring gear over teeth of the pinion"),
        Optional("efficiency", QuantityKind.Number, new Limits("above 0, at most 1", 0, true, 1, false), "0.95", "1", "Share of the power that gearbox and final drive together pass on, in either direction", "0.93 to 0.97"))
    {
        Forms =
        [
            new("clutch", "A friction clutch", new Section(
                Part("clutch", "The clutch", new Section(
                    Row("time", QuantityKind.Time, Limits.Any, "0 0.05 0.6 s", "Times after the release; the end values hold", "Data log, or the clutch's timer", rising: true),
                    Row("capacity", QuantityKind.Torque, Limits.NotNegative, "220 430 800 lb-ft", "Torque that the clutch passes at each time", "Engine torque while it slips, by the engine's speed in the log", against: "time")))), "clutch"),
            new("converter", "A torque converter", new Section(
                Part("converter", "The converter", new Section(
                    Row("speed_ratio", QuantityKind.Number, new Limits("0 or more, below 1", 0, false, 1, true), "0 0.4 0.7 0.85 0.95", "Output over engine speed; the last below 1", "The maker's sheet", rising: true),
                    Row("capacity_factor", QuantityKind.CapacityFactor, Limits.Positive, "190 196 218 265 410 rpm/√(lb-ft)", "Engine speed over the root of engine torque", "The maker's sheet; at 0, stall speed over the root of torque", against: "speed_ratio"),
                    Row("torque_ratio", QuantityKind.Number, Limits.NotNegative, "2.0 1.55 1.2 1.0 1.0", "Output over engine torque; times the speed ratio at most 1", "The maker's sheet", against: "speed_ratio")))), "converter"),
        ],
    };
}
