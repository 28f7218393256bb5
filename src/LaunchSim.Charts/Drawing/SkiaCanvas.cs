using OxyPlot;
using OxyPlot.SkiaSharp;
using SkiaSharp;

namespace LaunchSim.Charts.Drawing;

/// <summary>Draws on pixels or on a page of PDF, text in the program's own font, whatever family is asked for.</summary>
internal sealed class SkiaCanvas : SkiaRenderContext, IRenderContext
{
    void IRenderContext.DrawText(
        ScreenPoint p, string text, OxyColor fill, string? fontFamily, double fontSize, double fontWeight, double rotation,
        HorizontalAlignment horizontalAlignment, VerticalAlignment verticalAlignment, OxySize? maxSize)
    {
        if (string.IsNullOrEmpty(text) || !fill.IsVisible())
        {
            return;
        }

        using SKFont font = Typeface.Font(fontSize, fontWeight);
        using var paint = new SKPaint { Color = fill.ToSKColor(), IsAntialias = true };
        string[] lines = text.Split('\n');
        float lineHeight = Typeface.LineHeight(font), height = lineHeight * lines.Length;
        float top = verticalAlignment switch
        {
            VerticalAlignment.Top => 0,
            VerticalAlignment.Middle => -height / 2,
            _ => -height,
        };

        SkCanvas.Save();
        SkCanvas.Translate((float)p.X, (float)p.Y);
        SkCanvas.RotateDegrees((float)rotation);
        for (int i = 0; i < lines.Length; i++)
        {
            float width = font.MeasureText(lines[i]);
            float left = horizontalAlignment switch
            {
                HorizontalAlignment.Left => 0,
                HorizontalAlignment.Center => -width / 2,
                _ => -width,
            };
            SkCanvas.DrawText(lines[i], left, top - font.Metrics.Ascent + (i * lineHeight), SKTextAlign.Left, font, paint);
        }

        SkCanvas.Restore();
    }

    OxySize IRenderContext.MeasureText(string text, string? fontFamily, double fontSize, double fontWeight) =>
        Typeface.Measure(text, fontSize, fontWeight);
}
