using System.Globalization;

namespace LaunchSim.Launch;

/// <summary>
/// Numbers inside sentences about a standing car, in SI and, for whoever typed shop units, in those too: what finds a fault
/// does not know what file it came from.
/// </summary>
internal static class Spoken
{
    private const double Inch = 0.0254, PoundForce = 4.4482216152605, PoundMass = 0.45359237;

    /// <summary>A length, m.</summary>
    public static string Length(double metres) => string.Create(CultureInfo.InvariantCulture, $"{metres * 1000:0.#} mm ({metres / Inch:0.##} in)");

    /// <summary>A force, N.</summary>
    public static string Force(double newtons) => string.Create(CultureInfo.InvariantCulture, $"{newtons:0} N ({newtons / PoundForce:0} lb)");

    /// <summary>A mass, kg.</summary>
    public static string Mass(double kilograms) => string.Create(CultureInfo.InvariantCulture, $"{kilograms:0.#} kg ({kilograms / PoundMass:0} lb)");

    /// <summary>A rate, N/m.</summary>
    public static string Rate(double rate) => string.Create(CultureInfo.InvariantCulture, $"{rate:0} N/m ({rate * Inch / PoundForce:0} lb/in)");
}
