namespace LaunchSim.Integration;

/// <summary>A scalar function to be solved for its sign change. Implement it as a struct.</summary>
public interface IScalarFunction
{
    /// <summary>The function's value.</summary>
    /// <param name="x">The argument.</param>
    double At(double x);
}

/// <summary>
/// Locates a sign change by Chandrupatla's method (Advances in Engineering Software 28 (1997) 145–149, from memory):
/// inverse quadratic interpolation where it is safe, bisection elsewhere.
/// </summary>
public static class EventLocator
{
    /// <summary>
    /// Narrows the bracket until it is not wider than <paramref name="tolerance"/> and returns its far end: the first
    /// argument known to lie on the side of <paramref name="b"/>.
    /// </summary>
    /// <typeparam name="TFunction">The function's type.</typeparam>
    /// <param name="function">The function.</param>
    /// <param name="a">Near end of the bracket.</param>
    /// <param name="fa">Value there, not of the sign of <paramref name="fb"/>.</param>
    /// <param name="b">Far end of the bracket, above <paramref name="a"/>.</param>
    /// <param name="fb">Value there; zero counts as the far side.</param>
    /// <param name="tolerance">Width at which to stop; above 0.</param>
    /// <param name="evaluations">Counts the evaluations made.</param>
    public static double FarSide<TFunction>(
        ref TFunction function, double a, double fa, double b, double fb, double tolerance, ref int evaluations)
        where TFunction : struct, IScalarFunction
    {
        double near = a, nearValue = fa, far = b, farValue = fb;
        double old = a, oldValue = fa;
        double share = 0.5;
        bool farPositive = fb > 0 || (fb == 0 && fa < 0);

        for (int i = 0; i < 100 && far - near > tolerance; i++)
        {
            // Never nearer than half the tolerance to an end: once one end is at the root to rounding, the next point
            // falls on the other side and closes the bracket.
            double x = Math.Min(Math.Max(near + (share * (far - near)), near + (0.5 * tolerance)), far - (0.5 * tolerance));
            double f = function.At(x);
            evaluations++;
            bool onFarSide = f == 0 || (f > 0) == farPositive;
            double latest, latestValue, other, otherValue;
            if (onFarSide)
            {
                (old, oldValue) = (far, farValue);
                (far, farValue) = (x, f);
                (latest, latestValue, other, otherValue) = (far, farValue, near, nearValue);
            }
            else
            {
                (old, oldValue) = (near, nearValue);
                (near, nearValue) = (x, f);
                (latest, latestValue, other, otherValue) = (near, nearValue, far, farValue);
            }

            if (f == 0)
            {
                return x;
            }

            share = 0.5;
            double xi = (latest - other) / (old - other);
            double phi = (latestValue - otherValue) / (oldValue - otherValue);
            if (double.IsFinite(phi) && phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)
            {
                double fromLatest =
                    (latestValue / (otherValue - latestValue) * (oldValue / (otherValue - oldValue)))
                    + ((old - latest) / (other - latest) * (latestValue / (oldValue - latestValue)) * (otherValue / (oldValue - otherValue)));
                share = onFarSide ? 1 - fromLatest : fromLatest;
            }
        }

        return far;
    }
}
