using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Vehicle;
using LaunchSim.Web.Lesson;

namespace LaunchSim.Web.Tests.Lesson;

/// <summary>
/// What the lesson says of the drawing and of what it leaves out, against the engine. The housing is cut free once more, here in
/// the ground's axes and with accelerations from differences of places, which the engine does not do:
/// with P the instant centre, no link has a moment about P, hence
/// d·(F_z − m_r·(g + a_z)) = (e − z)·(F_x − m_r·a_x) + T − I_h·φ'' + moment of spring and damper about P,
/// and the links press with F_z − m_r·(g + a_z) + S_z, less the same in the standing car.
/// </summary>
public class BarsPushTests
{
    private const double Step = 2e-3;

    [Theory]
    [InlineData(0.03)]
    [InlineData(0.1)]
    [InlineData(0.2)]
    [InlineData(0.7)]
    public void Engine_OfEveryCase_IsTheBalanceOfTheHousing(double time)
    {
        foreach (LessonCase one in TheLesson.Runs.Clicks.Append(TheLesson.Runs.Below).Append(TheLesson.Runs.At))
        {
            double balance = Balance(one, time), engine = BarsPush.At(one.Run.Solution, time).Engine;

            // Second differences over 2 ms of what swings at some 60 rad/s: (60·0.002)²/12 of 500 N, and the dense output's own.
            Assert.True(Math.Abs(engine - balance) < 25, $"{one.Key} at {time}: {engine} and {balance}");
        }
    }

    /// <summary>Nothing of a size is left without a name: the rest is small beside what has one.</summary>
    [Fact]
    public void Rest_OfTheAboveCase_IsSmallAtATenth()
    {
        var push = BarsPush.At(TheLesson.Runs.Above.Run.Solution, 0.1);
        Assert.Equal(push.Engine, push.Drawing + push.Wheels + push.AxleMass + push.Rest, 1e-9);
        Assert.True(Math.Abs(push.Rest) < 0.05 * push.Engine, $"{push}");
        Assert.True(push.Wheels > push.AxleMass && push.AxleMass > Math.Abs(push.Rest), $"{push}");
    }

    /// <summary>
    /// By hand, of the car as it is written: thrust 3037 lb at 0.1 s would press 3037 × 7.5/23.4 = 973 lb with the standing car's
    /// bars. In the run the bars have turned a little.
    /// </summary>
    [Fact]
    public void Drawing_OfTheAboveCase_IsThrustTimesTheSlopeOfThatInstant()
    {
        TheLesson.Runs.Above.Run.Solution.At(0.1, out Observation seen);
        double slope = seen.AntiSquatPercent / 100 * TheLesson.Runs.Above.Run.Solution.Car.Line.NeutralSlope;
        Assert.Equal(seen.RearThrust * slope, BarsPush.At(TheLesson.Runs.Above.Run.Solution, 0.1).Drawing, 1e-6 * seen.RearThrust);
        Assert.InRange(BarsPush.At(TheLesson.Runs.Above.Run.Solution, 0.1).Drawing / (seen.RearThrust * 7.5 / 23.4375), 0.95, 1.0);
    }

    private static double Balance(LessonCase one, double time)
    {
        LaunchSolution launch = one.Run.Solution;
        LaunchModel model = launch.Car.Model;
        launch.At(time - Step, out Observation before);
        launch.At(time, out Observation now);
        launch.At(time + Step, out Observation after);
        double ax = Second(before.RearWheelPlace, now.RearWheelPlace, after.RearWheelPlace);
        double az = Second(before.RearWheelHeight, now.RearWheelHeight, after.RearWheelHeight);
        double turn = Second(before.Pitch + before.PinionChange, now.Pitch + now.PinionChange, after.Pitch + after.PinionChange);
        double d = now.InstantCentreAhead, e = now.InstantCentreUp, z = now.RearWheelHeight;
        (double sx, double sz, double x, double height) = Unit(one, now);
        double moment = (x * sz) - (height * sx);
        double load = ((((e - z) * (now.RearThrust - (model.RearMass * ax))) + now.AxleTorque - (model.HousingInertia * turn) + moment) / d) + (model.RearMass * LaunchModel.Gravity);
        launch.At(0, out Observation standing);
        (_, double standingUp, _, _) = Unit(one, standing);
        return load + sz - launch.Car.Standing.RearLoad - standingUp;

        // The instant centre is the point about which moments are taken: x ahead and height above it.
        (double X, double Z, double Ahead, double Up) Unit(LessonCase of, in Observation seen)
        {
            RearEnd rear = of.Car.Scenario.Car!.Rear;
            Standing at = of.Run.Solution.Car.Standing;
            double housing = seen.Pitch + seen.PinionChange;
            (double hs, double hc) = Math.SinCos(housing);
            (double bs, double bc) = Math.SinCos(seen.Pitch);
            double mountX = rear.SpringAxleMount.Ahead, mountZ = rear.SpringAxleMount.Up - at.RearWheelHeight;
            double axleX = (hc * mountX) - (hs * mountZ), axleZ = seen.RearWheelHeight + (hs * mountX) + (hc * mountZ);
            double bodyX = rear.SpringBodyMount.Ahead, bodyZ = rear.SpringBodyMount.Up - at.RearWheelHeight;

            // The body's point that stood at the wheel centre, seen from the wheel centre.
            double place = at.X + seen.Distance - ((bc * at.X) - (bs * (at.Z - at.RearWheelHeight))) - seen.RearWheelPlace;
            double topX = place + (bc * bodyX) - (bs * bodyZ), topZ = at.RearWheelHeight + seen.RearRise + (bs * bodyX) + (bc * bodyZ);
            double length = Math.Sqrt(((axleX - topX) * (axleX - topX)) + ((axleZ - topZ) * (axleZ - topZ)));
            double force = 2 * (seen.RearSpringForce + seen.RearDamperForce - seen.RearTopForce + seen.RearBottomForce);
            return (force * (axleX - topX) / length, force * (axleZ - topZ) / length, axleX - seen.InstantCentreAhead, axleZ - seen.InstantCentreUp);
        }
    }

    private static double Second(double before, double now, double after) => (before - (2 * now) + after) / (Step * Step);
}
