using System.Globalization;
using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Typical.Mistakes;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Typical;

/// <summary>
/// Entered numbers against what is usual, as warnings of the reader: what was found, what is usual and for what, what may
/// have been meant, and how to get it. A number whose usual range hangs on another suspicious one is left alone: one
/// mistake, one warning.
/// </summary>
public static class UsualCheck
{
    /// <summary>The warnings of one scenario or part file, in the order of the register.</summary>
    /// <param name="scenario">The scenario.</param>
    public static IReadOnlyList<CarFinding> Of(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return Of(scenario.Values);
    }

    /// <summary>The warnings of what could be read of a file, whatever else is wrong with it.</summary>
    internal static IReadOnlyList<CarFinding> Of(BoundValues values)
    {
        KnownCar car = KnownCar.Of(values);
        var found = new List<(Suspicion Suspicion, string Path, IReadOnlyList<string> From)>();
        foreach (RegisterEntry entry in TypicalRegister.All)
        {
            foreach (Bound bound in Entered(values, entry))
            {
                if (Judge(entry, ScenarioParts.Whole(bound)!, car) is { } judged)
                {
                    // Holes of one bracket and clicks of one damper were measured alike: the first tells.
                    found.Add((judged.Suspicion, bound.Path + judged.Suspicion.Span.Part, judged.From));
                    break;
                }
            }
        }

        HashSet<string> suspicious = [.. found.Select(one => one.Suspicion.Entry.Path)];
        return [.. found.Where(one => !one.From.Any(path => path != one.Suspicion.Entry.Path && suspicious.Contains(path))).Select(one => Finding(one.Suspicion, one.Path))];
    }

    /// <summary>The entered values that an entry judges: each hole of a bracket, each click's row of a damper, else the one.</summary>
    private static IEnumerable<Bound> Entered(BoundValues values, RegisterEntry entry)
    {
        if (values.Find(entry.Path) is { } bound)
        {
            return bound.Holes?.Select(hole => hole.Value) ?? (bound.Quantity is null ? [] : [bound]);
        }

        return entry.Path.EndsWith(".force", StringComparison.Ordinal) && values.Find(entry.Path[..^6] + ".clicks") is { Clicks: { } rows }
            ? rows.Select(row => row.Value)
            : [];
    }

    private static (Suspicion Suspicion, IReadOnlyList<string> From)? Judge(RegisterEntry entry, Quantity quantity, KnownCar car)
    {
        var spans = new List<UsualSpan>(2);
        var from = new KnownReading(car);
        foreach ((UsualRange range, string part) in entry.Ranges())
        {
            if (range.For(from, part) is { } span)
            {
                // Judged by the round numbers that are told, so that what is told holds.
                spans.Add(span with { Low = Rounded(span.Low, quantity.Unit), High = Rounded(span.High, quantity.Unit) });
            }
        }

        double[] values = quantity.AllSi();
        foreach (UsualSpan span in spans)
        {
            double value = span.Part == ".up" ? values[^1] : entry.Usual!.Judged(from, values);
            if (!double.IsNaN(value) && !span.Holds(value))
            {
                return (new Suspicion(entry, quantity, span, spans, value), from.ReadInAll);
            }
        }

        return null;
    }

    private static double Rounded(double value, Unit unit) =>
        double.Parse(RoundText.Round(value / unit.Factor), CultureInfo.InvariantCulture) * unit.Factor;

    private static CarFinding Finding(Suspicion found, string path)
    {
        Quantity quantity = found.Quantity;
        UsualSpan span = found.Span;
        string unit = quantity.Unit.Text;
        string Shown(double si) => RoundText.Plain(si / quantity.Unit.Factor);
        string what = span.Where.Length > 0 ? $"{Shown(found.Value)} {unit} {span.Where}" : found.Entry.IsPoint ? $"{Shown(found.Value)} {unit} {span.Part[1..]}" : $"`{quantity}`";
        string source = found.Entry is TypicalValue typical ? typical.Source : Groups.Entry.Practice;
        return new CarFinding
        {
            Path = path,
            Severity = Severity.Warning,
            Found = $"{what}, outside the usual {Shown(span.Low)} to {Shown(span.High)} {unit}".TrimEnd() + $" {span.ForWhat} ({source})",
            Mend = Mend(found),
        };
    }

    private static string Mend(Suspicion found)
    {
        IReadOnlyList<Guess> guesses = UsualMistakes.Of(found);
        string meant = guesses.Count > 0
            ? $"did you mean {string.Join(", or ", guesses.Select(guess => $"{guess.Text} ({guess.Why})"))}?"
            : $"look at the number and its unit; here belongs: {Inside(found.Entry.What)}";
        return found.Entry.HomeTest is not { } test ? meant
            : guesses.Count > 0 ? $"{meant} To get it: {Inside(test.How)}"
            : $"{meant}; to get it: {Inside(test.How)}";
    }

    private static string Inside(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..].TrimEnd('.');
}
