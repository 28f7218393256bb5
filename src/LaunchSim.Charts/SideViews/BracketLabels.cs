using LaunchSim.Charts.Drawing;
using OxyPlot;

namespace LaunchSim.Charts.SideViews;

/// <summary>Names the holes of brackets: each at its hole, or those of a bracket together where the drawing is too small for that.</summary>
/// <param name="scene">What is drawn.</param>
/// <param name="projection">Where things are.</param>
/// <param name="labels">Receives the names.</param>
/// <param name="size">Height of the names.</param>
internal sealed class BracketLabels(SideViewScene scene, Projection projection, Labels labels, double size)
{
    // Holes nearer to each other than this both ways, in the picture's units, share one label.
    private const double ApartAlong = 44, ApartUp = 17;

    private readonly LabelStyle _inUse = new() { Size = size, Weight = Theme.Bold, Gap = 7 };
    private readonly LabelStyle _other = new() { Size = size, Color = Theme.Muted, Gap = 8 };

    /// <summary>Places the names.</summary>
    public void Place()
    {
        IGrouping<string, SceneHole>[] brackets = [.. scene.Holes.Where(hole => hole.IsOfLinkage).GroupBy(hole => hole.Bracket)];
        foreach (IGrouping<string, SceneHole> bracket in brackets)
        {
            Bracket([.. bracket.Where(hole => projection.Shows(hole.At))], brackets.Length == 1);
        }
    }

    private void Bracket(SceneHole[] holes, bool isOnly)
    {
        if (holes.Length == 0)
        {
            return;
        }

        // From the top, and of those level with each other from the rear.
        holes = [.. holes.OrderByDescending(hole => hole.At.Up).ThenBy(hole => hole.At.Ahead)];
        bool single = true;
        for (int i = 0; i < holes.Length && single; i++)
        {
            for (int j = 0; j < i && single; j++)
            {
                ScreenPoint one = projection.At(holes[i].At), other = projection.At(holes[j].At);
                single = Math.Abs(one.X - other.X) >= ApartAlong || Math.Abs(one.Y - other.Y) >= ApartUp;
            }
        }

        if (single)
        {
            foreach (SceneHole hole in holes.OrderByDescending(hole => hole.IsInUse))
            {
                _ = labels.Offer(hole.Name, projection.At(hole.At), (hole.IsInUse ? _inUse : _other) with { Gap = 7, Directions = [0, 180, 20, 340] });
            }

            return;
        }

        const int Most = 8;
        string names = holes.Length <= Most ? string.Join(", ", holes.Select(hole => hole.Name)) : $"{holes[0].Name} to {holes[^1].Name}";
        string use = holes.FirstOrDefault(hole => hole.IsInUse) is { } used ? $"; {used.Name} in use" : "";
        SceneHole middle = holes.FirstOrDefault(hole => hole.IsInUse) ?? holes[0];
        string text = isOnly ? $"holes from the top: {names}{use}" : $"{PointWords.Bracket(middle.Bracket)}, holes from the top:\n{names}{use}";
        _ = labels.Offer(text, projection.At(middle.At), _other with { Directions = [45, 20, 90, 0, 70] });
    }
}
