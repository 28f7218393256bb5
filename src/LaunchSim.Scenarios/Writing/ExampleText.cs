using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Writing;

/// <summary>A key's example in either system of units.</summary>
internal static class ExampleText
{
    public static string Of(SchemaKey key, UnitSystem system)
    {
        QuantityKind? kind = key.Kind switch
        {
            NumberKind number => number.Quantity,
            RowKind row => row.Quantity,
            PointKind => QuantityKind.Length,
            _ => null,
        };
        if (system == UnitSystem.Shop || kind is null || !Quantity.TryParse(key.Example, kind, out Quantity? quantity, out _) || quantity!.Unit.Text.Length == 0)
        {
            return key.Example;
        }

        Unit unit = UsualUnit.Of(kind, system);
        return $"{string.Join(' ', quantity.AllSi().Select(value => RoundText.Round(value / unit.Factor)))} {unit.Text}";
    }
}
