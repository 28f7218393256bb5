using System.Text;
using LaunchSim.Charts.Drawing;
using OxyPlot;
using SkiaSharp;

namespace LaunchSim.Charts.Tests;

public class PictureFormatTests
{
    private static readonly Picture Words = new("A <word> & a rule", 200, 60, canvas =>
    {
        canvas.Text("Δ 141 % · 35.9 in ±1°", new ScreenPoint(10, 10), Theme.Body, Theme.Ink);
        canvas.Path([new(10, 50), new(190, 50)], Theme.Ink, 2, Theme.LongDash);
    });

    [Fact]
    public void WritePng_Text_LeavesInkWhereTheTextIs()
    {
        using var stream = new MemoryStream();
        PictureFormat.WritePng(Words, stream);
        using var bitmap = SKBitmap.Decode(stream.ToArray());

        Assert.Equal(400, bitmap.Width);
        Assert.Equal(120, bitmap.Height);
        Assert.InRange(Ink(bitmap, 20, 20, 320, 34), 300, 6000);
        Assert.Equal(0, Ink(bitmap, 0, 64, 400, 26));
    }

    [Fact]
    public void WriteSvg_Text_IsTextWithATitle()
    {
        using var stream = new MemoryStream();
        PictureFormat.WriteSvg(Words, stream);
        string text = Encoding.UTF8.GetString(stream.ToArray());

        var document = System.Xml.Linq.XDocument.Parse(text);
        Assert.Equal("A <word> & a rule", document.Root!.Elements().First(e => e.Name.LocalName == "title").Value);
        Assert.Contains(document.Descendants(), e => e.Name.LocalName == "text" && e.Value.Contains("141 %", StringComparison.Ordinal));
        Assert.NotNull(document.Root.Attribute("viewBox"));
    }

    [Fact]
    public void WritePdf_TwoPictures_AreTwoPages()
    {
        using var stream = new MemoryStream();
        PictureFormat.WritePdf([Words, Words], stream);
        string text = Encoding.Latin1.GetString(stream.ToArray());

        Assert.StartsWith("%PDF-", text, StringComparison.Ordinal);
        Assert.Contains("/Count 2", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Place_ManyLabelsAtOnePoint_CoverNoOther()
    {
        _ = new Picture("", 600, 400, canvas =>
        {
            var labels = new Labels(canvas, new OxyRect(0, 0, 600, 400));
            for (int i = 0; i < 12; i++)
            {
                Assert.True(labels.Place($"label {i}", new ScreenPoint(300 + i, 200)).IsClear);
            }

            for (int i = 0; i < labels.Placed.Count; i++)
            {
                for (int j = 0; j < i; j++)
                {
                    OxyRect a = labels.Placed[i].Area, b = labels.Placed[j].Area;
                    Assert.False(a.Left < b.Right && a.Right > b.Left && a.Top < b.Bottom && a.Bottom > b.Top);
                }
            }
        }).Drawn();
    }

    private static int Ink(SKBitmap bitmap, int left, int top, int width, int height)
    {
        int dark = 0;
        for (int x = left; x < left + width; x++)
        {
            for (int y = top; y < top + height; y++)
            {
                dark += bitmap.GetPixel(x, y).Red < 128 ? 1 : 0;
            }
        }

        return dark;
    }
}

internal static class Pictures
{
    /// <summary>Draws a picture and throws away what came of it.</summary>
    public static byte[] Drawn(this Picture picture)
    {
        using var stream = new MemoryStream();
        PictureFormat.WritePng(picture, stream);
        return stream.ToArray();
    }
}
