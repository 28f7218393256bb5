using LaunchSim.Charts.Drawing;
using OxyPlot;

namespace LaunchSim.Charts.Tests;

/// <summary>A canvas that draws nothing and remembers texts and how far lines reach.</summary>
internal sealed class Recorder : ClippingRenderContext
{
    /// <summary>Every text with its place from its upper left corner; turned by a quarter when it reads upwards, else unrotated.</summary>
    public List<(string Text, OxyRect Area)> Texts { get; } = [];

    /// <summary>Every line by its points.</summary>
    public List<(IReadOnlyList<ScreenPoint> Points, OxyColor Color, double[]? Dash)> Lines { get; } = [];

    /// <summary>Every point of every line, polygon and ellipse.</summary>
    public List<ScreenPoint> Points { get; } = [];

    public override void DrawEllipse(OxyRect rect, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode) =>
        Points.AddRange([rect.TopLeft, rect.BottomRight]);

    public override void DrawLine(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        Points.AddRange(points);
        Lines.Add(([.. points], stroke, dashArray));
    }

    public override void DrawPolygon(IList<ScreenPoint> points, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin) =>
        Points.AddRange(points);

    public override void DrawRectangle(OxyRect rectangle, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode) =>
        Points.AddRange([rectangle.TopLeft, rectangle.BottomRight]);

    public override void DrawText(ScreenPoint p, string text, OxyColor fill, string fontFamily, double fontSize, double fontWeight, double rotate, HorizontalAlignment halign, VerticalAlignment valign, OxySize? maxSize)
    {
        OxySize size = MeasureText(text, fontFamily, fontSize, fontWeight);
        double left = halign switch { HorizontalAlignment.Left => p.X, HorizontalAlignment.Center => p.X - (0.5 * size.Width), _ => p.X - size.Width };
        double top = valign switch { VerticalAlignment.Top => p.Y, VerticalAlignment.Middle => p.Y - (0.5 * size.Height), _ => p.Y - size.Height };
        Texts.Add((text, rotate == -90
            ? new OxyRect(p.X + (top - p.Y), p.Y - (left - p.X + size.Width), size.Height, size.Width)
            : new OxyRect(left, top, size.Width, size.Height)));
    }

    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight) => Typeface.Measure(text, fontSize, fontWeight);

    public static Recorder Of(Picture picture)
    {
        var recorder = new Recorder();
        picture.Draw(recorder);
        return recorder;
    }

    /// <summary>No text covers another or leaves the picture, and every letter is in the program's font.</summary>
    public void IsReadable(Picture picture)
    {
        for (int i = 0; i < Texts.Count; i++)
        {
            (string text, OxyRect area) = Texts[i];
            Assert.True(area.Left > -1 && area.Top > -1 && area.Right < picture.Width + 1 && area.Bottom < picture.Height + 1, $"`{text}` leaves the picture");
            Assert.True(text.All(letter => letter == '\n' || Typeface.Of(Theme.Normal).GetGlyph(letter) != 0), $"`{text}` has a letter that the font lacks");
            for (int j = 0; j < i; j++)
            {
                Assert.False(Clip.Overlap(area.Grown(-0.5), Texts[j].Area.Grown(-0.5)), $"`{text}` covers `{Texts[j].Text}`");
            }
        }
    }

    protected override void SetClip(OxyRect clippingRectangle)
    {
    }

    protected override void ResetClip()
    {
    }
}
