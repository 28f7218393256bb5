using System.Globalization;
using LaunchSim.Passes.Aligning;
using LaunchSim.Passes.Measured;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Logs;

/// <summary>Whether a channel moves by about as much as was predicted; if not, which unit would make it do so.</summary>
internal static class UnitCheck
{
    // Beyond this factor a channel does not move as predicted; a unit that brings it within the smaller one was probably meant.
    private const double Far = 4, Near = 2.2, Still = 0.02;

    // Units that lie close, such as mph and km/h: a channel that is off by more than the one, and right within the other.
    private const double Off = 1.35, Right = 1.15;

    /// <summary>What came of looking at a channel.</summary>
    /// <param name="Problem">An error that asks back for the unit; null when there is none.</param>
    /// <param name="Remark">What is odd and no error; null for nothing.</param>
    /// <param name="IsDead">Whether it does not move at all.</param>
    internal sealed record Verdict(Diagnostic? Problem, string? Remark, bool IsDead);

    /// <summary>Looks at a channel of a launch that was found.</summary>
    /// <param name="column">The column.</param>
    /// <param name="span">The rows about the launch.</param>
    /// <param name="index">The column's place in them.</param>
    /// <param name="shift">Roughly the release, s.</param>
    /// <param name="lowest">The lowest number in the whole log, as written.</param>
    /// <param name="highest">The highest one.</param>
    public static Verdict Of(PreparedColumn column, LogSpan span, int index, double shift, double lowest, double highest)
    {
        if (Falls(column, span, index, shift))
        {
            return new Verdict(column.Column.At.Error(
                $"{column.Column.Path}.reversed", $"the column `{column.Column.Column}` falling over the launch where {column.Quantity.Words} should rise, and rising where it should fall", "heights, gaps and travels that grow as the end comes up or the damper gets longer",
                column.Column.IsPixels ? "write the other way of counting: rows: up or rows: down" : column.Column.Factor < 0 ? "take reversed: yes away" : "write reversed: yes, or look whether the column is the other end's"), null, false);
        }

        (double low, double high, double expectedLow, double expectedHigh) = Ranges(column, span, index, shift);
        double moved = high - low, expected = expectedHigh - expectedLow;
        if (!(expected > 0) || !double.IsFinite(moved))
        {
            return new Verdict(null, null, false);
        }

        double ratio = moved / expected, unit = column.Column.UnitFactor;
        if (moved < 4 * column.Noise && expected < 4 * column.Noise)
        {
            return new Verdict(null, null, false);
        }

        if (ratio is <= Far and >= 1 / Far)
        {
            return ratio is <= Off and >= 1 / Off ? new Verdict(null, null, false) : Close(column, ratio, lowest, highest);
        }

        string seen = string.Create(CultureInfo.InvariantCulture, $"{column.Quantity.Key} runs from {lowest:0.####} to {highest:0.####} in the log and moves by {moved / Math.Abs(column.Factor):0.###} over the launch");
        string predicted = string.Create(CultureInfo.InvariantCulture, $"predicted are {expected / (unit * column.ToAxle):0.###} {column.Column.Unit}");
        if (column.Quantity.Driveline && column.Column.Ratio == 1 && ratio is > 2 and < 8)
        {
            return new Verdict(column.Column.At.Error(
                $"{column.Column.Path}.ratio", $"{seen}, which is {Number(ratio)} times as much as predicted of the axle", "turns of the shaft for one of the axle", "add ratio: what the axle has, if the sensor is on the shaft"), null, false);
        }

        (string Name, double Factor)[] meant = [.. Others(column).Where(other => ratio * other.Factor / unit is <= Near and >= 1 / Near)];
        if (meant.Length > 0 && !column.Column.IsPixels)
        {
            string others = string.Join(", ", meant.Select(other => string.Create(CultureInfo.InvariantCulture, $"in {other.Name} it would be {moved / column.ToAxle / unit * other.Factor / unit:0.###} {column.Column.Unit}")));
            return new Verdict(column.Column.UnitAt.Error(
                $"{column.Column.Path}.unit", $"`{column.Column.Unit}` for the column `{column.Column.Column}`: {seen}; in {column.Column.Unit} that is {Number(moved / column.ToAxle / unit)} {column.Column.Unit}, {others}; {predicted}; which is it",
                "the unit in which the logger wrote the column", $"write unit: {meant[0].Name}; or, should `{column.Column.Unit}` be right, look at what the sensor is fixed to and give its scale:"), null, false);
        }

        return ratio < Still
            ? new Verdict(null, $"`{column.Column.Column}` does not move over the launch ({seen}; {predicted}): left aside. Look at the sensor and its plug.", true)
            : new Verdict(null, $"`{column.Column.Column}`: {seen}, {predicted}: {Number(ratio)} times as much. No other unit explains it: {(column.Quantity.TellsRelease ? "do the tyres spin? or " : "")}look at scale: and at what the sensor is fixed to.", false);
    }

