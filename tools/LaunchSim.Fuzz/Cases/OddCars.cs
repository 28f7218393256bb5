namespace LaunchSim.Fuzz.Cases;

/// <summary>Cars of which a corner of the physics is made: each a few values at their paths, with numbers that the dice choose.</summary>
/// <param name="Name">What is odd about it.</param>
/// <param name="Changes">The values.</param>
internal sealed record OddCar(string Name, Func<Dice, Change[]> Changes);

/// <summary>The register of odd cars: one line a car.</summary>
internal static class OddCars
{
    /// <summary>All odd cars.</summary>
    public static IReadOnlyList<OddCar> All { get; } =
    [
        new("bars nearly parallel", dice => FourLink(dice, 1, dice.Between(5, 9), 21, 9, 2, 15, 16, 15 + (15 * (9 - 7) / 20.0))),
        new("level bars", _ => [new("rear.linkage", "{type: four-link, lower: {axle: 1 7.5 in, body: 21 7.5 in}, upper: {axle: 2 16 in, body: 15 16 in}}")]),
        new("bars exactly parallel", _ => [new("rear.linkage", "{type: four-link, lower: {axle: 0 8 in, body: 20 10 in}, upper: {axle: 0 16 in, body: 10 17 in}}")]),
        new("percent of 60 to 300", dice => FourLink(dice, 1, 7.6, 21, dice.Between(7, 12), 2.5, 17, 14, dice.Between(12, 17))),
        new("ladder bar", dice => [new("rear.linkage", In(dice, "{{type: ladder-bar, pivot: {0} {1} in}}", 12, 60, 1, 14))]),
        new("ladder bar far away", dice => [new("rear.linkage", In(dice, "{{type: ladder-bar, pivot: {0} {1} in}}", 500, 1e5, 1, 14))]),
        new("ladder bar at the axle", dice => [new("rear.linkage", In(dice, "{{type: ladder-bar, pivot: {0} {1} in}}", 0.001, 2, 11, 15))]),
        new("ladder bar at the ground", _ => [new("rear.linkage", "{type: ladder-bar, pivot: 34 0 in}")]),
        new("ladder bar backward", dice => [new("rear.linkage", In(dice, "{{type: ladder-bar, pivot: {0} {1} in}}", -60, -12, 1, 14))]),
        new("bars backward", dice => FourLink(dice, -1, 7.6, dice.Between(-30, -12), 9, -2.5, 17, dice.Between(-25, -10), 14.6)),
        new("bars nearly in one line", dice => FourLink(dice, 1, 7.6, 21, 9, 1.5, dice.Between(9, 11), 21, dice.Between(9.2, 10))),
        new("no damping anywhere", _ =>
        [
            new("front.damper.extension", "{speed: 0 20 in/s, force: 0 0 lb}"), new("front.damper.compression", "{speed: 0 20 in/s, force: 0 0 lb}"),
            new("rear.damper.extension", "{speed: 0 20 in/s, force: 0 0 lb}"), new("rear.damper.compression", "{speed: 0 20 in/s, force: 0 0 lb}"),
            new("front.tire.vertical_damping", "0 lb·s/in"), new("rear.tire.vertical_damping", "0 lb·s/in"),
            new("rear.tire.carcass.torsional_damping", "0 N·m·s/rad"), new("front.tire.rolling_resistance", "0"), new("rear.tire.rolling_resistance", "0"),
        ]),
        new("dampers of two speeds", dice => [new("rear.damper.extension", In(dice, "{{speed: 0 {0} in/s, force: 0 {1} lb}}", 0.1, 40, 0, 5000))]),
        new("dampers that hardly move", dice => [new("rear.damper.extension", In(dice, "{{speed: 0 0.01 {0} in/s, force: 0 {1} 600 lb}}", 0.02, 40, 0, 300))]),
        new("damper with a step", dice => [new("front.damper.extension", In(dice, "{{speed: 0 {0} 0.11 20 in/s, force: 0 1 {1} 2000 lb}}", 0.1, 0.108, 20, 500))]),
        new("damper lying down", _ => [new("rear.damper.axle", "-2 9 in"), new("rear.damper.body", "30 10 in")]),
        new("short travel", dice => [new("rear.damper.travel.extend", In(dice, "{0} in", 1e-3, 0.5)), new("front.damper.travel.extend", In(dice, "{0} in", 1e-3, 0.5))]),
        new("hard stops", dice => [new("rear.damper.travel.stop_rate", In(dice, "{0} lb/in", 1e4, 1e6)), new("rear.damper.travel.extend", In(dice, "{0} in", 0.2, 2))]),
        new("soft stops", dice => [new("rear.damper.travel.stop_rate", In(dice, "{0} lb/in", 1e-3, 10)), new("front.damper.travel.stop_damping", "0 lb·s/in")]),
        new("no grip", dice => [new("track", In(dice, "{{grip: {0}}}", 1e-3, 0.2))]),
        new("endless grip", dice => [new("rear.tire.grip", In(dice, "{0}", 4, 30)), new("rear.tire.slip_stiffness", In(dice, "{0}", 100, 1000))]),
        new("grip in steps", dice => [new("track", In(dice, "{{distance: -5 0 {0} {1} 60 ft, grip: 0.4 1 0.2 1.5 0.01}}", 0.001, 1, 1.1, 30))]),
        new("grip of one place", _ => [new("track", "{distance: 10 ft, grip: 0.8}")]),
        new("a slippery patch", dice => [new("track", In(dice, "{{grip: {{distance: 0 {0} {1} ft, grip: 1 0.05 1}}}}", 0.01, 1, 1.5, 10))]),
        new("tyre without relaxation", dice => [new("rear.tire.relaxation_length", In(dice, "{0} in", 0.01, 0.2))]),
        new("tyre of long relaxation", dice => [new("rear.tire.relaxation_length", In(dice, "{0} ft", 1, 500))]),
        new("hard carcass", dice => [new("rear.tire.carcass.torsional_rate", In(dice, "{0} kN·m/rad", 100, 5000))]),
        new("soft carcass", dice => [new("rear.tire.carcass.torsional_rate", In(dice, "{0} N·m/rad", 1, 1000))]),
        new("light wheels", dice => [new("rear.tire.carcass.rim_inertia", In(dice, "{0} kg·m²", 1e-3, 0.2)), new("front.tire.spin_inertia", In(dice, "{0} kg·m²", 1e-3, 0.2))]),
        new("hard tyres", dice => [new("rear.tire.vertical_rate", In(dice, "{0} lb/in", 5e3, 1e6)), new("front.tire.vertical_rate", In(dice, "{0} lb/in", 5e3, 1e6))]),
        new("soft tyres", dice => [new("rear.tire.vertical_rate", In(dice, "{0} lb/in", 100, 400))]),
        new("nose heavy", dice => [new("car.scales", In(dice, "{{front: {0} lb, rear: {1} lb}}", 2000, 6000, 420, 700))]),
        new("tail heavy", dice => [new("car.scales", In(dice, "{{front: {0} lb, rear: {1} lb}}", 220, 500, 2000, 6000))]),
        new("tall", dice => [new("car.cg_height", In(dice, "{0} in", 40, 200))]),
        new("low", dice => [new("car.cg_height", In(dice, "{0} in", 0.01, 6))]),
        new("short", dice => [new("car.wheelbase", In(dice, "{0} in", 20, 60))]),
        new("long", dice => [new("car.wheelbase", In(dice, "{0} ft", 15, 200))]),
        new("turns easily", dice => [new("car.pitch_inertia", In(dice, "{0} kg·m²", 0.5, 100))]),
        new("ballast", dice => [new("car.ballast", In(dice, "[{{mass: {0} lb, at: {1} {2} in}}, {{mass: 0 lb, at: 0 0 in}}]", 0, 900, -60, 160, 0, 40))]),
        new("raised", dice => [new("car.ride_height", In(dice, "{{front: {0} in, rear: {1} in}}", -2, 2, -2, 2))]),
        new("springs across", dice => [new("rear.spring.body", In(dice, "{0} {1} in", 4, 15, 12, 24))]),
        new("soft springs", dice => [new("rear.spring.rate", In(dice, "{0} lb/in", 0.01, 30)), new("front.spring.rate", In(dice, "{0} lb/in", 0.01, 30))]),
        new("hard springs", dice => [new("rear.spring.rate", In(dice, "{0} lb/in", 2e3, 1e5))]),
        new("odd motion ratios", dice => [new("front.spring.motion_ratio", In(dice, "{0}", 0.01, 10)), new("front.damper.motion_ratio", In(dice, "{0}", 0.01, 10))]),
        new("bar on the floor", dice => [new("rear.wheelie_bar", In(dice, "{{wheel: {0} {1} in, rate: {2} lb/in, damping: 0 lb·s/in}}", -70, -20, 0.001, 1, 10, 5000))]),
        new("bar under the axle", dice => [new("rear.wheelie_bar", In(dice, "{{wheel: {0} {1} in, rate: 500 lb/in, damping: 1 lb·s/in}}", -5, 30, 0.01, 4))]),
        new("pressure", dice => [new("rear.tire.pressure", In(dice, "{{measured: 16 psi, set: {0} psi, vertical: 40 lb/in/psi, torsional: 0.4 kN·m/rad/psi, grip: -0.01 /psi}}", 6, 60))]),
        new("drag of a barn", dice => [new("car.aero", In(dice, "{{drag_area: {0} m², height: {1} in, air_density: 1.2 kg/m³}}", 5, 500, 0, 200))]),
        new("no torque", _ => [new("driveline", "{type: axle-torque, time: 0 s, torque: 0 lb-ft}")]),
        new("torque backward", dice => [new("driveline", In(dice, "{{type: axle-torque, time: 0 0.1 s, torque: 0 {0} lb-ft}}", -5000, -10))]),
        new("torque at once", dice => [new("driveline", In(dice, "{{type: axle-torque, time: 0 s, torque: {0} lb-ft}}", 500, 9000))]),
        new("torque in a step", dice => [new("driveline", In(dice, "{{type: axle-torque, time: 0 {0} 0.100001 s, torque: 3000 3000 {1} lb-ft}}", 0.05, 0.1, -3000, 9000))]),
        new("too much torque", dice => [new("driveline", In(dice, "{{type: axle-torque, time: 0 0.05 s, torque: 0 {0} lb-ft}}", 8e3, 1e5))]),
        new("torque before the release", _ => [new("driveline", "{type: axle-torque, time: -1 2 s, torque: 0 6000 lb-ft}")]),
        new("power switched", dice => [new("driveline.power", In(dice, "{{time: 0 {0} 0.0600001 0.2 0.25 s, share: 1 1 0 0 2}}", 0.02, 0.06))]),
        new("clutch that slips for good", dice => [Clutch(dice, 1, 60, 2000, 9000)]),
        new("clutch that bites", dice => [Clutch(dice, 900, 5000, 2500, 9000)]),
        new("clutch at idle", dice => [Clutch(dice, 100, 800, 50, 1500)]),
        new("clutch let go", _ => [new("driveline", Engine("clutch: {time: 0 0.1 0.15 0.2 s, capacity: 400 400 0 500 lb-ft}", 5000, "2.1 1.4 1.0", 6500, 0.05))]),
        new("shift at the release", dice => [new("driveline", Engine("clutch: {time: 0 0.1 s, capacity: 200 600 lb-ft}", dice.Between(6000, 9000), "2.1 1.4 1.0", dice.Between(5000, 7000), dice.Between(0, 0.1)))]),
        new("shift without a gap", dice => [new("driveline", Engine("clutch: {time: 0 0.1 s, capacity: 200 900 lb-ft}", 4000, "3.4 3.3 3.2 3.1 3.0", dice.Between(4100, 5000), 0))]),
        new("one gear", dice => [new("driveline", In(dice, "{{type: engine, engine: {{speed: 2000 6000 rpm, torque: 500 500 lb-ft, inertia: {0} kg·m², launch_speed: 4000 rpm}}, clutch: {{time: 0 s, capacity: {1} lb-ft}}, gears: {{ratios: 2.2}}, final_drive: 4}}", 0.01, 3, 50, 900))]),
        new("converter of one speed ratio", dice => [new("driveline", Engine(In(dice, "converter: {{speed_ratio: {0}, capacity_factor: 200 rpm/√(lb-ft), torque_ratio: {1}}}", 0, 0.5, 0, 1.9), 2600, "2.4 1.5 1.0", 6500, 0.08))]),
        new("tight converter", dice => [new("driveline", Engine(In(dice, "converter: {{speed_ratio: 0 0.5 0.9, capacity_factor: {0} 80 150 rpm/√(lb-ft), torque_ratio: {1} 1.2 1}}", 20, 70, 1, 3), 2600, "2.4 1.5 1.0", 6500, 0.08))]),
        new("loose converter", dice => [new("driveline", Engine(In(dice, "converter: {{speed_ratio: 0 0.5 0.98, capacity_factor: {0} 900 5000 rpm/√(lb-ft), torque_ratio: {1} 1.2 1}}", 300, 800, 1, 3), 2600, "2.4 1.5 1.0", 6500, 0.08))]),
        new("engine brake", dice => [new("driveline", In(dice, "{{type: engine, engine: {{speed: 0 2000 rpm, torque: {0} -300 lb-ft, inertia: 0.3 kg·m², launch_speed: 4000 rpm}}, clutch: {{time: 0 s, capacity: 500 lb-ft}}, gears: {{ratios: 2.2}}, final_drive: {1}}}", -300, 100, 0.05, 9))]),
        new("tall final drive", dice => [new("driveline", Engine("clutch: {time: 0 0.1 s, capacity: 200 600 lb-ft}", 5000, "2.1 1.4 1.0", 6500, 0.05, dice.Spread(0.01, 50)))]),
        new("marks at the start", dice => [new("run.marks", In(dice, "{0} 1 60 in", 1e-4, 0.5)), new("run.rollout", In(dice, "{0} in", 0, 40))]),
        new("rollout behind the marks", _ => [new("run.marks", "1 2 ft"), new("run.rollout", "30 ft")]),
        new("many holes", ManyHoles),
        new("a torque of many points", dice => Rows(dice, "driveline", "{{type: axle-torque, time: {0} s, torque: {1} lb-ft}}", 1e-3, 2000, 5000)),
        new("a damper of many speeds", dice => Rows(dice, "rear.damper.extension", "{{speed: 0 {0} in/s, force: 0 {1} lb}}", 0.05, 0, 0)),
        new("a track of many places", dice => Rows(dice, "track", "{{distance: {0} ft, grip: {1}}}", 0.05, 0.3, 1.5)),
        new("ballast in many pieces", dice => [new("car.ballast", $"[{string.Join(", ", Enumerable.Range(0, dice.From(2, 300)).Select(i => $"{{mass: 0.1 lb, at: {i} 10 in}}"))}]")]),
        new("many marks", dice => [new("run.marks", string.Join(' ', Enumerable.Range(1, dice.From(2, 300))) + " in")]),
        new("coarse tolerance", dice => [new("run.tolerance", In(dice, "{0}", 1e-3, 1e-2))]),
        new("fine tolerance", dice => [new("run.tolerance", In(dice, "{0}", 1e-12, 1e-10))]),
    ];

