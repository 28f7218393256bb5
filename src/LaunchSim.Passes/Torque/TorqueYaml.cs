using System.Globalization;

namespace LaunchSim.Passes.Torque;

/// <summary>A torque table as it is pasted into a scenario.</summary>
public static class TorqueYaml
{
    /// <summary>The lines.</summary>
    /// <param name="row">The table.</param>
    /// <param name="isShop">In lb-ft; otherwise in N·m.</param>
    /// <param name="isWhole">Whether a whole driveline of axle torque is wanted, since the file has another; otherwise the two rows alone.</param>
    /// <returns>Lines that end in a line feed.</returns>
    public static string Of(TorqueRow row, bool isShop, bool isWhole)
    {
        ArgumentNullException.ThrowIfNull(row);
        (double factor, string unit) = isShop ? (1.3558179483314, "lb-ft") : (1.0, "N·m");
        string torques = string.Create(CultureInfo.InvariantCulture, $"torque: {Numbers(row.Torques, factor, 0)} {unit} ±{Math.Max(0.1, row.Percent):0.#} %\n");
        return row.IsEngine
            ? $"speed: {Numbers(row.At, Math.PI / 30, 0)} rpm\n{torques}"
            : isWhole ? $"driveline:\n  type: axle-torque\n  time: {Numbers(row.At, 1, 3)} s\n  {torques}"
            : $"time: {Numbers(row.At, 1, 3)} s\n{torques}";
    }

    private static string Numbers(IReadOnlyList<double> values, double factor, int decimals) =>
        string.Join(' ', values.Select(value => Math.Round(value / factor, decimals, MidpointRounding.AwayFromZero).ToString("0.###", CultureInfo.InvariantCulture)));
}
