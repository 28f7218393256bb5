using System.Globalization;
using System.Text;

namespace LaunchSim.Scenarios.Units;

/// <summary>
/// Steps through a quantity's text and reads its numbers: decimals, powers of ten, fractions (5/8) and mixed fractions
/// (13-5/8), in the invariant culture.
/// </summary>
internal struct NumberCursor(string source)
{
    public int At { get; set; }

    public readonly char Peek => At < source.Length ? source[At] : '\0';

    public readonly bool AtNumber
    {
        get
        {
            int at = Peek is '+' or '-' or '−' ? At + 1 : At;
            at = at < source.Length && source[at] == '.' ? at + 1 : at;
            return at < source.Length && char.IsAsciiDigit(source[at]);
        }
    }

    /// <summary>How many characters a ± takes at a place, 0 when there is none.</summary>
    public static int PlusMinusWidth(string text, int at) =>
        text[at] == '±' ? 1
        : string.CompareOrdinal(text, at, "+-", 0, 2) == 0 ? 2
        : string.CompareOrdinal(text, at, "+/-", 0, 3) == 0 ? 3
        : 0;

    public void SkipSpaces()
    {
        while (At < source.Length && char.IsWhiteSpace(source[At]))
        {
            At++;
        }
    }

    public bool TryPlusMinus()
    {
        int width = At < source.Length ? PlusMinusWidth(source, At) : 0;
        At += width;
        return width > 0;
    }

    public bool TryPercentAtEnd()
    {
        if (Peek != '%' || source.AsSpan(At + 1).Trim().Length > 0)
        {
            return false;
        }

        At = source.Length;
        return true;
    }

    public bool TryCommaAndSpace()
    {
        if (Peek != ',' || (At + 1 < source.Length && !char.IsWhiteSpace(source[At + 1])))
        {
            return false;
        }

        At++;
        return true;
    }

    /// <summary>Reads one number. False without a problem means that no number begins here.</summary>
    public bool TryNumber(out double number, out QuantityProblem? problem)
    {
        number = 0;
        problem = ForeignDigits();
        if (problem is not null || !AtNumber)
        {
            return false;
        }

        int start = At;
        bool negative = Peek is '-' or '−';
        if (negative || Peek == '+')
        {
            At++;
        }

        int digits = At;
        SkipDigits();
        bool whole = true;
        if (Peek == '.')
        {
            whole = false;
            At++;
            SkipDigits();
        }

        if (Peek is 'e' or 'E' && HasExponent())
        {
            whole = false;
            At += char.IsAsciiDigit(source[At + 1]) ? 1 : 2;
            SkipDigits();
        }

        problem = ForeignDigits();
        if (problem is not null)
        {
            return false;
        }

        string text = source[digits..At];
        if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out number))
        {
            problem = new(start, $"`{source[start..At]}`, which is not a number", "write digits, with a point before the decimals");
            return false;
        }

        if (whole && !TryFraction(start, ref number, out problem))
        {
            return false;
        }

        if (!double.IsFinite(number))
        {
            problem = new(start, $"`{source[start..At]}`, a number too large to be one", "write the measured number");
            return false;
        }

        if (Peek is '.' || (Peek == '-' && At + 1 < source.Length && char.IsAsciiDigit(source[At + 1])))
        {
            problem = new(start, $"`{source[start..At]}{Peek}…`, numbers that run together", "part two numbers by a space; write a mixed fraction as in 13-5/8");
            return false;
        }

        number = negative ? -number : number;
        return true;
    }

    private void SkipDigits()
    {
        while (char.IsAsciiDigit(Peek))
        {
            At++;
        }
    }

    private readonly bool HasExponent()
    {
        int next = At + 1;
        if (next < source.Length && source[next] is '+' or '-')
        {
            next++;
        }

        return next < source.Length && char.IsAsciiDigit(source[next]);
    }

    private bool TryFraction(int start, ref double number, out QuantityProblem? problem)
    {
        problem = null;
        int at = At;
        bool mixed = Peek == '-';
        int top = mixed ? at + 1 : at;
        int slash = mixed ? SkipDigits(source, top) : at;
        if ((mixed && slash == top) || slash + 1 >= source.Length || source[slash] != '/' || !char.IsAsciiDigit(source[slash + 1]))
        {
            return true;
        }

        int end = SkipDigits(source, slash + 1);
        double below = double.Parse(source.AsSpan(slash + 1, end - slash - 1), NumberStyles.None, CultureInfo.InvariantCulture);
        double above = mixed ? double.Parse(source.AsSpan(top, slash - top), NumberStyles.None, CultureInfo.InvariantCulture) : number;
        At = end;
        if (below == 0 || (mixed && above >= below))
        {
            problem = new(start, $"`{source[start..end]}`, which is not a fraction", "write a mixed fraction as in 13-5/8; part two numbers by a space");
            return false;
        }

        number = mixed ? number + (above / below) : above / below;
        return true;
    }

    private static int SkipDigits(string text, int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return at;
    }

    private readonly QuantityProblem? ForeignDigits()
    {
        if (At >= source.Length || source[At] < 128 || CharUnicodeInfo.GetDecimalDigitValue(source, At) < 0)
        {
            return null;
        }

        var latin = new StringBuilder(source.Length);
        for (int i = 0; i < source.Length; i += char.IsSurrogatePair(source, i) ? 2 : 1)
        {
            int digit = CharUnicodeInfo.GetDecimalDigitValue(source, i);
            _ = digit >= 0 ? latin.Append(digit.ToString(CultureInfo.InvariantCulture)) : latin.Append(source, i, char.IsSurrogatePair(source, i) ? 2 : 1);
        }

        return new(At, $"`{source.Trim()}`, digits other than 0 to 9", $"write {latin.ToString().Trim()}");
    }
}
