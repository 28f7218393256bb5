using static LaunchSim.Scenarios.Typical.Groups.Entry;

namespace LaunchSim.Scenarios.Typical.Groups;

/// <summary>The whole car: size, weights, centre of gravity, inertias, air.</summary>
internal static class CarValues
{
    private static readonly HomeTest Scales = new("Level floor, driver aboard, fuel as at the start, tyres at launch pressure; add left and right.", "20 min; four scale pads");

    // Cars of one kind weigh with the square of their length: some 190 kg for each square metre of it, from 105 for bare tube
    // frames to 360 for heavy sedans.
    private static readonly UsualRange AxleLoad = UsualRange.Of(k => 0.5 * 190 * Gravity * k.Wheelbase * k.Wheelbase, 0.55, 1.9, "for both tyres of one axle, on a car of this wheelbase");

    private static readonly HomeTest Marks = new("The same spot's height above the floor now, less that when the points were measured.", "5 min; tape");
    private static readonly UsualRange RideHeight = UsualRange.Plain(-0.15, 0.15, "for a change of ride height since the points were measured");

    public static RegisterEntry[] All =>
    [
        Measured("car.wheelbase", Amount(Inch / 8), UsualRange.Plain(1.8, 3.8, "for a door car or a roadster"), new("Drop a plumb line from both hub centres, wheels straight ahead, and tape along the floor.", "10 min; tape and plumb line")),
        Measured("car.scales.front", Share(0.01), AxleLoad, Scales),
        Measured("car.scales.rear", Share(0.01), AxleLoad, Scales),
        Number("car.cg_height", k => 0.20 * k.Wheelbase, "a fifth of the wheelbase", Amount(0.05), Practice,
            UsualRange.Of(k => k.Wheelbase, 0.14, 0.30, "for a car of this wheelbase"),
            new("Block the suspension, lift the rear axle by 20 in or more, and read how much the front scales gain: the height of the centre of gravity above the wheel centres is gain × wheelbase / (weight × tangent of the slope), the slope's sine being lift over wheelbase.", "1 h; scales, jack, stands, blocks in place of the dampers"), Amount(0.0254)),
        Number("car.pitch_inertia", PitchInertia, "1.042 × mass × the centre of gravity's distances from both axles for the whole car; the unsprung masses are then taken out at their wheel centres", Share(0.20), OpenInertias,
            UsualRange.Of(PitchInertia, 0.55, 1.6, "for a car of this weight and wheelbase"),
            new("Rarely done: dampers off, rock the body nose up and down and time ten swings. Inertia = (both front rates × distance² + both rear rates × distance²) × (time of one swing / 2π)², rates at the wheel with spring and tyre in series, distances from the centre of gravity.", "half a day; dampers off, a watch")),
        Number("front.unsprung", k => 0.10 * k.Number("car.scales.front") / Gravity, "a tenth of the front axle's scale reading", Share(0.25), Practice,
            UsualRange.Of(k => k.Number("car.scales.front") / Gravity, 0.045, 0.18, "for both front wheels, tyres, brakes and hubs of a car of this weight"),
            new("Weigh wheel with tyre, brake and upright on bathroom scales; half of each arm and of the damper counts. Both sides.", "1 h when it is apart; scales"), Share(0.10)),
        Number("rear.unsprung", k => 0.23 * k.Number("car.scales.rear") / Gravity, "23 % of the rear axle's scale reading", Share(0.20), Practice,
            UsualRange.Of(k => k.Number("car.scales.rear") / Gravity, 0.13, 0.36, "for a solid axle with wheels, tyres and brakes of a car of this weight"),
            new("Body on stands, springs and dampers off: what both rear wheels press on the scales is axle, wheels, brakes and about half of the bars.", "1 h; stands, two scale pads"), Share(0.10)),
        Number("rear.housing_inertia", k => k.Number("rear.unsprung") * 0.145 * 0.145, "rear unsprung mass × (145 mm)²", Share(0.35), Guess,
            UsualRange.Of(k => k.Number("rear.unsprung"), 0.06 * 0.06, 0.30 * 0.30, "for an axle of this mass"),
            new("Hang the bare housing by a bolt 10 in from its centreline and time twenty swings: inertia = mass × g × distance × (time of one swing / 2π)² less mass × distance².", "1 h when it is bare; a watch, scales")),
        Number("car.aero.drag_area", _ => 0.70, ForAll, Share(0.15), Practice, UsualRange.Plain(0.25, 1.4, "for a car"), new("Coast down from 60 mph on a calm day, both ways, from a log.", "1 h; data log")),
        Number("car.aero.height", k => 0.95 * k.Number("car.cg_height"), "0.95 × the height of the centre of gravity", Share(0.25), Guess, UsualRange.Plain(0.15, 1.3, "for a car")),
        Number("car.aero.air_density", _ => 1.2, "dry air of 20 °C at 1013 hPa", Share(0.05), "gas law", UsualRange.Plain(0.85, 1.4, "for air at a track"), new("From air pressure and temperature of a weather station.", "2 min")),
        Set("car.ride_height.front", Amount(Inch / 16), RideHeight, Marks),
        Set("car.ride_height.rear", Amount(Inch / 16), RideHeight, Marks),
    ];

    internal static double PitchInertia(KnownReading k)
    {
        double mass = k.Mass, ahead = k.CentreAhead, height = k.Number("car.cg_height");
        double whole = WholeCarInertia.Of(mass, ahead, k.Wheelbase - ahead);
        var front = new UnsprungPart(k.Number("front.unsprung"), k.Wheelbase - ahead, k.Number("front.tire.loaded_radius") - height, k.Number("front.tire.spin_inertia"));
        double spin = k.Number("rear.tire.carcass.rim_inertia") + k.Number("rear.tire.carcass.belt_inertia");
        var rear = new UnsprungPart(k.Number("rear.unsprung"), -ahead, k.Number("rear.tire.loaded_radius") - height, spin + k.Number("rear.housing_inertia"));
        return WholeCarInertia.Sprung(whole, mass, front, rear);
    }
}
