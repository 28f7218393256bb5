using LaunchSim.Studies.Grids;

namespace LaunchSim.Studies.Searching;

/// <summary>
/// The set-ups of which none is beaten in both of two figures: what is won in one has to be paid in the other. Kept while
/// the rows come; its size does not grow with the grid.
/// </summary>
/// <param name="first">The first figure, smaller being better; not a number when a row has none and does not count.</param>
/// <param name="second">The second one, likewise.</param>
public sealed class Front(Func<GridRow, double> first, Func<GridRow, double> second)
{
    private readonly List<(double First, double Second, GridRow Row)> _members = [];

    /// <summary>The set-ups of the front by their first figure, rising.</summary>
    public IReadOnlyList<GridRow> Members => [.. _members.Select(member => member.Row)];

    /// <summary>Looks at a row.</summary>
    /// <param name="row">The row.</param>
    public void Add(GridRow row)
    {
        (double a, double b) = (first(row), second(row));
        if (row.Trouble is not null || double.IsNaN(a) || double.IsNaN(b))
        {
            return;
        }

        // The members rise in the first figure and fall in the second: one place tells all.
        int at = _members.FindIndex(member => member.First > a || (member.First == a && member.Second >= b));
        at = at < 0 ? _members.Count : at;
        if (at > 0 && _members[at - 1].Second <= b)
        {
            return;
        }

        if (at < _members.Count && _members[at].First == a && _members[at].Second == b)
        {
            return;
        }

        int beaten = at;
        while (beaten < _members.Count && _members[beaten].Second >= b)
        {
            beaten++;
        }

        _members.RemoveRange(at, beaten - at);
        _members.Insert(at, (a, b, row));
    }
}
