using LaunchSim.Geometry;
using LaunchSim.Launch;

namespace LaunchSim.Figures.Families;

/// <summary>The static line of the standing car, its loads, and what the static line is drawn from.</summary>
internal sealed class StaticFigures : IFigureFamily
{
    private const string AtInfinity = "the bars are parallel: the instant centre is at infinity";
    private const string NoSuchBar = "this linkage has no such bar";

    // Beyond this the bars are parallel but for rounding, m.
    private const double Farthest = 1e6;

    private static readonly FigureDefinition
        Percent = new("standing_anti_squat_percent", "Anti-squat", FigureUnit.Percent,
            "slope from the rear contact point to the instant centre over h/L, standing car"),
        Ahead = new("standing_instant_centre_ahead_m", "Instant centre ahead", FigureUnit.Length,
            "ahead of the rear wheel centre, standing car"),
        Up = new("standing_instant_centre_up_m", "Instant centre up", FigureUnit.Length, "above the ground, standing car"),
        Neutral = new("standing_neutral_line_up_m", "Neutral line at the instant centre", FigureUnit.Length,
            "height over the ground of the line of 100 % at the instant centre, standing car"),
        Lower = new("standing_lower_bar_climb_rad", "Lower bar climbs", FigureUnit.Angle, "angle over the ground, positive climbing to the front"),
        Upper = new("standing_upper_bar_climb_rad", "Upper bar climbs", FigureUnit.Angle, "angle over the ground, positive climbing to the front"),
        Ladder = new("standing_ladder_bar_climb_rad", "Ladder bar climbs", FigureUnit.Angle,
            "angle over the ground of the line from the axle to the bar's pivot, positive climbing to the front"),
        Pinion = new("standing_pinion_angle_rad", "Pinion angle", FigureUnit.Angle, "as entered for the standing car, nose up positive"),
        CentreOfGravity = new("standing_cg_height_m", "Centre of gravity", FigureUnit.Length, "height h of the whole car's over the ground, standing car"),
        Wheelbase = new("standing_wheelbase_m", "Wheelbase", FigureUnit.Length, "horizontal distance L of the wheel centres, standing car"),
        RearLoad = new("rear_tire_load_static_n", "Rear tyre load, static", FigureUnit.Force, "axle, standing car"),
        FrontLoad = new("front_tire_load_static_n", "Front tyre load, static", FigureUnit.Force, "axle, standing car");

    public string Title => "Static line";

    public IReadOnlyList<FigureDefinition> Definitions { get; } =
        [Percent, Ahead, Up, Neutral, Lower, Upper, Ladder, Pinion, CentreOfGravity, Wheelbase, RearLoad, FrontLoad];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        StandingCar car = launch.Solution.Car;
        StaticLine line = car.Line;
        figures.Set(Percent, line.Percent, "the contact point would move level: the percent is infinite");
        bool near = Math.Abs(line.InstantCentreAhead) < Farthest && Math.Abs(line.InstantCentreUp) < Farthest;
        figures.Set(Ahead, near ? line.InstantCentreAhead : double.NaN, AtInfinity);
        figures.Set(Up, near ? line.InstantCentreUp : double.NaN, AtInfinity);
        figures.Set(Neutral, near ? line.NeutralLineUp : double.NaN, AtInfinity);
        figures.Set(Lower, Climb(line, "lower bar"), NoSuchBar);
        figures.Set(Upper, Climb(line, "upper bar"), NoSuchBar);
        figures.Set(Ladder, Climb(line, "ladder bar"), NoSuchBar);
        figures.Set(Pinion, car.PinionAngle ?? double.NaN, "not entered");
        figures.Set(CentreOfGravity, car.Standing.CentreOfGravityHeight);
        figures.Set(Wheelbase, car.Standing.Wheelbase);
        figures.Set(RearLoad, car.Standing.RearLoad);
        figures.Set(FrontLoad, car.Standing.FrontLoad);
    }

    private static double Climb(StaticLine line, string bar)
    {
        for (int i = 0; i < line.Bars.Count; i++)
        {
            if (line.Bars[i].Name == bar)
            {
                return line.Bars[i].Climb;
            }
        }

        return double.NaN;
    }
}