    // Off by as much as a unit that lies close would be. The road under a car cannot be so much faster; a wheel may spin, and a rise may be another.
    private static Verdict Close(PreparedColumn column, double ratio, double lowest, double highest)
    {
        double unit = column.Column.UnitFactor;
        string? meant = column.Column.IsPixels ? null : Others(column).Where(other => ratio * other.Factor / unit is <= Right and >= 1 / Right).OrderBy(other => Math.Abs(Math.Log(ratio * other.Factor / unit))).Select(other => other.Name).FirstOrDefault();
        if (meant is null)
        {
            return new Verdict(null, null, false);
        }

        string seen = string.Create(CultureInfo.InvariantCulture, $"{column.Quantity.Key} runs from {lowest:0.####} to {highest:0.####} in the log; in {column.Column.Unit} it moves {Number(ratio)} times as much as predicted, in {meant} it would move as predicted");
        return column.Quantity.Kind == QuantityKind.Speed
            ? new Verdict(column.Column.UnitAt.Error($"{column.Column.Path}.unit", $"`{column.Column.Unit}` for the column `{column.Column.Column}`: {seen}; which is it", "the unit in which the logger wrote the column", $"write unit: {meant}; or, should `{column.Column.Unit}` be right, look at how the logger was set up, and at mass and torque in the car's file"), null, false)
            : new Verdict(null, $"`{column.Column.Column}`: {seen}. If the logger wrote {meant}, write unit: {meant}; if not, {(column.Quantity.TellsRelease ? "the tyres may spin, or the car is another" : "the car moves otherwise than predicted")}.", false);
    }

    // Fixed the wrong way round: it does what was predicted, upside down.
    private static bool Falls(PreparedColumn column, LogSpan span, int index, double shift)
    {
        const double Until = 0.8, Least = -0.7;
        double n = 0, x = 0, y = 0, xx = 0, yy = 0, xy = 0;
        for (int i = 0; i < span.Times.Length; i++)
        {
            double at = span.Times[i] - shift, predicted = column.Predicted.At(at), value = span.Columns[index][i] * column.Factor;
            if (at >= -0.3 && at <= Until && double.IsFinite(value) && double.IsFinite(predicted))
            {
                n++;
                x += predicted;
                y += value;
                xx += predicted * predicted;
                yy += value * value;
                xy += predicted * value;
            }
        }

        double both = (n * xy) - (x * y), one = (n * xx) - (x * x), other = (n * yy) - (y * y);
        return column.Quantity.HasFreeZero && n >= 6 && one > 0 && other > 0 && both / Math.Sqrt(one * other) < Least;
    }

    private static (double Low, double High, double ExpectedLow, double ExpectedHigh) Ranges(PreparedColumn column, LogSpan span, int index, double shift)
    {
        const double Before = -0.3, Early = 0.35, Late = 1;

        // Once tyres spin their turning tells nothing of its unit.
        double until = column.Quantity.TellsRelease ? Early : Late;
        var values = new List<double>();
        double expectedLow = double.PositiveInfinity, expectedHigh = double.NegativeInfinity;
        for (int i = 0; i < span.Times.Length; i++)
        {
            double at = span.Times[i] - shift, predicted = column.Predicted.At(at), value = span.Columns[index][i] * column.Factor;
            if (at >= Before && at <= until && double.IsFinite(value) && double.IsFinite(predicted))
            {
                values.Add(value);
                expectedLow = Math.Min(expectedLow, predicted);
                expectedHigh = Math.Max(expectedHigh, predicted);
            }
        }

        if (values.Count < 3)
        {
            return (double.NaN, double.NaN, double.NaN, double.NaN);
        }

        // A spike of a loose plug is no movement: the outermost fiftieth at either end does not count.
        values.Sort();
        int cut = values.Count / 50;
        return (values[cut], values[^(cut + 1)], expectedLow, expectedHigh);
    }

    private static IEnumerable<(string Name, double Factor)> Others(PreparedColumn column)
    {
        QuantityKind own = column.Column.IsRolling ? QuantityKind.Speed : column.Quantity.Kind;
        foreach (string name in own.Units.Concat(Further(own, column.Quantity)).Where(name => name != column.Column.Unit))
        {
            if (Quantity.TryParse($"1 {name}", own, out Quantity? one, out _))
            {
                yield return (name, one!.Si());
            }
        }
    }

    // What loggers write besides the usual units.
    private static string[] Further(QuantityKind kind, MeasuredQuantity quantity) =>
        quantity.Key == "pitch_rate" ? ["deg/s"] : kind == QuantityKind.Speed ? ["km/h"] : [];

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
