using System.Globalization;

namespace LaunchSim.Reports.Numbers;

/// <summary>One unit with the digits that make sense in it.</summary>
/// <param name="Unit">Its name.</param>
/// <param name="Factor">How much of the SI unit one of it is.</param>
/// <param name="Decimals">Digits after the point.</param>
public readonly record struct Scale(string Unit, double Factor, int Decimals)
{
    /// <summary>The number alone.</summary>
    /// <param name="value">In SI.</param>
    public string Number(double value) => Fixed(value / Factor, Decimals);

    /// <summary>The number with its unit.</summary>
    /// <param name="value">In SI.</param>
    public string Text(double value) => Unit == "°" ? Number(value) + Unit : $"{Number(value)} {Unit}";

    /// <summary>The number with its sign and its unit.</summary>
    /// <param name="value">In SI.</param>
    public string WithSign(double value)
    {
        string text = Text(value);
        return text[0] == '-' || IsZero(value) ? text : "+" + text;
    }

    /// <summary>Whether nothing of it is left after rounding.</summary>
    /// <param name="value">In SI.</param>
    public bool IsZero(double value) => Math.Abs(value / Factor) < 0.5 * Math.Pow(10, -Decimals);

    /// <summary>More or fewer digits.</summary>
    /// <param name="decimals">Digits after the point.</param>
    public Scale With(int decimals) => this with { Decimals = decimals };

    private static string Fixed(double value, int decimals)
    {
        string text = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text[0] == '-' && text.AsSpan().IndexOfAnyInRange('1', '9') < 0 ? text[1..] : text;
    }
}
