namespace LaunchSim.Scenarios.Typical;

/// <summary>
/// A tyre's vertical rate by its size and pressure: the regression of T. B. Rhyne, Tire Science and Technology 33(3),
/// 136–155 (from memory): K_z [kg/mm] = 0.00028·P·√((1.03 − 0.004·AR)·S·(S·AR/50 + D)) + 3.45, P in kPa, section width S and
/// rim diameter D in mm, aspect ratio AR in percent.
/// </summary>
public static class TireRate
{
    private const double KilogramPerMillimetre = 9.80665 / 0.001;

    /// <summary>The vertical rate, N/m.</summary>
    /// <param name="size">The tyre's size.</param>
    /// <param name="pressure">Pressure above the air's, Pa; 0 or more.</param>
    public static double Of(TireSize size, double pressure) => (Slope(size) * pressure) + (3.45 * KilogramPerMillimetre);

    /// <summary>What pressure is worth, N/m per Pa.</summary>
    /// <param name="size">The tyre's size.</param>
    public static double Slope(TireSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        double width = size.Width * 1000, aspect = size.AspectPercent, rim = size.RimDiameter * 1000;
        return 0.00028 * Math.Sqrt((1.03 - (0.004 * aspect)) * width * ((width * aspect / 50) + rim)) * KilogramPerMillimetre / 1000;
    }
}
