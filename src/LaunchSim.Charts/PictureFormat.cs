using System.Globalization;
using System.Security;
using System.Text;
using LaunchSim.Charts.Drawing;
using OxyPlot;
using OxyPlot.SkiaSharp;
using SkiaSharp;

namespace LaunchSim.Charts;

/// <summary>Writes pictures. The bytes depend on the picture alone, not on the machine's fonts or its culture.</summary>
public static class PictureFormat
{
    /// <summary>Stands in every file, so that a picture of this program can be told from another.</summary>
    public const string Maker = "LaunchSim";

    // Flat colours and thin lines pack as small without a filter as with one, in a third of the time.
    private static readonly SKPngEncoderOptions Packing = new(SKPngEncoderFilterFlags.None, 4);

    private const double PointsPerUnit = 72.0 / 96;

    /// <summary>As PNG.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="stream">Receives it.</param>
    /// <param name="scale">Pixels for each of the picture's units: 2 is sharp on a phone.</param>
    public static void WritePng(Picture picture, Stream stream, double scale = 2)
    {
        ArgumentNullException.ThrowIfNull(picture);
        ArgumentNullException.ThrowIfNull(stream);
        using var bitmap = new SKBitmap((int)Math.Ceiling(picture.Width * scale), (int)Math.Ceiling(picture.Height * scale), isOpaque: true);
        using (var skia = new SKCanvas(bitmap))
        using (var canvas = new SkiaCanvas { SkCanvas = skia, RenderTarget = RenderTarget.PixelGraphic, UseTextShaping = false })
        {
            skia.Clear(Theme.Paper.ToSKColor());
            skia.Scale((float)scale);
            picture.Draw(canvas);
        }

        using SKPixmap? pixels = bitmap.PeekPixels();
        using SKData data = pixels?.Encode(Packing) ?? throw new InvalidOperationException("The picture has no pixels.");
        PngText.Write(data.AsSpan(), "Software", Maker, stream);
    }

    /// <summary>As SVG, text as text.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="stream">Receives it.</param>
    public static void WriteSvg(Picture picture, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(picture);
        ArgumentNullException.ThrowIfNull(stream);
        using var memory = new MemoryStream();
        using (var canvas = new SvgRenderContext(memory, picture.Width, picture.Height, true, new TextRuler(), Theme.Paper))
        {
            picture.Draw(canvas);
            canvas.Complete();
            canvas.Flush();
        }

        // A reader of the screen begins with the title.
        string text = Encoding.UTF8.GetString(memory.ToArray()).TrimStart('\uFEFF').ReplaceLineEndings("\n");
        int root = text.IndexOf("<svg", StringComparison.Ordinal), head = text.IndexOf('>', root) + 1;
        string box = string.Create(CultureInfo.InvariantCulture, $" viewBox=\"0 0 {picture.Width} {picture.Height}\" role=\"img\"");
        string opening = text[root..(head - 1)];
        if (opening.Contains("viewBox", StringComparison.Ordinal))
        {
            box = " role=\"img\"";
        }

        text = $"{text[..root]}{opening}{box}>\n<title>{SecurityElement.Escape(picture.Title)}</title>\n<metadata>{Maker}</metadata>{text[head..]}";
        stream.Write(Encoding.UTF8.GetBytes(text));
    }

    /// <summary>As PDF, a picture a page, each page as large as its picture.</summary>
    /// <param name="pictures">The pictures; at least one.</param>
    /// <param name="stream">Receives it.</param>
    public static void WritePdf(IReadOnlyList<Picture> pictures, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(pictures);
        ArgumentOutOfRangeException.ThrowIfZero(pictures.Count);
        using var document = SKDocument.CreatePdf(stream, new SKDocumentPdfMetadata { Title = pictures[0].Title, Producer = Maker });
        foreach (Picture picture in pictures)
        {
            SKCanvas page = document.BeginPage((float)(picture.Width * PointsPerUnit), (float)(picture.Height * PointsPerUnit));
            page.Scale((float)PointsPerUnit);
            using (var canvas = new SkiaCanvas { SkCanvas = page, RenderTarget = RenderTarget.VectorGraphic, UseTextShaping = false })
            {
                picture.Draw(canvas);
            }

            document.EndPage();
        }

        document.Close();
    }
}
