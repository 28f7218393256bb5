namespace LaunchSim.Scenarios.Units;

/// <summary>
/// The text of a quantity taken apart: numbers, the doubt of each, the unit's text, the doubt of the whole row. Knows
/// nothing yet of what was expected, so one reading serves whoever asks.
/// </summary>
internal sealed class QuantityText
{
    private QuantityText(string source) => Source = source;

    public string Source { get; }

    public double[] Numbers { get; private set; } = [];

    /// <summary>Where each number begins in the text.</summary>
    public int[] NumbersAt { get; private set; } = [];

    /// <summary>Half-width for each number, NaN where none was written.</summary>
    public double[] Doubts { get; private set; } = [];

    public string UnitText { get; private set; } = "";

    public int UnitAt { get; private set; }

    public double? RowPercent { get; private set; }

    public QuantityProblem? Problem { get; private set; }

    public static QuantityText Read(string source)
    {
        var result = new QuantityText(source);
        var numbers = new List<double>();
        var doubts = new List<double>();
        var places = new List<int>();
        var cursor = new NumberCursor(source);
        result.Problem = result.ReadNumbers(ref cursor, numbers, doubts, places) ?? result.ReadUnit(cursor.At);
        result.Numbers = [.. numbers];
        result.Doubts = [.. doubts];
        result.NumbersAt = [.. places];
        return result;
    }

    private QuantityProblem? ReadNumbers(ref NumberCursor cursor, List<double> numbers, List<double> doubts, List<int> places)
    {
        while (true)
        {
            cursor.SkipSpaces();
            if (cursor.TryPlusMinus())
            {
                return new(cursor.At - 1, "a ± without a number before it", "write the number first, as in 21 ±1 in");
            }

            int start = cursor.At;
            if (!cursor.TryNumber(out double number, out QuantityProblem? problem))
            {
                return problem ?? (numbers.Count == 0 ? NoNumber(start) : null);
            }

            numbers.Add(number);
            places.Add(start);
            doubts.Add(double.NaN);
            cursor.SkipSpaces();
            int doubtAt = cursor.At;
            if (cursor.TryPlusMinus())
            {
                cursor.SkipSpaces();
                if (!cursor.TryNumber(out double doubt, out problem))
                {
                    return problem ?? new(doubtAt, "a ± without a number after it", "write how far off it may be, as in 21 ±1 in");
                }

                if (doubt < 0)
                {
                    return new(doubtAt, "a doubt below 0", "write how far off it may be either way, as in 21 ±1 in");
                }

                // A ± directly before % is the whole row's, whatever number it follows.
                cursor.SkipSpaces();
                if (cursor.TryPercentAtEnd())
                {
                    RowPercent = doubt;
                    return null;
                }

                doubts[^1] = doubt;
                cursor.SkipSpaces();
                if (cursor.TryPlusMinus())
                {
                    return new(doubtAt, "two ± at one number", "keep one");
                }
            }

            if (cursor.Peek == ',')
            {
                int comma = cursor.At;
                if (!cursor.TryCommaAndSpace())
                {
                    string pointed = Source.Remove(comma, 1).Insert(comma, ".");
                    return new(start, $"`{Source.Trim()}`, a comma between digits", $"write the decimals after a point: {pointed.Trim()}; or part two numbers by a space");
                }

                cursor.SkipSpaces();
                if (!cursor.AtNumber)
                {
                    return new(comma, "a comma without a number after it", "part numbers by spaces, and write the unit once at the end");
                }
            }
        }
    }

    private QuantityProblem? NoNumber(int at)
    {
        string rest = Source[at..].Trim();
        string bare = rest.TrimStart('.', '+', '-', '−');
        if (bare.StartsWith("nan", StringComparison.OrdinalIgnoreCase) || bare.StartsWith("inf", StringComparison.OrdinalIgnoreCase) || bare.StartsWith('∞'))
        {
            return new(at, $"`{rest}`, which is not a finite number", "write the measured number");
        }

        return rest.Length == 0
            ? new(at, "nothing", "write a number, then its unit")
            : new(at, $"`{rest}`, which does not begin with a number", "write a number first, then its unit");
    }

    private QuantityProblem? ReadUnit(int from)
    {
        int end = Source.Length;
        while (end > from && char.IsWhiteSpace(Source[end - 1]))
        {
            end--;
        }

        while (from < end && char.IsWhiteSpace(Source[from]))
        {
            from++;
        }

        int mark = FindPlusMinus(from, end, out int width);
        if (mark >= 0)
        {
            var cursor = new NumberCursor(Source) { At = mark + width };
            cursor.SkipSpaces();
            if (!cursor.TryNumber(out double percent, out QuantityProblem? problem))
            {
                return problem ?? new(mark, "a ± without a number after it", "write the doubt of a whole row as ±10 %, that of one number as in 21 ±1 in");
            }

            cursor.SkipSpaces();
            if (!cursor.TryPercentAtEnd())
            {
                return new(mark, "a ± after the unit that is not a percentage", "write the doubt of one number before the unit, as in 21 ±1 in; that of a whole row after it, as in 0 50 90 lb ±10 %");
            }

            if (percent < 0)
            {
                return new(mark, "a doubt below 0", "write it without a sign, as in ±10 %");
            }

            RowPercent = percent;
            end = mark;
            while (end > from && char.IsWhiteSpace(Source[end - 1]))
            {
                end--;
            }
        }

        for (int i = from + 1; i < end; i++)
        {
            if (char.IsWhiteSpace(Source[i - 1]) && char.IsAsciiDigit(Source[i]))
            {
                return new(i, $"`{Source.Trim()}`, a number after a unit", "write all numbers first, then one unit once");
            }
        }

        UnitAt = from;
        UnitText = Source[from..end];
        return null;
    }

    private int FindPlusMinus(int from, int end, out int width)
    {
        for (int i = from; i < end; i++)
        {
            width = NumberCursor.PlusMinusWidth(Source, i);
            if (width > 0)
            {
                return i;
            }
        }

        width = 0;
        return -1;
    }
}
