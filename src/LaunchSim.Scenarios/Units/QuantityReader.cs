namespace LaunchSim.Scenarios.Units;

/// <summary>Text of a quantity and the expected kind → quantity, or what is wrong with it.</summary>
internal static class QuantityReader
{
    public static Quantity? Read(QuantityText text, QuantityKind kind, out QuantityProblem? problem)
    {
        problem = text.Problem;
        if (problem is not null)
        {
            return null;
        }

        if (text.UnitText.Length == 0)
        {
            if (kind.Dimension != Dimension.None)
            {
                problem = new(0, $"`{text.Source.Trim()}`, {kind.Name} without a unit", $"add the unit, as in {text.Source.Trim()} {kind.Units[0]}");
                return null;
            }

            return new Quantity(text.Numbers, text.Doubts, Unit.None, text.RowPercent);
        }

        if (!UnitReader.TryRead(text.UnitText, kind.Dimension, out Unit unit, out string unknown))
        {
            problem = Unknown(text, kind, unknown);
            return null;
        }

        if (unit.Dimension != kind.Dimension)
        {
            problem = WrongDimension(text, kind, unit);
            return null;
        }

        foreach (double number in text.Numbers)
        {
            if (!double.IsFinite(number * unit.Factor))
            {
                problem = new(0, $"`{text.Source.Trim()}`, a number too large to be one", "write the measured number");
                return null;
            }
        }

        return new Quantity(text.Numbers, text.Doubts, unit, text.RowPercent);
    }

    private static QuantityProblem Unknown(QuantityText text, QuantityKind kind, string unknown)
    {
        string? nearest = UnitSuggestion.For(text.UnitText, unknown, kind);
        string mend = nearest is not null ? $"did you mean `{nearest}`? "
            : "";
        string what = unknown.Length == 0 || unknown == text.UnitText ? $"`{text.UnitText}`, which is not a known unit" : $"`{text.UnitText}`, in which `{unknown}` is not a known unit";
        return new(text.UnitAt, what, mend + Usual(kind));
    }

    private static QuantityProblem WrongDimension(QuantityText text, QuantityKind kind, Unit unit)
    {
        string found = QuantityKind.NameOf(unit.Dimension) is { } name ? $"`{text.Source.Trim()}`, {name}" : $"`{text.Source.Trim()}`, a unit of another kind";
        string mend = kind == QuantityKind.Force && unit.Text == "kg" ? "a scale that reads in kilograms gives kgf; " : "";
        return new(text.UnitAt, found, mend + Usual(kind));
    }

    private static string Usual(QuantityKind kind) =>
        kind.Units.Count == 0 ? $"write {kind.Name}" : $"write {kind.Name} in one of {string.Join(", ", kind.Units)} or the like";
}
