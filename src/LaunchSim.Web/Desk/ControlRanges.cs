using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Web.Desk;

/// <summary>
/// How far a handle goes and by which step. Ranges are those that are usual for a car like this one, widened to hold the
/// present value; steps, and how much ballast there may be, are a choice of this program (common practice, no source).
/// </summary>
internal static class ControlRanges
{
    private const double Inch = 0.0254, Pound = 0.45359237, PoundForce = 4.4482216152605, Psi = PoundForce / (Inch * Inch);
    private const double MostBallast = 200 * Pound;

    /// <summary>The range of a number.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="now">What it is at present.</param>
    /// <param name="car">What is known of the car.</param>
    public static ControlRange Of(string path, Quantity now, KnownCar car)
    {
        double present = now.Numbers[0], factor = now.Unit.Factor, step = Step(path, now.Unit);
        (double low, double high, string forWhat) = Usual(path, now.Si(), car);

        // On whole steps; the present value need not be on one.
        double from = Math.Min(Math.Ceiling((low / factor / step) - 1e-9), Math.Floor((present / step) + 1e-9)) * step;
        double to = Math.Max(Math.Floor((high / factor / step) + 1e-9), Math.Ceiling((present / step) - 1e-9)) * step;
        return new ControlRange(Rounded(from), Rounded(to), step, forWhat);
    }

    /// <summary>The step of a number in its own unit.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="unit">Its unit.</param>
    public static double Step(string path, Unit unit)
    {
        if (unit.Text == "in")
        {
            return 0.125;
        }

        double wanted = path.EndsWith(".pressure.set", StringComparison.Ordinal) ? 0.5 * Psi
            : path.EndsWith(".spring.rate", StringComparison.Ordinal) ? 5 * PoundForce / Inch
            : path.StartsWith("car.ride_height.", StringComparison.Ordinal) ? Inch / 8
            : 5 * Pound;
        return Round(wanted / unit.Factor);
    }

    private static (double Low, double High, string ForWhat) Usual(string path, double now, KnownCar car) =>
        TypicalRegister.Find(path)?.UsualFor(car) is [{ } span] ? (span.Low, span.High, span.ForWhat)
            : path.EndsWith(".mass", StringComparison.Ordinal) ? (0, Math.Max(MostBallast, 2 * now), "for ballast")
            : (Math.Min(0.5 * now, 2 * now), Math.Max(0.5 * now, 2 * now), "from half to twice the present value");

    // The nearest of 1, 2 and 5 times a power of ten.
    private static double Round(double value)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(value)));
        double best = power;
        foreach (double candidate in (ReadOnlySpan<double>)[2 * power, 5 * power, 10 * power])
        {
            best = Math.Abs(Math.Log(candidate / value)) < Math.Abs(Math.Log(best / value)) ? candidate : best;
        }

        return Rounded(best);
    }

    // Steps of a tenth add up to 14.600000000000001.
    private static double Rounded(double value) => Math.Round(value, 10);
}
