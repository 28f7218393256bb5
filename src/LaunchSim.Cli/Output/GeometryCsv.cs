using System.Globalization;
using System.Text;
using LaunchSim.Geometry;
using LaunchSim.Reports;

namespace LaunchSim.Cli.Output;

/// <summary>The tables of the side view in one file, SI units: rows of holes, then rows through the travel.</summary>
internal static class GeometryCsv
{
    /// <summary>Writes both tables.</summary>
    /// <param name="report">What the side view tells.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(GeometryReport report, Stream stream)
    {
        string[] bars = [.. report.View.Line.Bars.Select(bar => bar.Name.Replace(' ', '_'))];
        var text = new StringBuilder(OutputKind.Geometry.Begins);
        _ = text.AppendJoin(',', ["body_up_m", "anti_squat_percent", "instant_centre_ahead_m", "instant_centre_up_m", "neutral_line_up_m",
            .. bars.SelectMany(bar => new[] { $"{bar}_climb_rad", $"{bar}_length_m", $"{bar}_change_m" }), "pinion_change_rad"]).Append('\n');
        foreach (HoleRow row in report.Holes)
        {
            string[] start = ["holes", Quoted(string.Join(' ', row.Holes)), row.Present ? "1" : "0", "0"];
            _ = text.AppendJoin(',', [.. start, .. Line(row.Line, bars.Length, i => row.Bars[i].Change), "0"]).Append('\n');
        }

        foreach (TravelRow row in report.Travel ?? [])
        {
            string[] start = ["travel", "", "1", Number(row.BodyUp)];
            _ = text.AppendJoin(',', [.. start, .. Line(row.Line, bars.Length, _ => 0), Number(row.PinionChange)]).Append('\n');
        }

        stream.Write(Encoding.UTF8.GetBytes(text.ToString()));
    }

    private static IEnumerable<string> Line(StaticLine? line, int bars, Func<int, double> change) => line is null
        ? Enumerable.Repeat("", 4 + (3 * bars))
        : [
            Number(line.Percent), Number(line.InstantCentreAhead), Number(line.InstantCentreUp), Number(line.NeutralLineUp),
            .. line.Bars.SelectMany((bar, i) => new[] { Number(bar.Climb), Number(bar.Length), Number(change(i)) }),
        ];

    private static string Number(double value) => double.IsFinite(value) ? (value + 0.0).ToString(CultureInfo.InvariantCulture) : "";

    private static string Quoted(string text) =>
        text.AsSpan().IndexOfAny(",\"\n\r") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
