using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace LaunchSim.Studies.Running;

/// <summary>
/// How the tables of studies are written: commas, line feeds, the shortest numbers that read back the same, nothing where
/// there is none, every text on one line, so that a row is a line.
/// </summary>
internal static class RowText
{
    /// <summary>The format for the reader and the writer.</summary>
    public static CsvConfiguration Format { get; } = new(CultureInfo.InvariantCulture) { NewLine = "\n", HasHeaderRecord = false };

    /// <summary>The first line, without its end; names with commas or quotes are quoted.</summary>
    /// <param name="columns">The names of the columns.</param>
    public static string Header(IEnumerable<string> columns)
    {
        var text = new StringWriter(CultureInfo.InvariantCulture);
        using var csv = new CsvWriter(text, Format);
        foreach (string column in columns)
        {
            csv.WriteField(column);
        }

        csv.Flush();
        return text.ToString();
    }

    /// <summary>A number; nothing for one that is not finite.</summary>
    /// <param name="value">The number.</param>
    public static string Number(double value) =>
        double.IsFinite(value) ? (value + 0.0).ToString("R", CultureInfo.InvariantCulture) : ""; // Adding 0 takes the sign from a zero.

    /// <summary>A number read back; not a number where nothing stands.</summary>
    /// <param name="text">The cell.</param>
    public static double Number(string? text) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : double.NaN;

    /// <summary>A text on one line; nothing for none.</summary>
    /// <param name="text">The text.</param>
    public static string OneLine(string? text) => text is null ? "" : string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
