namespace LaunchSim.Scenarios.Units;

/// <summary>One meaning of a unit's symbol.</summary>
internal sealed record Symbol(Dimension Dimension, double Factor, UnitSystem? System);

/// <summary>
/// Symbols of units and their factors. All others are products, quotients, powers and roots of these. Factors are the
/// exact ones of NIST SP 811, Appendix B, written as products of the exact inch, pound and standard gravity.
/// </summary>
internal static class UnitTable
{
    private const double Inch = 0.0254;
    private const double Pound = 0.45359237;
    private const double Gravity = 9.80665;
    private const double PoundForce = Pound * Gravity;

    private static readonly Dimension Length = Dimension.Of(length: 1);
    private static readonly Dimension Mass = Dimension.Of(mass: 1);
    private static readonly Dimension Time = Dimension.Of(time: 1);
    private static readonly Dimension Angle = Dimension.Of(angle: 1);
    private static readonly Dimension Force = Dimension.Of(1, 1, -2);
    private static readonly Dimension Speed = Dimension.Of(length: 1, time: -1);
    private static readonly Dimension Acceleration = Dimension.Of(length: 1, time: -2);
    private static readonly Dimension Turning = Dimension.Of(time: -1, angle: 1);
    private static readonly Dimension Pressure = Dimension.Of(1, -1, -2);
    private static readonly Dimension Work = Dimension.Of(1, 2, -2);
    private static readonly Dimension Power = Dimension.Of(1, 2, -3);

    /// <summary>Symbol to its meanings; where there are two, the expected dimension decides.</summary>
    public static IReadOnlyDictionary<string, Symbol[]> Symbols { get; } = Build();

    private static Dictionary<string, Symbol[]> Build()
    {
        var table = new Dictionary<string, Symbol[]>(StringComparer.Ordinal);

        void Add(UnitSystem? system, Dimension dimension, double factor, params string[] names)
        {
            foreach (string name in names)
            {
                table.Add(name, [new Symbol(dimension, factor, system)]);
            }
        }

        void Shop(Dimension dimension, double factor, params string[] names) => Add(UnitSystem.Shop, dimension, factor, names);
        void Si(Dimension dimension, double factor, params string[] names) => Add(UnitSystem.Si, dimension, factor, names);
        void Either(Dimension dimension, double factor, params string[] names) => Add(null, dimension, factor, names);

        Si(Length, 1, "m");
        Si(Length, 0.001, "mm");
        Si(Length, 0.01, "cm");
        Si(Length, 1000, "km");
        Shop(Length, Inch, "in", "inch", "inches", "\"", "″");
        Shop(Length, 12 * Inch, "ft", "foot", "feet", "'", "′");
        Shop(Length, 36 * Inch, "yd");
        Shop(Length, 5280 * 12 * Inch, "mi", "mile", "miles");
        Shop(Length, Inch / 1000, "thou", "mil");

        Si(Mass, 1, "kg");
        Si(Mass, 1000, "t");
        Shop(Mass, Pound, "lbm");
        Shop(Mass, PoundForce / (12 * Inch), "slug", "slugs");
        Shop(Force, PoundForce, "lbf");
        Shop(Force, 1000 * PoundForce, "kip", "klbf");
        Si(Force, 1, "N");
        Si(Force, 10, "daN");
        Si(Force, 1000, "kN");
        Si(Force, Gravity, "kgf");

        // Scales and spring raters read pounds of force, a parts list pounds of mass; both write lb.
        foreach ((string name, double pounds) in new[] { ("lb", 1.0), ("lbs", 1.0), ("oz", 1.0 / 16) })
        {
            table.Add(name, [new Symbol(Mass, pounds * Pound, UnitSystem.Shop), new Symbol(Force, pounds * PoundForce, UnitSystem.Shop)]);
        }

        table.Add("g", [new Symbol(Acceleration, Gravity, null), new Symbol(Mass, 0.001, UnitSystem.Si)]);

        Either(Time, 1, "s", "sec");
        Either(Time, 0.001, "ms");
        Either(Time, 1e-6, "us", "µs", "μs");
        Either(Time, 60, "min");
        Either(Time, 3600, "h", "hr");
        Either(Time.Power(-1), 1, "Hz");

        Either(Angle, 1, "rad");
        Either(Angle, 0.001, "mrad");
        Either(Angle, Math.PI / 180, "deg", "°", "degree", "degrees");
        Either(Angle, 2 * Math.PI, "rev");
        Either(Turning, 2 * Math.PI / 60, "rpm");

        Shop(Speed, 5280 * 12 * Inch / 3600, "mph");
        Si(Speed, 1000.0 / 3600, "kph", "kmh");

        Si(Pressure, 1, "Pa");
        Si(Pressure, 1000, "kPa");
        Si(Pressure, 1e6, "MPa");
        Si(Pressure, 1e5, "bar");
        Si(Pressure, 100, "mbar");
        Shop(Pressure, PoundForce / (Inch * Inch), "psi");

        Si(Work, 1, "Nm", "J");
        Si(Work, 1000, "kNm", "kJ");
        Shop(Work, 12 * Inch * PoundForce, "ftlb", "lbft");
        Si(Power, 1, "W");
        Si(Power, 1000, "kW");
        Shop(Power, 550 * 12 * Inch * PoundForce, "hp");

        Either(Dimension.None, 0.01, "%");
        return table;
    }
}
