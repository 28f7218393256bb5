using System.Text.RegularExpressions;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Schema;

/// <summary>
/// The notation of numbers and units as regular expressions for the JSON Schema. They know the symbols of units, and of the
/// usual units what they measure, but not what products of them do: what an editor lets pass may still be refused by the
/// reader, never the other way round.
/// </summary>
internal static class Patterns
{
    private const string Number = @"[+\-−]?(?:\d+(?:-\d+)?/\d+|(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+\-]?\d+)?)";
    private const string PlusMinus = @"\s*(?:±|\+-|\+/-)\s*";
    private const string Doubt = $"(?:{PlusMinus}{Number})?";
    private const string Next = @"(?:\s+|\s*,\s+)";
    private const string RowDoubt = $"(?:{PlusMinus}{Number}\\s*%)?";

    private static readonly string Unit = BuildUnit();

    /// <summary>One bare number.</summary>
    public static string Bare { get; } = $@"^\s*{Number}{Doubt}\s*%?\s*$";

    /// <summary>Several bare numbers.</summary>
    public static string BareRow { get; } = $@"^\s*{Number}(?:{Doubt}|(?:{Next}{Number})*)\s*%?{RowDoubt}\s*$";

    /// <summary>One number with its unit.</summary>
    public static string Quantity { get; } = $@"^\s*{Number}{Doubt}\s*{Unit}\s*$";

    /// <summary>Several numbers, then one unit.</summary>
    public static string Row { get; } = $@"^\s*{Number}(?:{Doubt}|(?:{Next}{Number})*)\s*{Unit}{RowDoubt}\s*$";

    /// <summary>A point: two numbers, then one unit.</summary>
    public static string Point { get; } = $@"^\s*{Number}{Doubt}{Next}{Number}{Doubt}\s*{Unit}\s*$";

    /// <summary>Several numbers, each with a ± or without, then one unit.</summary>
    public static string DoubtedRow { get; } = $@"^\s*{Number}{Doubt}(?:{Next}{Number}{Doubt})*\s*{Unit}{RowDoubt}\s*$";

    /// <summary>A day, with the time of day or without.</summary>
    public static string Day { get; } = @"^\s*\d{4}-\d{2}-\d{2}(?:[ T]\d{1,2}:\d{2}(?::\d{2})?)?\s*$";

    /// <summary>When something was seen.</summary>
    /// <param name="never">Whether it may never have happened.</param>
    public static string Moment(bool never)
    {
        string ever = $@"(?:(?:{Any("before")}|{Any("after")})\s+)?(?:{Any("frame")}\s+{Number}{Doubt}|{Number}{Doubt}\s*{Unit})";
        return $@"^\s*(?:{ever}{(never ? "|" + Any("never") : "")})\s*$";
    }

    // A word in capital or small letters.
    private static string Any(string word) => string.Concat(word.Select(letter => $"[{char.ToUpperInvariant(letter)}{letter}]"));

    /// <summary>A click. A key of the schema itself, where some validators stumble over a slash.</summary>
    public static string Click { get; } = $@"^\s*{Number}\s*$".Replace("/", @"\x2F", StringComparison.Ordinal);

    /// <summary>Numbers with a usual unit that measures something other than a kind.</summary>
    /// <param name="kind">The kind, not that of bare numbers.</param>
    public static string OtherThan(QuantityKind kind)
    {
        IEnumerable<string> others = UnitTable.Symbols.Keys.Concat(QuantityKind.All.SelectMany(other => other.Units)).Distinct()
            .Where(text => UnitReader.TryRead(text, kind.Dimension, out Unit unit, out _) && unit.Dimension != kind.Dimension)
            .Order(StringComparer.Ordinal);
        return $@"^\s*{Number}{Doubt}(?:{Next}{Number}{Doubt})*\s*(?:{string.Join('|', others.Select(Regex.Escape))}){RowDoubt}\s*$";
    }

    private static string BuildUnit()
    {
        IEnumerable<string> symbols = UnitTable.Symbols.Keys.OrderByDescending(symbol => symbol.Length).ThenBy(symbol => symbol, StringComparer.Ordinal).Select(Regex.Escape);
        const string Power = @"(?:\^[\-−]?\d|⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹])?";
        string factor = $@"(?:√|sqrt(?=\())?\(*(?:{string.Join('|', symbols)}){Power}(?:\){Power})*";
        return $@"(?:1?/\s*)?{factor}(?:\s*[·⋅*/‑\-]\s*(?:1/)?{factor})*";
    }
}
