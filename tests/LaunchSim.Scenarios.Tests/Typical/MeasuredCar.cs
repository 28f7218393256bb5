using System.Globalization;
using CsCheck;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Tests.Typical;

/// <summary>A car of which only what has to be measured is known. It weighs what a car of its length does: 1,240 to 2,600 N for a square metre of it.</summary>
internal sealed record MeasuredCar(double Wheelbase, double Weight, double FrontShare, double FrontRadius, double RearRadius, double Upper, bool LadderBar, TypicalHints Hints)
{
    public static Gen<MeasuredCar> Gen { get; } =
        from wheelbase in CsCheck.Gen.Double[2.2, 3.0]
        from density in CsCheck.Gen.Double[1240, 2600]
        from front in CsCheck.Gen.Double[0.42, 0.58]
        from frontRadius in CsCheck.Gen.Double[0.28, 0.35]
        from rearRadius in CsCheck.Gen.Double[0.30, 0.40]
        from upper in CsCheck.Gen.Double[-0.03, 0.07]
        from ladder in CsCheck.Gen.Bool
        from soft in CsCheck.Gen.Int[0, 8]
        select new MeasuredCar(wheelbase, density * wheelbase * wheelbase, front, frontRadius, rearRadius, upper, ladder, new TypicalHints { FrontDampers = (DamperFamily)(soft % 3), RearDampers = (DamperFamily)(soft / 3) });

    private Dictionary<string, string> Measured
    {
        get
        {
            var measured = new Dictionary<string, string>
            {
                ["car.wheelbase"] = Metres(Wheelbase),
                ["car.scales.front"] = Number(Weight * FrontShare) + " N",
                ["car.scales.rear"] = Number(Weight * (1 - FrontShare)) + " N",
                ["front.tire.loaded_radius"] = Metres(FrontRadius),
                ["rear.tire.loaded_radius"] = Metres(RearRadius),
            };
            if (LadderBar)
            {
                measured["rear.linkage.pivot"] = Point(0.8, 0.23);
            }
            else
            {
                measured["rear.linkage.lower.axle"] = Point(0.02, RearRadius - 0.14);
                measured["rear.linkage.lower.body"] = Point(0.54, RearRadius - 0.10);
                measured["rear.linkage.upper.axle"] = Point(0.06, RearRadius + 0.10);
                measured["rear.linkage.upper.body"] = Point(0.36, RearRadius + 0.10 - Upper);
            }

            return measured;
        }
    }

    /// <summary>What is known, with an engine's sheet besides, so that every typical value can be worked out.</summary>
    public KnownCar Known()
    {
        var values = new Dictionary<string, Quantity>();
        foreach ((string path, string text) in Measured.Append(new("driveline.engine.speed", "2000 4000 6000 rpm")).Append(new("driveline.engine.torque", "500 640 600 N·m")))
        {
            Assert.True(Quantity.TryParse(text, TypicalRegister.Find(path)!.Kind, out Quantity? quantity, out _));
            values[path] = quantity!;
        }

        return new KnownCar(values, null, Hints);
    }

    /// <summary>A whole scenario: the measured values, and typical ones in the place of all that a run needs besides.</summary>
    public string Text(UnitSystem system)
    {
        KnownCar known = Known();
        var lines = new List<string> { "name: measured", $"rear.linkage.type: {(LadderBar ? "ladder-bar" : "four-link")}", "driveline.type: axle-torque" };
        lines.AddRange(Measured.Select(pair => $"{pair.Key}: {pair.Value}"));
        foreach (TypicalValue typical in TypicalRegister.All.OfType<TypicalValue>())
        {
            if (!typical.Path.StartsWith("driveline.", StringComparison.Ordinal) || typical.Path is "driveline.time" or "driveline.torque")
            {
                lines.Add($"{typical.Path}: {typical.For(known)!.Text(system)}");
            }
        }

        lines.RemoveAll(line => line.StartsWith("rear.wheelie_bar", StringComparison.Ordinal));
        return Tree(lines);
    }

    // Paths with dots as nested sections in braces, which need no care for indents.
    private static string Tree(List<string> lines)
    {
        var root = new SortedDictionary<string, object>(StringComparer.Ordinal);
        foreach (string line in lines)
        {
            int colon = line.IndexOf(": ", StringComparison.Ordinal);
            string[] way = line[..colon].Split('.');
            SortedDictionary<string, object> at = root;
            foreach (string step in way[..^1])
            {
                at = (SortedDictionary<string, object>)(at.TryGetValue(step, out object? inner) ? inner : at[step] = new SortedDictionary<string, object>(StringComparer.Ordinal));
            }

            at[way[^1]] = line[(colon + 2)..];
        }

        return Write(root, "");
    }

    private static string Write(SortedDictionary<string, object> section, string indent) => string.Concat(section.Select(pair =>
        pair.Value is string text ? $"{indent}{pair.Key}: {text}\n" : $"{indent}{pair.Key}:\n{Write((SortedDictionary<string, object>)pair.Value, indent + "  ")}"));

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    private static string Metres(double value) => Number(value) + " m";

    private static string Point(double ahead, double up) => $"{Number(ahead)} {Number(up)} m";
}
