using OxyPlot;

namespace LaunchSim.Charts.Drawing;

/// <summary>Measures text by the program's own font for a canvas that cannot measure itself; draws nothing.</summary>
internal sealed class TextRuler : ClippingRenderContext
{
    public override void DrawEllipse(OxyRect rect, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode)
    {
    }

    public override void DrawLine(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
    }

    public override void DrawPolygon(IList<ScreenPoint> points, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
    }

    public override void DrawRectangle(OxyRect rectangle, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode)
    {
    }

    public override void DrawText(ScreenPoint p, string text, OxyColor fill, string fontFamily, double fontSize, double fontWeight, double rotate, HorizontalAlignment halign, VerticalAlignment valign, OxySize? maxSize)
    {
    }

    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight) =>
        Typeface.Measure(text, fontSize, fontWeight);

    protected override void SetClip(OxyRect clippingRectangle)
    {
    }

    protected override void ResetClip()
    {
    }
}