    // Two numbers of the list for each gap, the least and the most.
    private static string In(Dice dice, string format, params double[] ends)
    {
        object[] numbers = new object[ends.Length / 2];
        for (int i = 0; i < numbers.Length; i++)
        {
            double least = ends[2 * i], most = ends[(2 * i) + 1];
            numbers[i] = Spelling.Number(least > 0 && most / least > 20 ? dice.Spread(least, most) : dice.Between(least, most), dice);
        }

        return string.Format(System.Globalization.CultureInfo.InvariantCulture, format, numbers);
    }

    private static Change[] ManyHoles(Dice dice)
    {
        // So many that they may be all compared, or just too many.
        int holes = dice.Chance(0.9) ? dice.From(2, 6) : dice.From(2, 20);
        string Bracket(double ahead, double up) => $"{{holes: {{{string.Join(", ", Enumerable.Range(1, holes).Select(i => FormattableString.Invariant($"h{i}: {ahead} {up + (0.25 * i):0.##} in")))}}}, use: h1}}";
        return [new("rear.linkage", $"{{type: four-link, lower: {{axle: {Bracket(1, 5)}, body: {Bracket(21, 7)}}}, upper: {{axle: {Bracket(2.5, 16)}, body: {Bracket(14, 13)}}}}}")];
    }

    // Two rows of many numbers, the first rising by a step, the second between two ends, or rising as well when they are 0.
    private static Change[] Rows(Dice dice, string path, string format, double step, double least, double most)
    {
        int count = dice.From(20, 1500);
        IEnumerable<string> first = Enumerable.Range(1, count).Select(i => (i * step).ToString("0.####", System.Globalization.CultureInfo.InvariantCulture));
        IEnumerable<string> second = Enumerable.Range(1, count).Select(i => (most > 0 ? dice.Between(least, most) : i).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture));
        return [new(path, string.Format(System.Globalization.CultureInfo.InvariantCulture, format, string.Join(' ', first), string.Join(' ', second)))];
    }

