namespace LaunchSim.Scenarios.Units;

/// <summary>A kind of quantity that a key may ask for: its name, its dimension, and the units people write for it.</summary>
public sealed record QuantityKind
{
    private QuantityKind(string name, Dimension dimension, params string[] units) =>
        (Name, Dimension, Units) = (name, dimension, units);

    /// <summary>What it is called in a sentence, such as <c>a length</c>.</summary>
    public string Name { get; }

    /// <summary>Its dimension.</summary>
    public Dimension Dimension { get; }

    /// <summary>Units that are usual for it, the shop's first, one SI unit last.</summary>
    public IReadOnlyList<string> Units { get; }

    /// <summary>A plain ratio or count, without unit.</summary>
    public static QuantityKind Number { get; } = new("a bare number", Dimension.None);

    /// <summary>A length, m.</summary>
    public static QuantityKind Length { get; } = new("a length", Dimension.Of(length: 1), "in", "ft", "mm", "cm", "m");

    /// <summary>An area, m².</summary>
    public static QuantityKind Area { get; } = new("an area", Dimension.Of(length: 2), "ft²", "m²");

    /// <summary>A mass, kg.</summary>
    public static QuantityKind Mass { get; } = new("a mass", Dimension.Of(mass: 1), "lb", "slug", "kg");

    /// <summary>A force, N.</summary>
    public static QuantityKind Force { get; } = new("a force", Dimension.Of(1, 1, -2), "lb", "lbf", "kgf", "kN", "N");

    /// <summary>A time, s.</summary>
    public static QuantityKind Time { get; } = new("a time", Dimension.Of(time: 1), "ms", "s");

    /// <summary>How many a second, 1/s.</summary>
    public static QuantityKind Frequency { get; } = new("a number a second", Dimension.Of(time: -1), "Hz");

    /// <summary>An angle, rad.</summary>
    public static QuantityKind Angle { get; } = new("an angle", Dimension.Of(angle: 1), "°", "deg", "rad");

    /// <summary>A speed, m/s.</summary>
    public static QuantityKind Speed { get; } = new("a speed", Dimension.Of(length: 1, time: -1), "in/s", "ft/s", "mph", "mm/s", "m/s");

    /// <summary>An acceleration, m/s².</summary>
    public static QuantityKind Acceleration { get; } = new("an acceleration", Dimension.Of(length: 1, time: -2), "g", "ft/s²", "m/s²");

    /// <summary>An angular speed, rad/s.</summary>
    public static QuantityKind AngularSpeed { get; } = new("a turning speed", Dimension.Of(time: -1, angle: 1), "rpm", "rad/s");

    /// <summary>A moment of inertia, kg·m².</summary>
    public static QuantityKind Inertia { get; } = new("a moment of inertia", Dimension.Of(1, 2), "lb·in²", "lb·ft²", "slug·ft²", "kg·m²");

    /// <summary>A density, kg/m³.</summary>
    public static QuantityKind Density { get; } = new("a density", Dimension.Of(1, -3), "lb/ft³", "kg/m³");

    /// <summary>A rate of a spring, tyre or stop, N/m.</summary>
    public static QuantityKind Rate { get; } = new("a spring rate", Dimension.Of(1, 0, -2), "lb/in", "N/mm", "N/m");

    /// <summary>A damping, N·s/m.</summary>
    public static QuantityKind Damping { get; } = new("a damping", Dimension.Of(1, 0, -1), "lb·s/in", "N·s/mm", "N·s/m");

    /// <summary>A pressure, Pa.</summary>
    public static QuantityKind Pressure { get; } = new("a pressure", Dimension.Of(1, -1, -2), "psi", "bar", "kPa", "Pa");

    /// <summary>A torque, N·m.</summary>
    public static QuantityKind Torque { get; } = new("a torque", Dimension.Of(1, 2, -2), "lb-ft", "lb-in", "kN·m", "N·m");

    /// <summary>A torsional rate, N·m/rad.</summary>
    public static QuantityKind TorsionalRate { get; } = new("a torsional rate", Dimension.Of(1, 2, -2, -1), "lb-ft/deg", "kN·m/rad", "N·m/rad");

    /// <summary>A torsional damping, N·m·s/rad.</summary>
    public static QuantityKind TorsionalDamping { get; } = new("a torsional damping", Dimension.Of(1, 2, -1, -1), "lb-ft·s/rad", "N·m·s/rad");

    /// <summary>A change of rate with pressure, N/m per Pa.</summary>
    public static QuantityKind RatePerPressure { get; } = new("a rate per pressure", Rate.Dimension.Over(Pressure.Dimension), "lb/in/psi", "N/mm/bar", "N/m/Pa");

    /// <summary>A change of torsional rate with pressure, N·m/rad per Pa.</summary>
    public static QuantityKind TorsionalRatePerPressure { get; } =
        new("a torsional rate per pressure", TorsionalRate.Dimension.Over(Pressure.Dimension), "kN·m/rad/psi", "kN·m/rad/bar", "N·m/rad/Pa");

    /// <summary>A relative change with pressure, per Pa.</summary>
    public static QuantityKind PerPressure { get; } = new("a share per pressure", Dimension.None.Over(Pressure.Dimension), "/psi", "/bar", "/Pa");

    /// <summary>A converter's capacity factor, (rad/s)/√(N·m).</summary>
    public static QuantityKind CapacityFactor { get; } =
        new("a converter's capacity factor", AngularSpeed.Dimension.Over(Torque.Dimension.Root()!.Value), "rpm/√(lb-ft)", "rad/s/√(N·m)");

    /// <summary>Every kind, the bare number first.</summary>
    public static IReadOnlyList<QuantityKind> All { get; } =
    [
        Number, Length, Area, Mass, Force, Time, Frequency, Angle, Speed, Acceleration, AngularSpeed, Inertia, Density, Rate, Damping, Pressure, Torque,
        TorsionalRate, TorsionalDamping, RatePerPressure, TorsionalRatePerPressure, PerPressure, CapacityFactor,
    ];

    /// <summary>What a dimension is called in a sentence, or null when it is none of the known kinds.</summary>
    /// <param name="dimension">The dimension to name.</param>
    public static string? NameOf(Dimension dimension) => All.FirstOrDefault(kind => kind.Dimension == dimension)?.Name;

    /// <inheritdoc/>
    public override string ToString() => Name;
}
