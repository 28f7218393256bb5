using System.Globalization;
using System.Text;

namespace LaunchSim.Scenarios.Units;

/// <summary>One or more numbers with one unit, each with its doubt where one was written.</summary>
public sealed class Quantity
{
    private readonly double[] _numbers;
    private readonly double[] _doubts;

    internal Quantity(double[] numbers, double[] doubts, Unit unit, double? rowDoubtPercent) =>
        (_numbers, _doubts, Unit, RowDoubtPercent) = (numbers, doubts, unit, rowDoubtPercent);

    /// <summary>A quantity out of plain numbers.</summary>
    /// <param name="numbers">The numbers, in <paramref name="unit"/>; at least one, all finite.</param>
    /// <param name="unit">Their unit.</param>
    /// <exception cref="ArgumentException">There is no number, or one is not finite.</exception>
    public Quantity(IEnumerable<double> numbers, Unit unit)
    {
        _numbers = [.. numbers];
        if (_numbers.Length == 0 || !_numbers.All(double.IsFinite))
        {
            throw new ArgumentException("A quantity needs at least one number, and finite ones only.", nameof(numbers));
        }

        _doubts = new double[_numbers.Length];
        Array.Fill(_doubts, double.NaN);
        Unit = unit;
    }

    /// <summary>The unit of all its numbers.</summary>
    public Unit Unit { get; }

    /// <summary>How many numbers there are, at least one.</summary>
    public int Count => _numbers.Length;

    /// <summary>The numbers as written, in <see cref="Unit"/>.</summary>
    public IReadOnlyList<double> Numbers => _numbers;

    /// <summary>Doubt of the whole row: half-width in percent that holds nineteen times in twenty; null when none was written.</summary>
    public double? RowDoubtPercent { get; }

    /// <summary>A number in the SI unit of its dimension.</summary>
    /// <param name="index">Which, from 0.</param>
    public double Si(int index = 0) => _numbers[index] * Unit.Factor;

    /// <summary>All numbers in the SI unit of their dimension.</summary>
    public double[] AllSi()
    {
        double[] all = new double[_numbers.Length];
        for (int i = 0; i < all.Length; i++)
        {
            all[i] = _numbers[i] * Unit.Factor;
        }

        return all;
    }

    /// <summary>Doubt of one number: half-width in SI that holds nineteen times in twenty; null when none was written.</summary>
    /// <param name="index">Which, from 0.</param>
    public double? SiDoubt(int index = 0) => double.IsNaN(_doubts[index]) ? null : _doubts[index] * Unit.Factor;

    /// <summary>The same numbers with the doubts of others: what was put in a place is known as well as what stood there.</summary>
    internal Quantity DoubtedLike(Quantity other, int index = 0)
    {
        double[] doubts = new double[_numbers.Length];
        for (int i = 0; i < doubts.Length; i++)
        {
            doubts[i] = other.SiDoubt(index + i) is { } half ? half / Unit.Factor : double.NaN;
        }

        return new Quantity(_numbers, doubts, Unit, other.RowDoubtPercent);
    }

    /// <summary>Reads a quantity of one kind in the notation of the scenario file.</summary>
    /// <param name="text">Numbers, then one unit, such as <c>13-5/8 in</c> or <c>30 50 in</c>.</param>
    /// <param name="kind">What is expected; it decides what a shop word such as <c>lb</c> means.</param>
    /// <param name="quantity">The quantity.</param>
    /// <param name="problem">A plain sentence that says what is wrong, when false is returned.</param>
    public static bool TryParse(string text, QuantityKind kind, out Quantity? quantity, out string problem)
    {
        quantity = QuantityReader.Read(QuantityText.Read(text), kind, out QuantityProblem? found);
        problem = found is null ? "" : $"found {found.Found}; {found.Mend}";
        return quantity is not null;
    }

    /// <summary>The quantity in its own unit, in the notation of the scenario file: reads back to the same numbers.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        for (int i = 0; i < _numbers.Length; i++)
        {
            _ = i > 0 ? text.Append(' ') : text;
            _ = text.Append(CultureInfo.InvariantCulture, $"{_numbers[i]:R}");
            if (!double.IsNaN(_doubts[i]))
            {
                _ = text.Append(CultureInfo.InvariantCulture, $" ±{_doubts[i]:R}");
            }
        }

        if (Unit.Text.Length > 0)
        {
            _ = text.Append(' ').Append(Unit.Text);
        }

        if (RowDoubtPercent is { } percent)
        {
            _ = text.Append(CultureInfo.InvariantCulture, $" ±{percent:R} %");
        }

        return text.ToString();
    }
}
