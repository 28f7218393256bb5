using LaunchSim.Geometry;
using LaunchSim.Vehicle;

namespace LaunchSim.Web.Lesson;

/// <summary>A point at which the page's statics can be held to the engine's.</summary>
/// <param name="Name">What is special about it.</param>
/// <param name="Linkage">The bars, m.</param>
/// <param name="CentreOfGravityHeight">Height of the centre of gravity, m.</param>
/// <param name="Wheelbase">Wheelbase, m.</param>
/// <param name="Thrust">Thrust, N.</param>
internal sealed record LessonCheck(string Name, FourLink Linkage, double CentreOfGravityHeight, double Wheelbase, double Thrust)
{
    /// <summary>What the engine reads off these bars.</summary>
    public StaticLine Line => SideView.AsMeasured(Linkage, null, CentreOfGravityHeight, Wheelbase).Line;

    /// <summary>The statics with the engine's slope.</summary>
    public AxleStatics Statics => new(Line.Slope, CentreOfGravityHeight, Wheelbase, Thrust);
}

/// <summary>The check points in the document: the lesson's own cars, and where formulas break.</summary>
internal static class LessonChecks
{
    /// <summary>All of them.</summary>
    /// <param name="n">The numbers.</param>
    public static IReadOnlyList<LessonCheck> Of(LessonNumbers n)
    {
        FourLink below = Bars(n.Below), at = Bars(n.At), above = Bars(n.Above);
        double parallelUp = above.UpperAxle.Up + ((above.LowerBody.Up - above.LowerAxle.Up) / (above.LowerBody.Ahead - above.LowerAxle.Ahead) * (above.UpperBody.Ahead - above.UpperAxle.Ahead));
        return
        [
            Check("below 100 %", below),
            Check("at 100 %", at),
            Check("above 100 %", above),
            Check("parallel, level bars", Raised(above, parallelUp)),
            Check("parallel bars that climb", Climbing(Raised(above, parallelUp), 0.2)),
            Check("instant centre behind the axle", Raised(above, parallelUp + 0.06)),
            Check("bars that fall: percent below 0", Climbing(Raised(above, parallelUp - 0.02), -0.25)),
            Check("a short arm", Raised(above, above.LowerBody.Up + 0.04)),
            new LessonCheck("a high centre of gravity, a short wheelbase", above, 0.9, 1.8, 2 * n.Thrust.Value),
            new LessonCheck("a low centre of gravity, a long wheelbase", at, 0.3, 3.5, 0.5 * n.Thrust.Value),
        ];

        LessonCheck Check(string name, FourLink bars) => new(name, bars, n.Standing.CentreOfGravityHeight, n.Standing.Wheelbase, n.Thrust.Value);
    }

    private static FourLink Bars(CaseNumbers of) => (FourLink)of.Case.Car.Scenario.Car!.Rear.Linkage;

    private static FourLink Raised(FourLink bars, double up) => bars with { UpperBody = bars.UpperBody with { Up = up } };

    private static FourLink Climbing(FourLink bars, double slope) => bars with
    {
        LowerBody = Lifted(bars.LowerBody, slope * (bars.LowerBody.Ahead - bars.LowerAxle.Ahead)),
        UpperBody = Lifted(bars.UpperBody, slope * (bars.UpperBody.Ahead - bars.UpperAxle.Ahead)),
    };

    private static Point Lifted(Point point, double by) => point with { Up = point.Up + by };
}
