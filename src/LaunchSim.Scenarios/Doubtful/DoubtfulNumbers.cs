using System.Globalization;
using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Doubtful;

/// <summary>Which numbers of a scenario may be off: those with a ± in the file, and those that have a usual doubt in the register.</summary>
public static class DoubtfulNumbers
{
    /// <summary>All of them, in the order of the file's reference.</summary>
    /// <param name="scenario">The scenario.</param>
    public static IReadOnlyList<DoubtfulNumber> Of(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var numbers = new List<DoubtfulNumber>();
        foreach (Bound bound in scenario.Values.All)
        {
            numbers.AddRange(bound switch
            {
                { Clicks: { } rows } => Clicks(bound, rows),
                { Holes: { } holes } => Points([.. holes.Select(hole => hole.Value)], bound),
                { Key.Kind: PointKind } => Points([bound], bound),
                { Quantity: { Count: > 1 } or { RowDoubtPercent: not null } } => Row(bound),
                { Quantity: not null } => Number(bound),
                _ => [],
            });
        }

        return numbers;
    }

    private static IEnumerable<DoubtfulNumber> Number(Bound bound)
    {
        Quantity quantity = bound.Quantity!;
        RegisterEntry? entry = TypicalRegister.Find(bound.Path);
        double? entered = quantity.SiDoubt();
        double half = entered ?? entry?.EnteredDoubt?.At(quantity.Si()) ?? 0;
        if (half > 0)
        {
            ScenarioPath path = Resolved(bound.Path);
            yield return new DoubtfulNumber(share => [new ScenarioEdit(path, new Quantity([quantity.Numbers[0] + (share * half / quantity.Unit.Factor)], quantity.Unit))])
            {
                Path = bound.Path,
                Entry = entry,
                Text = WithDoubt(quantity.Numbers[0], half, entered is not null, quantity.Unit),
                Doubt = new Doubt(half, false),
                IsEntered = entered is not null,
            };
        }
    }

    private static IEnumerable<DoubtfulNumber> Row(Bound bound)
    {
        Quantity quantity = bound.Quantity!;
        RegisterEntry? entry = TypicalRegister.Find(bound.Path);
        double percent = quantity.RowDoubtPercent ?? (entry?.EnteredDoubt is { IsShare: true } usual ? 100 * usual.Size : 0);
        if (percent > 0)
        {
            ScenarioPath path = Resolved(bound.Path);
            yield return new DoubtfulNumber(share => [new ScenarioEdit(path, Scaled(quantity, share, percent))])
            {
                Path = bound.Path,
                Entry = entry,
                Text = $"{Written(quantity.Numbers, quantity.Unit)} {Percent(percent)}",
                Doubt = new Doubt(percent, true),
                IsEntered = quantity.RowDoubtPercent is not null,
            };
        }
    }

    private static IEnumerable<DoubtfulNumber> Clicks(Bound bound, IReadOnlyList<KeyValuePair<double, Bound>> rows)
    {
        // One sheet a click, one dyno: what is not known of one is not known of the others either.
        RegisterEntry? entry = TypicalRegister.Find(bound.Path[..bound.Path.LastIndexOf('.')] + ".force");
        double usual = entry?.EnteredDoubt is { IsShare: true } share ? 100 * share.Size : 0;
        double PercentOf(Bound row) => row.Quantity!.RowDoubtPercent ?? usual;
        double largest = rows.Max(row => PercentOf(row.Value));
        if (largest > 0)
        {
            (ScenarioPath Path, Quantity Row, double Percent)[] scaled = [.. rows.Select(row => (Resolved(row.Value.Path), row.Value.Quantity!, PercentOf(row.Value)))];
            yield return new DoubtfulNumber(part => [.. scaled.Select(row => new ScenarioEdit(row.Path, Scaled(row.Row, part, row.Percent)))])
            {
                Path = bound.Path,
                Entry = entry,
                Text = "all rows " + Percent(largest),
                Doubt = new Doubt(largest, true),
                IsEntered = rows.Any(row => row.Value.Quantity!.RowDoubtPercent is not null),
            };
        }
    }

    private static IEnumerable<DoubtfulNumber> Points(Bound[] points, Bound whole)
    {
        RegisterEntry? entry = TypicalRegister.Find(whole.Path);
        Bound shown = Array.Find(points, point => point.Path == $"{whole.Path}.holes.{whole.Use}") ?? points[0];
        foreach ((string part, int index) in new[] { (".ahead", 0), (".up", 1) })
        {
            PointPart told = Part(shown, index, entry);
            if (told.Half > 0)
            {
                (ScenarioPath Path, PointPart Part)[] parts = [.. points.Select(point => (Resolved(point.Path + part), Part(point, index, entry)))];
                yield return new DoubtfulNumber(share => [.. parts.Select(moved => new ScenarioEdit(moved.Path, moved.Part.Moved(share)))])
                {
                    Path = whole.Path + part,
                    Entry = entry,
                    Text = WithDoubt(told.Number, told.Half, told.IsEntered, told.Unit),
                    Doubt = new Doubt(told.Half, false),
                    IsEntered = told.IsEntered,
                };
            }
        }
    }

    private static PointPart Part(Bound point, int index, RegisterEntry? entry)
    {
        Quantity quantity = ScenarioParts.Whole(point)!;
        double? entered = quantity.SiDoubt(index);
        return new PointPart(quantity.Numbers[index], entered ?? entry?.EnteredDoubt?.At(quantity.Si(index)) ?? 0, entered is not null, quantity.Unit);
    }

    /// <summary>One of a point's two numbers in its unit, with the half-width of its doubt in SI.</summary>
    private readonly record struct PointPart(double Number, double Half, bool IsEntered, Unit Unit)
    {
        public Quantity Moved(double share) => new([Number + (share * Half / Unit.Factor)], Unit);
    }

    private static Quantity Scaled(Quantity row, double share, double percent) =>
        new(row.Numbers.Select(number => number * (1 + (share * percent / 100))), row.Unit);

    private static ScenarioPath Resolved(string path) => ScenarioPath.Resolve(path, out _)!;

    private static string Written(IEnumerable<double> numbers, Unit unit) => new Quantity(numbers, unit).ToString();

    // An entered doubt stands as it was written, a usual one in round numbers.
    private static string WithDoubt(double number, double half, bool isEntered, Unit unit)
    {
        string doubt = isEntered ? RoundText.Plain(half / unit.Factor) : RoundText.Rough(half / unit.Factor);
        return $"{RoundText.Plain(number)} ±{doubt} {unit.Text}".TrimEnd();
    }

    private static string Percent(double percent) => string.Create(CultureInfo.InvariantCulture, $"±{percent:0.##} %");
}
