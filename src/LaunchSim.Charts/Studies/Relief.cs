using OxyPlot;

namespace LaunchSim.Charts.Studies;

/// <summary>
/// A surface over a lattice of points, each cell of which is four triangles about its middle: the lines of one height, and
/// what lies between two heights.
/// </summary>
internal sealed class Relief
{
    private readonly List<(ScreenPoint[] At, double[] Height)> _triangles = [];

    /// <summary>A surface.</summary>
    /// <param name="across">Where the columns are.</param>
    /// <param name="up">Where the rows are.</param>
    /// <param name="height">The height at a column and row; not a number leaves a hole.</param>
    public Relief(IReadOnlyList<double> across, IReadOnlyList<double> up, Func<int, int, double> height)
    {
        for (int i = 0; i + 1 < across.Count; i++)
        {
            for (int j = 0; j + 1 < up.Count; j++)
            {
                ScreenPoint[] corners = [new(across[i], up[j]), new(across[i + 1], up[j]), new(across[i + 1], up[j + 1]), new(across[i], up[j + 1])];
                double[] heights = [height(i, j), height(i + 1, j), height(i + 1, j + 1), height(i, j + 1)];
                int missing = heights.Count(one => !double.IsFinite(one));
                if (missing == 0)
                {
                    var middle = new ScreenPoint((across[i] + across[i + 1]) / 2, (up[j] + up[j + 1]) / 2);
                    for (int k = 0; k < 4; k++)
                    {
                        int next = (k + 1) % 4;
                        _triangles.Add(([corners[k], corners[next], middle], [heights[k], heights[next], heights.Average()]));
                    }
                }
                else if (missing == 1)
                {
                    int[] there = [.. Enumerable.Range(0, 4).Where(k => double.IsFinite(heights[k]))];
                    _triangles.Add(([.. there.Select(k => corners[k])], [.. there.Select(k => heights[k])]));
                }
            }
        }
    }

    /// <summary>The pieces of the surface that lie between two heights.</summary>
    public IEnumerable<ScreenPoint[]> Between(double low, double high)
    {
        foreach ((ScreenPoint[] at, double[] heights) in _triangles)
        {
            if (heights.Max() < low || heights.Min() > high)
            {
                continue;
            }

            List<(ScreenPoint At, double Height)> piece = [.. at.Zip(heights)];
            piece = Above(Above(piece, low, 1), high, -1);
            if (piece.Count >= 3)
            {
                yield return [.. piece.Select(one => one.At)];
            }
        }
    }

    /// <summary>The lines of one height, each as long as it goes.</summary>
    public IReadOnlyList<IReadOnlyList<ScreenPoint>> Lines(double level)
    {
        var pieces = new List<(ScreenPoint From, ScreenPoint To)>();
        foreach ((ScreenPoint[] at, double[] heights) in _triangles)
        {
            var ends = new List<ScreenPoint>();
            for (int k = 0; k < 3; k++)
            {
                int next = (k + 1) % 3;
                if (heights[k] < level != heights[next] < level)
                {
                    ends.Add(Part(at[k], heights[k], at[next], heights[next], level));
                }
            }

            if (ends.Count == 2)
            {
                pieces.Add((ends[0], ends[1]));
            }
        }

        return Joined(pieces);
    }

    private static List<(ScreenPoint At, double Height)> Above(List<(ScreenPoint At, double Height)> piece, double level, int sign)
    {
        var kept = new List<(ScreenPoint, double)>();
        for (int k = 0; k < piece.Count; k++)
        {
            ((ScreenPoint at, double height), (ScreenPoint to, double next)) = (piece[k], piece[(k + 1) % piece.Count]);
            bool isIn = sign * (height - level) >= 0, isNextIn = sign * (next - level) >= 0;
            if (isIn)
            {
                kept.Add((at, height));
            }

            if (isIn != isNextIn)
            {
                kept.Add((Part(at, height, to, next, level), level));
            }
        }

        return kept;
    }

    // The same point from either side: two triangles share their edge's crossing.
    private static ScreenPoint Part(ScreenPoint a, double heightA, ScreenPoint b, double heightB, double level)
    {
        if (heightA > heightB)
        {
            (a, heightA, b, heightB) = (b, heightB, a, heightA);
        }

        double share = (level - heightA) / (heightB - heightA);
        return new ScreenPoint(a.X + (share * (b.X - a.X)), a.Y + (share * (b.Y - a.Y)));
    }

    private static List<IReadOnlyList<ScreenPoint>> Joined(List<(ScreenPoint From, ScreenPoint To)> pieces)
    {
        var ends = new Dictionary<(long, long), List<int>>();
        for (int i = 0; i < pieces.Count; i++)
        {
            Note(pieces[i].From, i);
            Note(pieces[i].To, i);
        }

        bool[] used = new bool[pieces.Count];
        var lines = new List<IReadOnlyList<ScreenPoint>>();
        for (int i = 0; i < pieces.Count; i++)
        {
            if (used[i])
            {
                continue;
            }

            used[i] = true;
            var line = new LinkedList<ScreenPoint>([pieces[i].From, pieces[i].To]);
            while (Next(line.Last!.Value) is { } further)
            {
                _ = line.AddLast(further);
            }

            while (Next(line.First!.Value) is { } further)
            {
                _ = line.AddFirst(further);
            }

            lines.Add([.. line]);
        }

        return lines;

        static (long, long) Key(ScreenPoint point) => ((long)Math.Round(point.X * 1e3), (long)Math.Round(point.Y * 1e3));

        void Note(ScreenPoint at, int piece)
        {
            (ends.TryGetValue(Key(at), out List<int>? known) ? known : ends[Key(at)] = []).Add(piece);
        }

        ScreenPoint? Next(ScreenPoint at)
        {
            foreach (int piece in ends[Key(at)])
            {
                if (!used[piece])
                {
                    used[piece] = true;
                    return Key(pieces[piece].From) == Key(at) ? pieces[piece].To : pieces[piece].From;
                }
            }

            return null;
        }
    }
}
