using LaunchSim.Charts.Drawing;
using OxyPlot;

namespace LaunchSim.Charts.Tests.Launch;

/// <summary>Draws nothing and keeps every text with the place that it takes: what a reader would find on the page.</summary>
internal sealed class TextRecorder : ClippingRenderContext
{
    public List<(string Text, OxyRect Area)> Texts { get; } = [];

    public List<(OxyColor Color, int Points)> Lines { get; } = [];

    public override void DrawText(ScreenPoint p, string text, OxyColor fill, string fontFamily, double fontSize, double fontWeight, double rotate, HorizontalAlignment halign, VerticalAlignment valign, OxySize? maxSize)
    {
        if (string.IsNullOrEmpty(text))
        {
            return;
        }

        OxySize size = Typeface.Measure(text, fontSize, fontWeight);
        double left = halign switch { HorizontalAlignment.Left => p.X, HorizontalAlignment.Center => p.X - (size.Width / 2), _ => p.X - size.Width };
        double top = valign switch { VerticalAlignment.Top => p.Y, VerticalAlignment.Middle => p.Y - (size.Height / 2), _ => p.Y - size.Height };
        Texts.Add((text, new OxyRect(left, top, size.Width, size.Height)));
    }

    public override void DrawLine(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin) =>
        Lines.Add((stroke, points.Count));

    public override void DrawEllipse(OxyRect rect, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode)
    {
    }

    public override void DrawPolygon(IList<ScreenPoint> points, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
    }

    public override void DrawRectangle(OxyRect rectangle, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode)
    {
    }

    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight) => Typeface.Measure(text, fontSize, fontWeight);

    /// <summary>Every text is on the page, and no two are in one place.</summary>
    public void IsReadable(string of)
    {
        for (int i = 0; i < Texts.Count; i++)
        {
            (string text, OxyRect area) = (Texts[i].Text, Texts[i].Area);
            Assert.True(area.Left >= 0 && area.Top >= 0 && area.Right <= Charts.Launch.ChartPage.Width && area.Bottom <= Charts.Launch.ChartPage.Height, $"{of}: '{text}' leaves the page at {area}");
            for (int j = 0; j < i; j++)
            {
                // Lines of text touch; their letters do not.
                Assert.False(Clip.Overlap(area.Grown(-1.5), Texts[j].Area.Grown(-1.5)), $"{of}: '{text}' lies on '{Texts[j].Text}' at {area}");
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
