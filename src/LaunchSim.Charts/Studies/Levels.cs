using System.Globalization;
using OxyPlot;

namespace LaunchSim.Charts.Studies;

/// <summary>Round values between which a map has one shade each: one hue from light to dark, so that grey keeps the order.</summary>
internal sealed class Levels
{
    private const int Most = 9;

    // Lightness falls evenly from one to the other.
    private static readonly OxyColor Light = OxyColor.FromRgb(0xEC, 0xF3, 0xF7), Dark = OxyColor.FromRgb(0x07, 0x3B, 0x5A);

    private static readonly double[] Steps = [1, 2, 5, 10];

    private readonly double _low, _step;
    private readonly int _decimals;

    /// <summary>Levels for values.</summary>
    /// <param name="values">The values; what is not finite is passed over.</param>
    /// <param name="decimals">Digits after the point that make sense: no step is smaller.</param>
    public Levels(IEnumerable<double> values, int decimals)
    {
        double least = double.PositiveInfinity, most = double.NegativeInfinity;
        foreach (double value in values.Where(double.IsFinite))
        {
            (least, most) = (Math.Min(least, value), Math.Max(most, value));
        }

        _decimals = decimals;
        double digit = Math.Pow(10, -decimals), wanted = Math.Max(digit, (most - least) / (Most - 1));
        double power = Math.Pow(10, Math.Floor(Math.Log10(wanted)));
        _step = Steps.Select(one => one * power).First(one => one >= wanted * (1 - 1e-9));
        _low = least > most ? 0 : Math.Floor((least / _step) + 1e-9) * _step;
        Bands = least > most ? 0 : Math.Max(1, (int)Math.Ceiling(((most - _low) / _step) - 1e-9));
    }

    /// <summary>How many shades there are.</summary>
    public int Bands { get; }

    /// <summary>The lower end of a band; of the one beyond the last, the upper end of the last.</summary>
    public double Low(int band) => _low + (band * _step);

    /// <summary>Which band a value is in.</summary>
    public int Of(double value) => Math.Clamp((int)Math.Floor((value - _low) / _step), 0, Bands - 1);

    /// <summary>A band's shade.</summary>
    public OxyColor Color(int band) => OxyColor.Interpolate(Light, Dark, Bands <= 1 ? 0.3 : band / (Bands - 1.0));

    /// <summary>Whether text on a band is better light.</summary>
    public bool IsDark(int band) => Bands > 1 && band / (Bands - 1.0) > 0.5;

    /// <summary>A level as a number.</summary>
    public string Name(double level)
    {
        int decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(_step) - 1e-9), 0, Math.Max(0, _decimals));
        string text = level.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text[0] == '-' && text.AsSpan().IndexOfAnyInRange('1', '9') < 0 ? text[1..] : text;
    }
}
