using LaunchSim.Charts.Drawing;
using OxyPlot;

namespace LaunchSim.Charts.Measure;

/// <summary>
/// Draws what there is to write in: black on white, lines long enough and far enough apart for a pencil, numbered in the
/// order of measuring.
/// </summary>
/// <param name="canvas">Where it is drawn.</param>
internal sealed class MeasurePen(IRenderContext canvas)
{
    /// <summary>Heights of text: 9 points to read, 7 points for the keys.</summary>
    public const double Text = 12, Key = 9.4;

    /// <summary>Length of a line to write on.</summary>
    public static readonly double LineLength = Paper.Millimetres(26);

    /// <summary>From one line to write on to the next.</summary>
    public static readonly double LineStep = Paper.Millimetres(8.2);

    private const double Bubble = 9, Indent = 24, Gap = 5;
    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;
    private static readonly OxyColor Grey = OxyColor.FromRgb(0x6A, 0x6A, 0x6A);
    private int _number;

    /// <summary>How many were numbered so far.</summary>
    public int Number => _number;

    /// <summary>Goes on from another page's number.</summary>
    /// <param name="number">The last number there.</param>
    public void ContinueAfter(int number) => _number = number;

    /// <summary>Room that a thing to write in takes.</summary>
    /// <param name="item">The thing.</param>
    public static double HeightOf(WriteIn item) => 17 + 7 + (LineStep * item.Lines.Length);

    /// <summary>Draws a thing to write in and gives it the next number.</summary>
    /// <param name="item">The thing.</param>
    /// <param name="at">Its upper left corner.</param>
    /// <returns>Where its number stands.</returns>
    public ScreenPoint Draw(WriteIn item, ScreenPoint at)
    {
        _number++;
        var centre = new ScreenPoint(at.X + Bubble, at.Y + Bubble);
        Numbered(_number, centre);
        canvas.Text(item.Words, new ScreenPoint(at.X + Indent, at.Y + 1), Text, OxyColors.Black, Theme.Bold);
        canvas.Text(string.Join(", ", item.Keys), new ScreenPoint(at.X + Indent, at.Y + 16), Key, Grey);
        double y = at.Y + 24;
        foreach (IReadOnlyList<Blank> row in item.Lines)
        {
            y += LineStep;
            Row(row, new ScreenPoint(at.X + Indent, y - 4));
        }

        return centre;
    }

    /// <summary>A row of lines to write on.</summary>
    /// <param name="blanks">The lines.</param>
    /// <param name="at">Where the first begins, at the height of the writing.</param>
    public void Row(IReadOnlyList<Blank> blanks, ScreenPoint at)
    {
        double x = at.X;
        foreach (Blank blank in blanks)
        {
            x = Word(blank.Before, x, at.Y);
            canvas.DrawLine([new(x, at.Y), new(x + LineLength, at.Y)], OxyColors.Black, 1, Exact);
            x = Word(blank.Unit, x + LineLength + Gap, at.Y) + Gap;
        }
    }

    /// <summary>A number in a ring.</summary>
    /// <param name="number">The number.</param>
    /// <param name="at">Its middle.</param>
    public void Numbered(int number, ScreenPoint at)
    {
        canvas.Ring(at, Bubble, OxyColors.Black, 1.2);
        canvas.Text(FormattableString.Invariant($"{number}"), at, 11, OxyColors.Black, Theme.Bold, HorizontalAlignment.Center, VerticalAlignment.Middle);
    }

    /// <summary>A box to tick, with words that are broken to a width.</summary>
    /// <param name="words">The words.</param>
    /// <param name="at">The box's upper left corner.</param>
    /// <param name="width">Width of box and words.</param>
    /// <returns>The height that it takes.</returns>
    public double Tick(string words, ScreenPoint at, double width)
    {
        canvas.DrawRectangle(new OxyRect(at.X, at.Y + 2, 11, 11), OxyColors.White, OxyColors.Black, 1.2, Exact);
        return Math.Max(15, canvas.Wrapped(words, new ScreenPoint(at.X + 18, at.Y), width - 18, Text, OxyColors.Black)) + 4;
    }

    private double Word(string word, double x, double y)
    {
        if (word.Length == 0)
        {
            return x;
        }

        canvas.Text(word, new ScreenPoint(x, y + 2), Text, OxyColors.Black, Theme.Normal, HorizontalAlignment.Left, VerticalAlignment.Bottom);
        return x + canvas.MeasureText(word, Theme.FontFamily, Text, Theme.Normal).Width + Gap;
    }
}
