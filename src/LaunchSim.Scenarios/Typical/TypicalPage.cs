using System.Globalization;
using System.Text;
using LaunchSim.Scenarios.Typical.Groups;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Typical;

/// <summary>The register as a page for readers.</summary>
public static class TypicalPage
{
    /// <summary>The page in Markdown.</summary>
    /// <param name="example">What is known of the car of the worked examples.</param>
    public static string Write(KnownCar example)
    {
        ArgumentNullException.ThrowIfNull(example);
        var page = new StringBuilder(TypicalPageText.Opening);
        foreach (RegisterGroup group in TypicalRegister.Groups)
        {
            _ = page.Append("\n## ").Append(group.Title).Append("\n\n| value | typical | usual | without ± | source |\n|---|---|---|---|---|\n");
            foreach (RegisterEntry entry in group.Entries)
            {
                Row(page, entry, example);
            }

            WorkedOut(page, group);
            AtHome(page, group);
        }

        return page.ToString();
    }

    private static void Row(StringBuilder page, RegisterEntry entry, KnownCar example)
    {
        string typical = entry switch
        {
            TypicalValue value => Typical(value, example),
            MeasuredValue => "**to be measured**",
            _ => "as it is set",
        };
        string usual = string.Join("; ", entry.Ranges().Select(pair => Usual(pair.Range, pair.Part, entry.Kind, example)).Where(text => text.Length > 0));
        string doubt = entry.EnteredDoubt is { } entered ? Doubt(entered, entry.Kind) : "";
        string source = entry is TypicalValue { Source: var named } ? Tag(named) : "";
        _ = page.Append("| `").Append(entry.Path).Append("`: ").Append(Inside(entry.What)).Append(" | ").Append(typical).Append(" | ").Append(usual).Append(" | ").Append(doubt).Append(" | ").Append(source).Append(" |\n");
    }

    private static void WorkedOut(StringBuilder page, RegisterGroup group)
    {
        IGrouping<string, TypicalValue>[] formulas = [.. group.Entries.OfType<TypicalValue>().Where(value => value.Formula != Entry.ForAll).GroupBy(value => value.Formula)];
        if (formulas.Length == 0)
        {
            return;
        }

        _ = page.Append("\nHow they are worked out:\n\n");
        foreach (IGrouping<string, TypicalValue> formula in formulas)
        {
            _ = page.Append("- ").Append(Paths(formula)).Append(": ").Append(formula.Key).Append(".\n");
        }
    }

    private static void AtHome(StringBuilder page, RegisterGroup group)
    {
        IGrouping<HomeTest, RegisterEntry>[] tests = [.. group.Entries.Where(entry => entry.HomeTest is not null).GroupBy(entry => entry.HomeTest!)];
        if (tests.Length == 0)
        {
            return;
        }

        _ = page.Append("\nAt home:\n\n");
        foreach (IGrouping<HomeTest, RegisterEntry> test in tests)
        {
            _ = page.Append("- ").Append(Paths(test)).Append(": ").Append(Inside(test.Key.How)).Append(". *").Append(test.Key.Takes).Append("*\n");
        }
    }

    private static string Paths(IEnumerable<RegisterEntry> entries) => string.Join(", ", entries.Select(entry => $"`{entry.Path}`"));

    private static string Typical(TypicalValue typical, KnownCar example)
    {
        if (typical.For(example) is not { } estimate)
        {
            return "";
        }

        string shop = estimate.Text(UnitSystem.Shop), si = estimate.Text(UnitSystem.Si);
        return si == shop ? $"`{shop}`" : $"`{shop}`, `{si}`";
    }

    // As the page's list of sources has them.
    private static string Tag(string source) => source switch
    {
        Entry.Practice => "practice",
        Entry.Guess => "none",
        Entry.Rhyne => "[M]",
        Entry.OpenInertias => "[C]",
        Entry.Rhyne + "; " + Entry.OpenTireData => "[M], [R]",
        _ => source,
    };

    private static string Usual(UsualRange range, string part, QuantityKind kind, KnownCar example)
    {
        var reading = new KnownReading(example);
        if (range.For(reading, part) is not { } span)
        {
            return "";
        }

        string shop = Span(span, kind, UnitSystem.Shop), si = Span(span, kind, UnitSystem.Si);
        string which = part.Length > 0 ? $"{part[1..]} " : span.Where.Length > 0 ? $"{span.Where} " : "";
        return $"{which}{shop}{(si == shop ? "" : $", {si}")}{(reading.Read.Count > 0 ? " †" : "")}";
    }

    private static string Span(UsualSpan span, QuantityKind kind, UnitSystem system)
    {
        Unit unit = UsualUnit.Of(kind, system);
        return $"{RoundText.Round(span.Low / unit.Factor)} to {RoundText.Round(span.High / unit.Factor)} {unit.Text}".TrimEnd();
    }

    private static string Doubt(TypicalDoubt doubt, QuantityKind kind)
    {
        if (doubt.IsShare)
        {
            return string.Create(CultureInfo.InvariantCulture, $"±{100 * doubt.Size:0.#} %");
        }

        Unit shop = UsualUnit.Of(kind, UnitSystem.Shop), si = UsualUnit.Of(kind, UnitSystem.Si);
        return $"±{Fraction(doubt.Size / shop.Factor)} {shop.Text}, {RoundText.Round(doubt.Size / si.Factor)} {si.Text}";
    }

    // As a tape is read.
    private static string Fraction(double number) =>
        Math.Abs(number - 0.0625) < 1e-9 ? "1/16" : Math.Abs(number - 0.125) < 1e-9 ? "1/8" : RoundText.Plain(number);

    private static string Inside(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..].TrimEnd('.');
}
