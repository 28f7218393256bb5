using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Typical;

/// <summary>The unit in which the trade writes a kind of quantity.</summary>
internal static class UsualUnit
{
    private static readonly Dictionary<QuantityKind, (string Shop, string Si)> Units = new()
    {
        [QuantityKind.Length] = ("in", "mm"),
        [QuantityKind.Area] = ("m²", "m²"),
        [QuantityKind.Mass] = ("lb", "kg"),
        [QuantityKind.Force] = ("lb", "N"),
        [QuantityKind.Time] = ("s", "s"),
        [QuantityKind.Angle] = ("°", "°"),
        [QuantityKind.Speed] = ("in/s", "m/s"),
        [QuantityKind.AngularSpeed] = ("rpm", "rpm"),
        [QuantityKind.Inertia] = ("kg·m²", "kg·m²"),
        [QuantityKind.Density] = ("kg/m³", "kg/m³"),
        [QuantityKind.Rate] = ("lb/in", "N/mm"),
        [QuantityKind.Damping] = ("lb·s/in", "N·s/m"),
        [QuantityKind.Pressure] = ("psi", "bar"),
        [QuantityKind.Torque] = ("lb-ft", "N·m"),
        [QuantityKind.TorsionalRate] = ("kN·m/rad", "kN·m/rad"),
        [QuantityKind.TorsionalDamping] = ("N·m·s/rad", "N·m·s/rad"),
        [QuantityKind.RatePerPressure] = ("lb/in/psi", "N/mm/bar"),
        [QuantityKind.TorsionalRatePerPressure] = ("kN·m/rad/psi", "kN·m/rad/bar"),
        [QuantityKind.PerPressure] = ("/psi", "/bar"),
        [QuantityKind.CapacityFactor] = ("rpm/√(lb-ft)", "rad/s/√(N·m)"),
    };

    public static Unit Of(QuantityKind kind, UnitSystem system)
    {
        if (!Units.TryGetValue(kind, out (string Shop, string Si) names))
        {
            return Unit.None;
        }

        return UnitReader.TryRead(system == UnitSystem.Shop ? names.Shop : names.Si, kind.Dimension, out Unit unit, out _)
            ? unit
            : throw new InvalidOperationException($"The usual unit of {kind.Name} is not a known one.");
    }
}