    private static Change[] FourLink(Dice dice, params double[] p)
    {
        string[] t = [.. p.Select(number => Spelling.Number(Math.Round(number, 4), dice))];
        return [new("rear.linkage", $"{{type: four-link, lower: {{axle: {t[0]} {t[1]} in, body: {t[2]} {t[3]} in}}, upper: {{axle: {t[4]} {t[5]} in, body: {t[6]} {t[7]} in}}}}")];
    }

    private static Change Clutch(Dice dice, double least, double most, double slowest, double fastest) =>
        new("driveline", Engine(In(dice, "clutch: {{time: 0 0.05 s, capacity: {0} {1} lb-ft}}", 0, most / 2, least, most), dice.Between(slowest, fastest), "2.66 1.78 1.30 1.0", 7000, 0.06));

    private static string Engine(string coupling, double launch, string ratios, double shiftAt, double shiftTime, double finalDrive = 3.9) => FormattableString.Invariant(
        $"{{type: engine, engine: {{speed: 2500 4500 6500 7500 rpm, torque: 420 520 470 390 lb-ft, inertia: 0.3 kg·m², launch_speed: {launch:0.##} rpm}}, {coupling}, gears: {{ratios: {ratios}, shift_at: {shiftAt:0.##} rpm, shift_time: {shiftTime:0.####} s}}, final_drive: {finalDrive:0.#####}}}");
}
