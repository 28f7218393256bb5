namespace LaunchSim.Scenarios.Typical.Groups;

/// <summary>Short names for the register's entries.</summary>
internal static class Entry
{
    public const string Practice = "common practice, no source";
    public const string Guess = "no source: an order of size that launches come out sensibly with";
    public const string Rhyne = "regression of T. B. Rhyne, Tire Science and Technology 33(3), 136–155 (from memory)";
    public const string OpenTireData = "measured on a 255/40R17 at 24 to 36 psi, open data (kktse.github.io, 2021-07-12)";
    public const string OpenInertias = "open inertia measurements behind SAE 1999-01-1336, refitted for this project";

    public const double Inch = 0.0254, Pound = 0.45359237, Gravity = 9.80665, PoundForce = Pound * Gravity, PoundPerInch = PoundForce / Inch, Psi = PoundForce / Inch / Inch;

    public static TypicalValue Number(string path, Func<KnownReading, double> value, string formula, TypicalDoubt? doubt, string source, UsualRange? usual = null, HomeTest? home = null, TypicalDoubt? entered = null) =>
        Row(path, known => [value(known)], formula, doubt, source, usual, home, entered);

    public static TypicalValue Row(string path, Func<KnownReading, double[]> value, string formula, TypicalDoubt? doubt, string source, UsualRange? usual = null, HomeTest? home = null, TypicalDoubt? entered = null) => new(value)
    {
        Path = path,
        Formula = formula,
        Doubt = doubt,
        Source = source,
        Usual = usual,
        HomeTest = home,
        EnteredDoubt = entered ?? doubt,
    };

    public static TypicalValue Point(string path, Func<KnownReading, (double Ahead, double Up)> value, string formula, double doubt, UsualRange ahead, UsualRange up, HomeTest home) => new(known => value(known) is var (a, u) ? [a, u] : [])
    {
        Path = path,
        Formula = formula,
        Doubt = TypicalDoubt.Amount(doubt),
        Source = Practice,
        Usual = ahead,
        UsualUp = up,
        HomeTest = home,
        EnteredDoubt = TypicalDoubt.Amount(Inch / 8),
    };

    public static MeasuredValue Measured(string path, TypicalDoubt? entered, UsualRange? usual, HomeTest home, UsualRange? up = null) =>
        new() { Path = path, EnteredDoubt = entered, Usual = usual, UsualUp = up, HomeTest = home };

    public static SetValue Set(string path, TypicalDoubt? entered, UsualRange usual, HomeTest? home = null) =>
        new() { Path = path, EnteredDoubt = entered, Usual = usual, HomeTest = home };

    public static TypicalDoubt Share(double share) => TypicalDoubt.Share(share);

    public static TypicalDoubt Amount(double si) => TypicalDoubt.Amount(si);
}
