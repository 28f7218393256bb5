using System.Globalization;
using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Reading.Rules;
using LaunchSim.Scenarios.Units;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Reading;

/// <summary>What a scenario tells about its values beside the car: doubts, brackets, clicks, units.</summary>
internal static class ScenarioParts
{
    public static Dictionary<string, Doubt> Doubts(BoundValues values)
    {
        var doubts = new Dictionary<string, Doubt>(StringComparer.Ordinal);
        foreach (Bound bound in values.All)
        {
            AddDoubts(doubts, bound);
        }

        return doubts;
    }

    public static Dictionary<string, Bracket> Brackets(BoundValues values)
    {
        var brackets = new Dictionary<string, Bracket>(StringComparer.Ordinal);
        foreach (Bound bound in values.All)
        {
            if (bound.Holes is not null)
            {
                brackets.Add(bound.Path, new Bracket
                {
                    Holes = [.. bound.Holes.Select(hole => new KeyValuePair<string, Point>(hole.Key, hole.Value.Point()))],
                    Use = bound.Use,
                });
            }
        }

        return brackets;
    }

    public static Dictionary<string, ClickInfo> Clicks(BoundValues values)
    {
        var clicks = new Dictionary<string, ClickInfo>(StringComparer.Ordinal);
        foreach (string side in DamperRules.Sides)
        {
            if (values.Find(side + ".clicks") is { Clicks: { } rows } && values.FindNumber(side + ".set") is { } set)
            {
                clicks.Add(side, new ClickInfo { CountFrom = values.Find(side + ".count_from")?.Text, Set = set, Entered = [.. rows.Select(row => row.Key)] });
            }
        }

        return clicks;
    }

    public static UnitSystem UnitSystem(BoundValues values)
    {
        int shop = 0;
        int si = 0;
        foreach (Bound bound in values.All)
        {
            Quantity? quantity = bound.Quantity ?? bound.Holes?[0].Value.Quantity ?? bound.Clicks?[0].Value.Quantity;
            shop += quantity?.Unit.System == Units.UnitSystem.Shop ? 1 : 0;
            si += quantity?.Unit.System == Units.UnitSystem.Si ? 1 : 0;
        }

        return si > shop ? Units.UnitSystem.Si : Units.UnitSystem.Shop;
    }

    public static Quantity? Quantity(BoundValues values, ScenarioPath path)
    {
        if (path.Tail == PathTail.Whole)
        {
            Bound? whole = values.Find(path.Text);
            return whole?.Holes is null ? Whole(whole) : Whole(whole.Holes.First(hole => hole.Key == whole.Use).Value);
        }

        if (path.Tail == PathTail.Click)
        {
            double click = double.Parse(path.Name, NumberStyles.Float, CultureInfo.InvariantCulture);
            return values.Find(path.Text[..path.Text.IndexOf(".clicks.", StringComparison.Ordinal)] + ".clicks")?.Clicks?
                .FirstOrDefault(row => row.Key == click).Value?.Quantity;
        }

        int holes = path.Text.IndexOf(".holes.", StringComparison.Ordinal);
        Bound? point = holes >= 0
            ? values.Find(path.Text[..holes])?.Holes?.FirstOrDefault(hole => hole.Key == path.Name).Value
            : values.Find(path.Text[..path.Text.LastIndexOf('.')]);
        if (point?.Holes is not null && holes < 0)
        {
            point = point.Holes.First(hole => hole.Key == point.Use).Value;
        }

        return path.Tail switch
        {
            PathTail.Hole => Whole(point),
            PathTail.Ahead or PathTail.HoleAhead => Part(point, 0),
            PathTail.Up or PathTail.HoleUp => Part(point, 1),
            _ => null,
        };
    }

    /// <summary>The number, the row, or the point with both its parts in one unit.</summary>
    public static Quantity? Whole(Bound? bound) => bound?.Quantity is not { } first || bound.Up is not { } up
        ? bound?.Quantity
        : new Quantity([first.Numbers[0], up.Si() / first.Unit.Factor], [Doubt(first, first.SiDoubt()), Doubt(first, up.SiDoubt())], first.Unit, null);

    private static Quantity? Part(Bound? bound, int index)
    {
        if (bound?.Quantity is not { } whole)
        {
            return null;
        }

        if (bound.Up is { } up)
        {
            return index == 0 ? whole : up;
        }

        return new Quantity([whole.Numbers[index]], [Doubt(whole, whole.SiDoubt(index))], whole.Unit, null);
    }

    private static double Doubt(Quantity unitOf, double? si) => si / unitOf.Unit.Factor ?? double.NaN;

    private static void AddDoubts(Dictionary<string, Doubt> doubts, Bound bound)
    {
        foreach (KeyValuePair<string, Bound> hole in bound.Holes ?? [])
        {
            AddDoubts(doubts, hole.Value);
        }

        foreach (KeyValuePair<double, Bound> row in bound.Clicks ?? [])
        {
            AddDoubts(doubts, row.Value);
        }

        if (bound.Quantity is not { } quantity)
        {
            return;
        }

        if (quantity.RowDoubtPercent is { } percent)
        {
            doubts[bound.Path] = new Doubt(percent, true);
        }

        bool point = bound.Key.Kind is Schema.PointKind;
        for (int i = 0; i < quantity.Count; i++)
        {
            if (quantity.SiDoubt(i) is { } half)
            {
                doubts[point ? bound.Path + (i == 0 ? ".ahead" : ".up") : bound.Path] = new Doubt(half, false);
            }
        }

        if (bound.Up?.SiDoubt() is { } up)
        {
            doubts[bound.Path + ".up"] = new Doubt(up, false);
        }
    }
}
