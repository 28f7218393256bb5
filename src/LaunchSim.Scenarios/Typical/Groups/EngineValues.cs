using static LaunchSim.Scenarios.Typical.Groups.Entry;

namespace LaunchSim.Scenarios.Typical.Groups;

/// <summary>Engine, clutch or converter, and gears.</summary>
internal static class EngineValues
{
    private const string Engine = "driveline.engine", Converter = "driveline.converter";
    private const double Rpm = 2 * Math.PI / 60;

    private static readonly double[] Ratios = [0, 0.3, 0.5, 0.7, 0.85, 0.95];
    private static readonly double[] Capacity = [1, 1.02, 1.05, 1.14, 1.38, 2.1];
    private static readonly double[] Multiplication = [1.95, 1.62, 1.41, 1.2, 1.03, 1];
    private static readonly double[] Times = [0, 0.05, 0.4, 1.2];
    private static readonly double[] Grip = [0.35, 0.75, 0.95, 1.15];

    private static readonly HomeTest Sheet = new("The engine's dyno sheet, at the crank.", "a dyno sheet");
    private static readonly HomeTest Flash = new("Flash speed: car held on the brake or a wall, full throttle, and the highest engine speed before the tyres let go. capacity_factor at speed ratio 0 is that speed over the root of the engine's torque there; scale the whole row by it.", "5 min; a tachometer that remembers");
    private static readonly HomeTest Log = new("Engine speed and driveshaft speed from a log.", "a data log");

    public static RegisterEntry[] All =>
    [
        Measured(Engine + ".speed", null, UsualRange.Plain(2500 * Rpm, 14000 * Rpm, "for the fastest speed of an engine's sheet") with { Judged = (_, row) => row[^1], Where = "as the last speed" }, Sheet),
        Measured(Engine + ".torque", Share(0.05), UsualRange.Plain(80, 4500, "for a car's engine") with { Judged = (_, row) => row.Max(), Where = "at its largest" }, Sheet),
        Number(Engine + ".inertia", _ => 0.32, "0.32 kg·m²: crank, flywheel or flex plate, clutch or pump", Share(0.30), Practice, UsualRange.Plain(0.04, 1.5, "for an engine with its flywheel"),
            new("The flywheel's mass × (0.6 × its radius)², and as much again for a crank, half as much for a converter's pump.", "10 min; scales, tape")),
        Measured(Engine + ".launch_speed", Share(0.03), UsualRange.Plain(900 * Rpm, 11000 * Rpm, "for a launch"), new("The launch limiter's, or the log's, just before the release.", "a tachometer")),
        Row("driveline.clutch.time", _ => Times, "0 0.05 0.4 1.2 s", null, Practice),
        Row("driveline.clutch.capacity", k => [.. k.Row("driveline.clutch.time").Select(time => new Vehicle.Table(Times, Grip).At(time) * k.Row(Engine + ".torque").Max())],
            "35 % of the engine's largest torque at the release, 75 % at 0.05 s, 95 % at 0.4 s, 115 % from 1.2 s on", Share(0.25), Practice,
            UsualRange.Of(k => k.Row(Engine + ".torque").Max(), 0.3, 4, "for a clutch behind this engine") with { Judged = (_, row) => row.Max(), Where = "at its largest" }, Log, Share(0.15)),
        Row(Converter + ".speed_ratio", _ => Ratios, "0 0.3 0.5 0.7 0.85 0.95", null, Practice),
        Row(Converter + ".capacity_factor", k => [.. k.Row(Converter + ".speed_ratio").Select(ratio => new Vehicle.Table(Ratios, Capacity).At(ratio) * Stall(k))],
            "flash speed over the root of the engine's torque there, rising with the speed ratio; without a flash speed, that of the engine's largest torque", Share(0.10), Practice,
            UsualRange.Plain(5, 90, "for a converter at stall"), Flash, Share(0.05)),
        Row(Converter + ".torque_ratio", k => [.. k.Row(Converter + ".speed_ratio").Select(ratio => new Vehicle.Table(Ratios, Multiplication).At(ratio))],
            "1.95 at stall, falling to 1 at a speed ratio of 0.95", Share(0.10), Practice, UsualRange.Plain(1.2, 3.2, "for a converter at stall"),
            new("The maker's sheet; from a log, axle torque over engine torque and gears in the first tenth of a second.", "the maker's sheet")),
        Measured("driveline.gears.ratios", null, UsualRange.Plain(1, 5, "for a first gear"), new("The gearbox maker's, or count the turns of engine and driveshaft.", "10 min")),
        Measured("driveline.gears.shift_at", Share(0.03), UsualRange.Plain(2000 * Rpm, 13000 * Rpm, "for a shift"), new("The shift light's or the log's.", "a tachometer")),
        Number("driveline.gears.shift_time", _ => 0.06, "0.06 s", Share(0.50), Practice, UsualRange.Plain(0, 0.6, "for a shift"), Log),
        Measured("driveline.final_drive", null, UsualRange.Plain(2, 8, "for a final drive"), new("Teeth of the ring gear over teeth of the pinion, or turns of the driveshaft for one of both wheels.", "5 min")),
        Number("driveline.efficiency", _ => 0.95, "0.95", Share(0.03), Practice, UsualRange.Plain(0.75, 1, "for gearbox and final drive")),
    ];

    /// <summary>Capacity factor at stall, (rad/s)/√(N·m).</summary>
    private static double Stall(KnownReading k)
    {
        double[] speed = k.Row(Engine + ".speed"), torque = k.Row(Engine + ".torque");
        if (speed.Length != torque.Length || speed.Length < 1 || double.IsNaN(speed[0]) || double.IsNaN(torque[0]))
        {
            return double.NaN;
        }

        double flash = k.Hints.FlashSpeed ?? speed[Array.IndexOf(torque, torque.Max())];
        return flash / Math.Sqrt(new Vehicle.Table(speed, torque).At(flash));
    }
}
