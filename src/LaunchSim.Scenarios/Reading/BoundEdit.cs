using System.Globalization;
using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Reading;

/// <summary>
/// Puts a value in the place of a bound one without going through the tree. Only what a value may be by itself is looked
/// at here, as <see cref="ValueBinder"/> does; what holds between values is left to the rules. The doubt of what stood there stays.
/// </summary>
internal static class BoundEdit
{
    /// <summary>False when the edit needs the tree: the value is not there yet, or is not of a kind that is replaced here.</summary>
    public static bool TryPut(BoundValues values, ScenarioEdit edit)
    {
        ScenarioPath path = edit.Target;
        string text = path.Text;
        switch (path.Tail)
        {
            case PathTail.Whole:
                return values.Find(text) is { } whole && Whole(values, whole, edit);
            case PathTail.Use:
                return edit.Word is { } name && values.Find(text[..^4]) is { Holes: { } holes } bracket
                    && holes.Any(hole => hole.Key == name) && Replace(values, new Bound(bracket.Path, bracket.Key, bracket.Node) { Holes = holes, Use = name });
            case PathTail.Ahead or PathTail.Up:
                return values.Find(text[..text.LastIndexOf('.')]) is { Holes: null } point
                    && Part(point, path.Tail == PathTail.Ahead, edit) is { } moved && Replace(values, moved);
            case PathTail.HoleAhead or PathTail.HoleUp:
                return values.Find(text[..text.IndexOf(".holes.", StringComparison.Ordinal)]) is { Holes: not null } holed && Hole(values, holed, edit);
            case PathTail.Click:
                return values.Find(text[..(text.IndexOf(".clicks.", StringComparison.Ordinal) + 7)]) is { Clicks: not null } clicks && Click(values, clicks, edit);
            default:
                return false;
        }
    }

    private static bool Whole(BoundValues values, Bound bound, ScenarioEdit edit)
    {
        if (edit.Quantity is not { } quantity || bound.Quantity is null || bound.Quantity.Count != quantity.Count || bound.Up is not null)
        {
            return false;
        }

        Limits? limits = bound.Key.Kind switch
        {
            NumberKind number => number.Limits,
            RowKind { Rising: false } row => row.Limits,
            _ => null,
        };
        return limits is not null
            && InRange(quantity, limits)
            && Replace(values, new Bound(bound.Path, bound.Key, bound.Node) { Quantity = quantity.DoubtedLike(bound.Quantity) });
    }

    private static Bound? Part(Bound point, bool ahead, ScenarioEdit edit)
    {
        if (edit.Quantity is not { Count: 1 } part || point.Quantity is not { } whole || !InRange(part, ahead ? Limits.Any : Limits.NotNegative))
        {
            return null;
        }

        int index = ahead ? 0 : 1;
        Quantity other = point.Up is { } up ? (ahead ? up : whole) : new Quantity([whole.Numbers[1 - index]], whole.Unit).DoubtedLike(whole, 1 - index);
        part = point.Up is null ? part.DoubtedLike(whole, index) : part.DoubtedLike(ahead ? whole : point.Up);
        return new Bound(point.Path, point.Key, point.Node) { Quantity = ahead ? part : other, Up = ahead ? other : part };
    }

    private static bool Hole(BoundValues values, Bound bracket, ScenarioEdit edit)
    {
        int at = IndexOf(bracket.Holes!, hole => hole == edit.Target.Name);
        if (at < 0 || Part(bracket.Holes![at].Value, edit.Target.Tail == PathTail.HoleAhead, edit) is not { } moved)
        {
            return false;
        }

        KeyValuePair<string, Bound>[] holes = [.. bracket.Holes];
        holes[at] = new(holes[at].Key, moved);
        return Replace(values, new Bound(bracket.Path, bracket.Key, bracket.Node) { Holes = holes, Use = bracket.Use });
    }

    private static bool Click(BoundValues values, Bound clicks, ScenarioEdit edit)
    {
        double click = double.Parse(edit.Target.Name, NumberStyles.Float, CultureInfo.InvariantCulture);
        int at = IndexOf(clicks.Clicks!, row => row == click);
        if (at < 0 || edit.Quantity is not { } quantity || clicks.Key.Kind is not ClicksKind kind
            || clicks.Clicks![at].Value is not { Quantity: { } before } row || before.Count != quantity.Count
            || !InRange(quantity, kind.Limits))
        {
            return false;
        }

        KeyValuePair<double, Bound>[] rows = [.. clicks.Clicks];
        rows[at] = new(click, new Bound(row.Path, row.Key, row.Node) { Quantity = quantity.DoubtedLike(before) });
        return Replace(values, new Bound(clicks.Path, clicks.Key, clicks.Node) { Clicks = rows });
    }

    private static int IndexOf<T>(IReadOnlyList<KeyValuePair<T, Bound>> list, Predicate<T> wanted)
    {
        for (int i = 0; i < list.Count; i++)
        {
            if (wanted(list[i].Key))
            {
                return i;
            }
        }

        return -1;
    }

    // Out of range is found by the tree in its own words: here it only says that the short way is not open.
    private static bool InRange(Quantity quantity, Limits limits)
    {
        for (int i = 0; i < quantity.Count; i++)
        {
            if (!limits.Holds(quantity.Si(i)))
            {
                return false;
            }
        }

        return true;
    }

    private static bool Replace(BoundValues values, Bound bound)
    {
        values.Replace(bound);
        return true;
    }
}
