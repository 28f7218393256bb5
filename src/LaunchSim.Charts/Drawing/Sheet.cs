using OxyPlot;

namespace LaunchSim.Charts.Drawing;

/// <summary>A sheet with what is seen on top, what it is of below that, and notes at the foot.</summary>
/// <param name="canvas">Where it is drawn.</param>
/// <param name="width">Width of the sheet.</param>
/// <param name="height">Height of the sheet.</param>
/// <param name="margin">Margin on all sides.</param>
internal sealed class Sheet(IRenderContext canvas, double width, double height, double margin)
{
    private double _used;

    /// <summary>Writes the title and the line below it.</summary>
    /// <param name="title">What is seen.</param>
    /// <param name="of">What it is of.</param>
    public void Head(string title, string of)
    {
        double within = width - (2 * margin);
        _used += canvas.Wrapped(title, new ScreenPoint(margin, margin + _used), within, Theme.Title, Theme.Ink, Theme.Bold) + 2;
        _used += canvas.Wrapped(of, new ScreenPoint(margin, margin + _used), within, Theme.Body, Theme.Muted) + 10;
    }

    /// <summary>What is left between head and foot.</summary>
    /// <param name="foot">Height of the foot.</param>
    public OxyRect Room(double foot) => new(margin, margin + _used, width - (2 * margin), height - (2 * margin) - foot - _used);

    /// <summary>Writes notes at the foot, one after the other.</summary>
    /// <param name="notes">The notes, a sentence each.</param>
    public void Foot(IReadOnlyList<string> notes)
    {
        string text = Strokes.Broken(canvas, string.Join(' ', notes.Where(note => note.Length > 0)), width - (2 * margin), Theme.Small);
        double tall = canvas.MeasureText(text, Theme.FontFamily, Theme.Small, Theme.Normal).Height;
        canvas.Text(text, new ScreenPoint(margin, height - margin - tall), Theme.Small, Theme.Muted);
    }
}
