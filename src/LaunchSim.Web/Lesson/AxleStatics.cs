using LaunchSim.Dynamics;
using LaunchSim.Geometry;
using LaunchSim.Launch;

namespace LaunchSim.Web.Lesson;

/// <summary>
/// The statics of the lesson's drawing (docs/model.md, sections 5 and 12, without the axle's own mass and with all forces of
/// the ground at the ground): a solid axle with its wheels as one free body, pushed at the contact point, held by two bars whose
/// lines meet at the instant centre. The page's <c>lesson/statics.js</c> says the same in the browser.
/// </summary>
/// <param name="Slope">Slope of the line from the contact point to the instant centre; of both bars where they are parallel.</param>
/// <param name="CentreOfGravityHeight">Height h of the whole car's centre of gravity, m.</param>
/// <param name="Wheelbase">Wheelbase L, m.</param>
/// <param name="Thrust">Thrust F of both rear tyres, N, forward positive.</param>
public sealed record AxleStatics(double Slope, double CentreOfGravityHeight, double Wheelbase, double Thrust)
{
    /// <summary>Slope h/L of the neutral line.</summary>
    public double NeutralSlope => CentreOfGravityHeight / Wheelbase;

    /// <summary>Percent anti-squat.</summary>
    public double Percent => 100 * Slope / NeutralSlope;

    /// <summary>Load that moves from the front to the rear tyres, N: F·h/L, once the car is carried in balance.</summary>
    public double Transfer => Thrust * NeutralSlope;

    /// <summary>What the bars press on the axle and lift at the body, N: F times the slope, from the moment balance of the axle about the instant centre.</summary>
    public double BarsPush => Thrust * Slope;

    /// <summary>What is over of the bars' push, N: positive pushes body and axle apart, negative lets the body sit down.</summary>
    public double Apart => BarsPush - Transfer;
}

/// <summary>How stiff a car's ends are at its wheels, both sides together, N/m: for small movements about the standing car.</summary>
/// <param name="Rear">Rear springs, per separation.</param>
/// <param name="Front">Front springs, per front gap.</param>
/// <param name="RearTire">Rear tyres.</param>
/// <param name="FrontTire">Front tyres.</param>
public sealed record WheelRates(double Rear, double Front, double RearTire, double FrontTire)
{
    /// <summary>A standing car's.</summary>
    /// <param name="car">The car.</param>
    public static WheelRates Of(StandingCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        LaunchModel model = car.Model;
        car.Map.Pose(car.Standing.Lambda, out LinkagePose pose);
        model.Spring.At(pose, out _, out double springRate, out _, out _);
        double perSeparation = springRate / pose.Z1;
        return new WheelRates(
            model.SpringRate * perSeparation * perSeparation,
            model.FrontSpringRate * model.FrontSpringRatio * model.FrontSpringRatio,
            model.RearTire.VerticalRate,
            model.FrontTire.VerticalRate);
    }
}
