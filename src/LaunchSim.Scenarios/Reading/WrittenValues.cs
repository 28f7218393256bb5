using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Reading;

/// <summary>The values of a scenario as they were written, bases and changes laid over one another; without its name and notes.</summary>
internal static class WrittenValues
{
    private static readonly string[] Remarks = ["name", "notes"];

    public static IReadOnlyList<WrittenValue> Of(BoundValues values)
    {
        var written = new List<WrittenValue>();
        foreach (Bound bound in values.All)
        {
            if (!Remarks.Contains(bound.Path))
            {
                Add(written, bound.Path, bound);
            }
        }

        return written;
    }

    private static void Add(List<WrittenValue> written, string path, Bound bound)
    {
        if (bound.Holes is { } holes)
        {
            written.Add(new WrittenValue(path + ".use", bound.Use));
            foreach (KeyValuePair<string, Bound> hole in holes)
            {
                Add(written, $"{path}.holes.{hole.Key}", hole.Value);
            }
        }
        else if (bound.Clicks is { } clicks)
        {
            foreach (KeyValuePair<double, Bound> row in clicks)
            {
                Add(written, FormattableString.Invariant($"{path}.{row.Key}"), row.Value);
            }
        }
        else if (bound is { Quantity: { } ahead, Key.Kind: PointKind })
        {
            // Part by part, so that a point of which one was changed tells which.
            written.Add(Numbers(path + ".ahead", Part(ahead, 0)));
            written.Add(Numbers(path + ".up", bound.Up ?? Part(ahead, 1)));
        }
        else
        {
            written.Add(bound.Quantity is { } quantity ? Numbers(path, quantity) : new WrittenValue(path, bound.Text));
        }
    }

    private static Quantity Part(Quantity point, int index) => new([point.Numbers[index]], point.Unit);

    private static WrittenValue Numbers(string path, Quantity quantity) => new(path, quantity.ToString()) { Numbers = quantity.AllSi() };
}
