using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using LaunchSim.Vehicle;

namespace LaunchSim.Dynamics;

/// <summary>
/// Constants of the Magic-Formula curve sin(C·atan(B·s − E·(B·s − atan(B·s)))) from what a person enters: slip
/// stiffness, peak slip, sliding over peak force.
/// </summary>
/// <param name="B">Stiffness factor.</param>
/// <param name="C">Shape factor.</param>
/// <param name="E">Curvature factor; above 1 the curve folds back.</param>
public readonly record struct TireCurve(double B, double C, double E)
{
    /// <summary>C = 2 − (2/π)·asin(r), B = (C_s/F_z)/(C·μ0), E so that the peak stands at s_p.</summary>
    /// <param name="tire">The tyre as entered; pressure and load leave the constants alone.</param>
    public static TireCurve From(Tire tire)
    {
        ArgumentNullException.ThrowIfNull(tire);
        return From(tire.SlipStiffness, tire.Grip, tire.PeakSlip, tire.SlidingRatio);
    }

    /// <summary>The same from the four numbers.</summary>
    /// <param name="slipStiffness">Slip stiffness per unit load.</param>
    /// <param name="grip">Peak grip μ0.</param>
    /// <param name="peakSlip">Peak slip s_p.</param>
    /// <param name="slidingRatio">Sliding over peak force r, 0 to 1.</param>
    public static TireCurve From(double slipStiffness, double grip, double peakSlip, double slidingRatio)
    {
        double c = 2 - (2 / Math.PI * Math.Asin(slidingRatio));
        double b = slipStiffness / (c * grip);
        double atPeak = b * peakSlip;
        double e = (atPeak - Math.Tan(Math.PI / (2 * c))) / (atPeak - Math.Atan(atPeak));
        return new TireCurve(b, c, e);
    }

    /// <summary>Force over its peak at a slip ratio.</summary>
    /// <param name="slip">Slip ratio s.</param>
    public double At(double slip)
    {
        double x = B * slip;
        return Math.Sin(C * Math.Atan(x - (E * (x - Math.Atan(x)))));
    }
}

/// <summary>The curves of rear and front tyres, evaluated side by side.</summary>
/// <param name="rear">The rear tyres' curve.</param>
/// <param name="front">The front tyres' curve.</param>
public readonly struct TireCurvePair(TireCurve rear, TireCurve front)
{
    private readonly Vector128<double> _b = Vector128.Create(rear.B, front.B);
    private readonly Vector128<double> _c = Vector128.Create(rear.C, front.C);
    private readonly Vector128<double> _e = Vector128.Create(rear.E, front.E);

    /// <summary>Force over its peak at the rear (first) and the front (second) slip ratio.</summary>
    /// <param name="slip">Both slip ratios.</param>
    public Vector128<double> At(Vector128<double> slip) => Value(Angle(Bend(slip)));

    /// <summary>
    /// The first of three links of a long chain, B·s − E·(B·s − atan(B·s)). Apart, so that other work can be done between them
    /// while the processor waits for each.
    /// </summary>
    /// <param name="slip">Both slip ratios.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector128<double> Bend(Vector128<double> slip)
    {
        Vector128<double> x = _b * slip;
        return x - (_e * (x - PairMath.Atan(x)));
    }

    /// <summary>The second link, C·atan.</summary>
    /// <param name="bent">What <see cref="Bend"/> gave.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector128<double> Angle(Vector128<double> bent) => _c * PairMath.Atan(bent);

    /// <summary>The third link, the sine.</summary>
    /// <param name="angle">What <see cref="Angle"/> gave.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector128<double> Value(Vector128<double> angle)
    {
        PairMath.SinCos(angle, out Vector128<double> sine, out _);
        return sine;
    }
}
