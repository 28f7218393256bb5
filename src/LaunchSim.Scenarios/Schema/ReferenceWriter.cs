using System.Text;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Schema;

/// <summary>Keys → the reference page.</summary>
internal static class ReferenceWriter
{
    public static string Write()
    {
        var page = new StringBuilder(ReferenceText.Opening);
        foreach (SchemaKey key in ScenarioKeys.Whole.Keys.Where(key => key.Kind is not SectionKind))
        {
            Line(page, key, key.Name, "");
        }

        foreach (SchemaKey key in ScenarioKeys.Whole.Keys)
        {
            if (key.Kind is SectionKind { Section: var section })
            {
                _ = page.Append("\n## `").Append(key.Name).Append("`\n\n").Append(key.What).Append(". ").Append(Left(key).TrimEnd()).Append("\n\n");
                Section(page, section, "", "");
            }
        }

        return page.Append(ReferenceText.Closing).ToString();
    }

    /// <summary>The page of the pass file.</summary>
    public static string WritePass()
    {
        var page = new StringBuilder(PassReferenceText.Opening);
        Section(page, PassKeys.Pass, "", "");
        return page.ToString();
    }

    private static void Section(StringBuilder page, Section section, string within, string when)
    {
        foreach (SchemaKey key in section.Keys)
        {
            string name = within + key.Name;
            Line(page, key, name, when);
            if (key.Kind is SectionKind { Section: var inner })
            {
                Section(page, inner, name + ".", when);
            }
            else if (key.Kind is ListKind { Item: var item })
            {
                Section(page, item, name + "[0].", when);
            }
        }

        foreach (Form form in section.Forms)
        {
            string only = section.Selector is { } selector ? $"*(with `{selector}: {form.Name}`)* " : $"*({char.ToLowerInvariant(form.What[0])}{form.What[1..]})* ";
            Section(page, form.Section, within, when + only);
        }
    }

    private static void Line(StringBuilder page, SchemaKey key, string name, string when)
    {
        _ = page.Append("- **`").Append(name).Append("`** ").Append(when).Append(key.What).Append(". ");
        string kind = Kind(key.Kind);
        if (kind.Length > 0)
        {
            _ = page.Append("*Value:* ").Append(kind).Append(key.Example.Length > 0 ? $", as in `{key.Example}`" : "").Append(". ");
        }

        if (key.Measure.Length > 0)
        {
            _ = page.Append("*How to get it:* ").Append(key.Measure).Append(". ");
        }

        _ = page.Append(Left(key));
        while (page[^1] == ' ')
        {
            page.Length--;
        }

        _ = page.Append('\n');
    }

    private static string Left(SchemaKey key) =>
        key.Need == Need.Geometry ? "*Always needed.*" : key.LeftOut is { } left ? $"*May be left out:* {left}." : "";

    private static string Kind(KeyKind kind) => kind switch
    {
        NumberKind number => $"{number.Quantity.Name}{Units(number.Quantity)}{Words(number.Limits)}",
        RowKind { Rising: true } row => $"several numbers, each above the one before: {row.Quantity.Name}{Units(row.Quantity)}{Words(row.Limits)}",
        RowKind { Against: { } against } row => $"one number for each of `{against}`: {row.Quantity.Name}{Units(row.Quantity)}{Words(row.Limits)}",
        RowKind row => $"one number or several: {row.Quantity.Name}{Units(row.Quantity)}{Words(row.Limits)}",
        PointKind { Holes: true } => "a point, or a bracket with holes",
        PointKind => "a point",
        ClicksKind => "for each click a row with one force for each of `speed`",
        WordKind word => string.Join(" or ", word.Words.Select(text => $"`{text}`")),
        TextKind => "text",
        MomentKind { Never: true } => "a time, a frame, a bound, or `never`",
        MomentKind => "a time, a frame, or a bound",
        DateKind => "a day, with the time of day or without",
        ChangeKind => "`path: value` lines",
        _ => "",
    };

    private static string Units(QuantityKind kind) => kind.Units.Count == 0 ? "" : $" ({string.Join(", ", kind.Units)})";

    private static string Words(Limits limits) => limits == Limits.Any ? "" : $", {limits.Words}";
}
