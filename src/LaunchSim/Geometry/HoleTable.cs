using LaunchSim.Vehicle;

namespace LaunchSim.Geometry;

/// <summary>A bracket with holes at one end of a bar.</summary>
/// <param name="Point">The end.</param>
/// <param name="Holes">Its holes by name, in the order of the file.</param>
/// <param name="Use">The hole in use.</param>
public sealed record LinkageBracket(LinkagePoint Point, IReadOnlyList<KeyValuePair<string, Point>> Holes, string Use);

/// <summary>A bar's length with one choice of holes, and what it is against the present one.</summary>
/// <param name="Name">What the bar is called in the trade.</param>
/// <param name="Length">Length, m.</param>
/// <param name="Change">Longer than now, m; negative is shorter.</param>
public readonly record struct BarChange(string Name, double Length, double Change);

/// <summary>One choice of holes.</summary>
/// <param name="Holes">The hole of each bracket, in the order of the brackets.</param>
/// <param name="Present">Whether these are the holes in use.</param>
/// <param name="Line">The static line; null where the bars cannot be put together or the car cannot stand.</param>
/// <param name="Bars">Each bar's length.</param>
public sealed record HoleRow(IReadOnlyList<string> Holes, bool Present, StaticLine? Line, IReadOnlyList<BarChange> Bars);

/// <summary>The static line for every choice of holes.</summary>
public static class HoleTable
{
    /// <summary>How many choices a set of brackets has.</summary>
    /// <param name="brackets">The brackets.</param>
    public static double Choices(IReadOnlyList<LinkageBracket> brackets) =>
        brackets.Aggregate(1.0, (count, bracket) => count * bracket.Holes.Count);

    /// <summary>All choices, rising in percent; those that cannot be put together last.</summary>
    /// <param name="present">The side view with the holes in use.</param>
    /// <param name="brackets">The brackets; none gives one row.</param>
    /// <param name="build">The side view with another linkage, or null where there is none.</param>
    public static IReadOnlyList<HoleRow> Of(SideView present, IReadOnlyList<LinkageBracket> brackets, Func<Linkage, SideView?> build)
    {
        ArgumentNullException.ThrowIfNull(present);
        ArgumentNullException.ThrowIfNull(brackets);
        ArgumentNullException.ThrowIfNull(build);
        IReadOnlyList<BarAngle> now = present.Line.Bars;
        var rows = new List<HoleRow>();
        int[] choice = new int[brackets.Count];
        do
        {
            Linkage linkage = present.Linkage;
            for (int i = 0; i < choice.Length; i++)
            {
                linkage = linkage.With(brackets[i].Point, brackets[i].Holes[choice[i]].Value);
            }

            string[] names = [.. brackets.Select((bracket, i) => bracket.Holes[choice[i]].Key)];
            bool isPresent = brackets.Select(bracket => bracket.Use).SequenceEqual(names);
            SideView? view = isPresent ? present : build(linkage);
            StaticLine? line = view is { CanBeAssembled: true } ? view.Line : null;
            rows.Add(new HoleRow(names, isPresent, line, line is null ? [] : [.. line.Bars.Select((bar, i) => new BarChange(bar.Name, bar.Length, bar.Length - now[i].Length))]));
        }
        while (Next(choice, brackets));

        // OrderBy keeps the order of the file among equals.
        return [.. rows.OrderBy(row => row.Line is null).ThenBy(row => row.Line?.Percent ?? 0)];
    }

    private static bool Next(int[] choice, IReadOnlyList<LinkageBracket> brackets)
    {
        for (int i = choice.Length - 1; i >= 0; i--)
        {
            if (++choice[i] < brackets[i].Holes.Count)
            {
                return true;
            }

            choice[i] = 0;
        }

        return false;
    }
}
