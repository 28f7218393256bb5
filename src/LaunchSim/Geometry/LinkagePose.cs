namespace LaunchSim.Geometry;

/// <summary>
/// Where a linkage puts the axle housing relative to the body at one λ, with first and second derivatives by λ.
/// Lengths in m in the body's axes (x forward, z up), angles in rad, counter-clockwise (nose up) positive.
/// </summary>
public struct LinkagePose
{
    /// <summary>Axle centre p(λ), body axes, from the body frame's origin, m.</summary>
    public double X, Z;

    /// <summary>First derivative p'(λ), m/rad.</summary>
    public double X1, Z1;

    /// <summary>Second derivative p''(λ), m/rad².</summary>
    public double X2, Z2;

    /// <summary>Cosine and sine of the housing's angle α relative to the body, counted from the measured car.</summary>
    public double Cos, Sin;

    /// <summary>First derivative α'(λ).</summary>
    public double Angle1;

    /// <summary>Second derivative α''(λ), 1/rad.</summary>
    public double Angle2;

    /// <summary>How far the linkage is from a singular position, as <see cref="ILinkageMap.Margin"/> has it: a ratio, 0 there.</summary>
    public double Margin;

    /// <summary>The housing's angle α relative to the body, rad.</summary>
    public readonly double Angle => Math.Atan2(Sin, Cos);

    /// <summary>A vector fixed in the housing, given in the measured car's axes, turned into the body's axes.</summary>
    /// <param name="x">Forward component in the measured car, m.</param>
    /// <param name="z">Upward component in the measured car, m.</param>
    public readonly (double X, double Z) Turn(double x, double z) => ((Cos * x) - (Sin * z), (Sin * x) + (Cos * z));

    /// <summary>
    /// The instant centre of the housing relative to the body, body axes, m: where p' + α'·J·(P − p) vanishes.
    /// Not finite when α' = 0.
    /// </summary>
    public readonly (double X, double Z) InstantCentre => (X - (Z1 / Angle1), Z + (X1 / Angle1));
}
