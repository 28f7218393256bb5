using System.Globalization;
using System.Text.RegularExpressions;

namespace LaunchSim.Scenarios.Typical;

/// <summary>A tyre's size.</summary>
/// <param name="Width">Section width, m; above 0.</param>
/// <param name="AspectPercent">Height of the sidewall over the width, percent; above 0.</param>
/// <param name="RimDiameter">Diameter of the rim, m; above 0.</param>
public sealed partial record TireSize(double Width, double AspectPercent, double RimDiameter)
{
    private const double Inch = 0.0254;

    /// <summary>Diameter without load, m.</summary>
    public double Diameter => RimDiameter + (2 * Width * AspectPercent / 100);

    /// <summary>Reads a size as it stands on the sidewall: <c>275/60R15</c> (also <c>P275/60-15</c>), or <c>28x10.5-15</c> in inches of diameter, width and rim.</summary>
    /// <param name="text">The size.</param>
    /// <returns>The size; null when it is none, or none that a tyre can have.</returns>
    public static TireSize? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (Metric().Match(text) is { Success: true } metric)
        {
            return Fit(new TireSize(Number(metric, 1) / 1000, Number(metric, 2), Number(metric, 3) * Inch));
        }

        if (Inches().Match(text) is not { Success: true } inches)
        {
            return null;
        }

        double diameter = Number(inches, 1), width = Number(inches, 2), rim = Number(inches, 3);
        return Fit(new TireSize(width * Inch, (diameter - rim) / 2 / width * 100, rim * Inch));
    }

    /// <summary>The size in metric notation.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Width * 1000:0}/{AspectPercent:0}R{RimDiameter / Inch:0.#}");

    private static TireSize? Fit(TireSize size) =>
        size is { Width: > 0.05 and < 0.7, AspectPercent: > 10 and < 120, RimDiameter: > 0.15 and < 0.8 } ? size : null;

    private static double Number(Match match, int group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\s*(?:P|LT)?\s*(\d{2,3})\s*/\s*(\d{2,3})\s*(?:Z?R|-|\s)\s*(\d{2}(?:\.\d)?)\s*(?:LT|[A-Z])?\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Metric();

    [GeneratedRegex(@"^\s*(\d{2}(?:\.\d{1,2})?)\s*[x×/]\s*(\d{1,2}(?:\.\d{1,2})?)\s*(?:-|R|x|×)\s*(\d{2}(?:\.\d)?)\s*[A-Z]?\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Inches();
}
