using OxyPlot;

namespace LaunchSim.Charts.Drawing;

/// <summary>What is drawn again and again, in the house's way.</summary>
internal static class Strokes
{
    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;

    /// <summary>A line through points; a point that is not finite parts it.</summary>
    public static void Path(this IRenderContext canvas, IReadOnlyList<ScreenPoint> points, OxyColor color, double thickness, double[]? dash = null)
    {
        var piece = new List<ScreenPoint>(points.Count);
        foreach (ScreenPoint point in points)
        {
            if (double.IsFinite(point.X) && double.IsFinite(point.Y))
            {
                piece.Add(point);
                continue;
            }

            Draw();
        }

        Draw();

        void Draw()
        {
            if (piece.Count > 1)
            {
                canvas.DrawLine([.. piece], color, thickness, Exact, dash, LineJoin.Round);
            }

            piece.Clear();
        }
    }

    /// <summary>A filled dot with a rim of paper, so that it stands off from what is below it.</summary>
    public static void Dot(this IRenderContext canvas, ScreenPoint at, double radius, OxyColor color) =>
        canvas.DrawEllipse(new OxyRect(at.X - radius, at.Y - radius, 2 * radius, 2 * radius), color, Theme.Paper, 1.5, Exact);

    /// <summary>A ring.</summary>
    public static void Ring(this IRenderContext canvas, ScreenPoint at, double radius, OxyColor color, double thickness = 1.5) =>
        canvas.DrawEllipse(new OxyRect(at.X - radius, at.Y - radius, 2 * radius, 2 * radius), Theme.Paper, color, thickness, Exact);

    /// <summary>A text.</summary>
    public static void Text(
        this IRenderContext canvas, string text, ScreenPoint at, double size, OxyColor color, double weight = Theme.Normal,
        HorizontalAlignment horizontal = HorizontalAlignment.Left, VerticalAlignment vertical = VerticalAlignment.Top, double rotation = 0) =>
        canvas.DrawText(at, text, color, Theme.FontFamily, size, weight, rotation, horizontal, vertical);

    /// <summary>A text broken into lines of at most a width.</summary>
    /// <returns>The height that it takes.</returns>
    public static double Wrapped(this IRenderContext canvas, string text, ScreenPoint at, double width, double size, OxyColor color, double weight = Theme.Normal)
    {
        string broken = Broken(canvas, text, width, size, weight);
        canvas.Text(broken, at, size, color, weight);
        return canvas.MeasureText(broken, Theme.FontFamily, size, weight).Height;
    }

    /// <summary>The text with line feeds where it has to be broken to keep within a width.</summary>
    public static string Broken(this IRenderContext canvas, string text, double width, double size, double weight = Theme.Normal)
    {
        var lines = new List<string>();
        foreach (string paragraph in text.Split('\n'))
        {
            string line = "";
            foreach (string word in Words(paragraph))
            {
                string longer = line.Length == 0 ? word : $"{line} {word}";
                if (line.Length > 0 && canvas.MeasureText(longer, Theme.FontFamily, size, weight).Width > width)
                {
                    lines.Add(line);
                    line = word;
                }
                else
                {
                    line = longer;
                }
            }

            lines.Add(line);
        }

        return string.Join('\n', lines);
    }

    // A number keeps what comes after it: its unit, mostly.
    private static List<string> Words(string paragraph)
    {
        var words = new List<string>();
        foreach (string word in paragraph.Split(' '))
        {
            if (words.Count > 0 && words[^1].Length > 0 && char.IsAsciiDigit(words[^1][^1]))
            {
                words[^1] += " " + word;
            }
            else
            {
                words.Add(word);
            }
        }

        return words;
    }
}
