using LaunchSim.Launch;
using LaunchSim.Passes.Aligning;
using LaunchSim.Passes.Measured;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Vehicle;

namespace LaunchSim.Passes.Logs;

/// <summary>A column of a mapping with what the car adds to it: ratio, radius, prediction.</summary>
/// <param name="Column">The column.</param>
/// <param name="Quantity">What it measures.</param>
/// <param name="ToAxle">By what its SI value is multiplied to be the axle's: one over the ratio of the shaft or the radius of the wheel.</param>
/// <param name="Predicted">What was predicted.</param>
internal sealed record PreparedColumn(LogColumn Column, MeasuredQuantity Quantity, double ToAxle, PredictedCourse Predicted)
{
    // A row of pixels is told to half of one.
    private const double PixelSd = 0.5;

    /// <summary>What one of the column's numbers is in SI, at the axle.</summary>
    public double Factor => Column.Factor * ToAxle;

    /// <summary>The reading of the standing car, SI at the axle; null where it was not entered and is of no account.</summary>
    public double? Zero => Column.Zero is { } zero ? zero * Math.Sign(Column.Factor) * ToAxle : Quantity.HasFreeZero ? null : 0;

    /// <summary>One standard deviation of a single value, SI at the axle.</summary>
    public double Noise => Column.Noise is { } noise ? noise * ToAxle
        : Column.IsPixels ? Math.Max(Quantity.Noise, PixelSd * Column.UnitFactor)
        : Quantity.Driveline ? Quantity.Noise * ToAxle
        : Quantity.Noise;

    /// <summary>Whether the car has such a quantity at all.</summary>
    public bool IsPredicted => Predicted.Duration > 0 && double.IsFinite(Predicted.At(Predicted.Duration / 2));

    /// <summary>Brings mapping and car together.</summary>
    /// <param name="columns">The mapping's columns.</param>
    /// <param name="solution">The predicted launch.</param>
    /// <param name="remarks">Takes what was taken from the car.</param>
    /// <param name="errors">Takes what is missing.</param>
    public static IReadOnlyList<PreparedColumn> Of(IReadOnlyList<LogColumn> columns, LaunchSolution solution, List<string> remarks, List<Diagnostic> errors)
    {
        MeasuredQuantity[] quantities = [.. columns.Select(column => MeasuredQuantities.Find(column.Quantity)!)];
        IReadOnlyList<PredictedCourse> courses = PredictedCourse.Of(solution, quantities);
        return [.. columns.Select((column, i) => new PreparedColumn(column, quantities[i], AtAxle(column, quantities[i], solution.Car, remarks, errors), courses[i]))];
    }

    private static double AtAxle(LogColumn column, MeasuredQuantity quantity, StandingCar car, List<string> remarks, List<Diagnostic> errors)
    {
        if (quantity.Driveline)
        {
            if (column.Ratio is { } ratio)
            {
                return 1 / ratio;
            }

            if (car.Car.Driveline is EngineDriveline { FinalDrive: var final })
            {
                remarks.Add(FormattableString.Invariant($"`{column.Column}`: turned to the axle by the scenario's final drive, {final:0.###}."));
                return 1 / final;
            }

            errors.Add(column.At.Error($"{column.Path}.ratio", $"`{column.Column}` as {quantity.Words} without a ratio", "turns of the shaft for one of the axle, since the scenario has no final_drive", "add ratio: 4.10, whatever the axle has"));
            return 1;
        }

        if (column.IsRolling)
        {
            if (column.Radius is { } entered)
            {
                return 1 / entered;
            }

            double radius = quantity.Key.StartsWith("front", StringComparison.Ordinal) ? car.Standing.FrontWheelHeight : car.Standing.RearWheelHeight;
            remarks.Add(FormattableString.Invariant($"`{column.Column}`: a speed over the ground, turned into a wheel's by the height of the scenario's wheel centre, {1e3 * radius:0} mm; a radius: in the mapping says what the logger was set to."));
            return 1 / radius;
        }

        return 1;
    }
}
