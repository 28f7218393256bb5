using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Geometry;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;

namespace LaunchSim.Cli.Output;

/// <summary>The side view in words and tables.</summary>
internal static class GeometryText
{
    private const string Heard = "(common practice, no source)";
    private static readonly bool[] NumberThenWords = [true, false];

    /// <summary>The whole text.</summary>
    /// <param name="report">What the side view tells.</param>
    /// <param name="readout">The units.</param>
    /// <param name="screen">Where it is read.</param>
    public static string Of(GeometryReport report, Readout readout, Screen screen)
    {
        Page page = new Page(screen).Heading(StaticLineWords.Of(report.View.Line, report.View.Wheelbase, readout)).Blank()
            .Line(report.IsStanding
                ? "The car as it stands, with its ride height, ballast and pressures."
                : "The car as measured; ride height and ballast count once the file holds all that a run needs.");
        Bars(page, report, readout);
        Holes(page, report, readout);
        Worth(page, report, readout);
        Travel(page, report, readout);
        return page.Blank().Line("Percent is a figure of the standing car. What the car does with it, a run tells.").ToString();
    }

    private static void Bars(Page page, GeometryReport report, Readout readout)
    {
        StaticLine line = report.View.Line;
        var table = new TextTable(false, true, false);
        table.Add("percent", StaticLineWords.Percent(line.Percent), $"120 to 200 % is heard for a car that separates {Heard}");
        (string span, string words) = Doubt(report);
        table.Add("percent with its doubt", span, words);
        if (!StaticLineWords.IsFar(line, report.View.Wheelbase))
        {
            table.Add("neutral line at the instant centre", readout.Place.Text(line.NeutralLineUp), "up; an instant centre above it is more than 100 %");
        }

        foreach (BarAngle bar in line.Bars)
        {
            string range = bar.Name switch
            {
                "lower bar" => $"climbing to the front; 3 to 5° climbing is heard {Heard}",
                "upper bar" => $"climbing to the front; -10 to -15°, falling to the front, is heard {Heard}",
                _ => "climbing to the front",
            };
            table.Add(bar.Name, Readout.Angle.WithSign(bar.Climb), range);
        }

        if (report.Scenario.Geometry.PinionAngle is { } pinion)
        {
            table.Add("pinion", Readout.Angle.WithSign(pinion), "nose up, as entered");
        }

        _ = page.Blank().Table(table);
    }

    private static (string Span, string Words) Doubt(GeometryReport report) => GeometryDoubt.Of(report.Scenario) is { } doubt
        ? ($"{Readout.Percent.Number(doubt.LowPercent)} to {Readout.Percent.Text(doubt.HighPercent)}", $"nineteen times in twenty, by the doubts entered{(doubt.MovesInstantCentre ? ", those of the points with them" : "")}")
        : ("unknown", "no number of the side view carries a doubt in this file: write it, as in 21 ±1 in");

    private static void Holes(Page page, GeometryReport report, Readout readout)
    {
        if (report.Brackets.Count == 0)
        {
            _ = page.Blank().Line("No bracket of the linkage has holes: write {holes: {NAME: point, …}, use: NAME} where a bar's end is, to compare them.");
            return;
        }

        int left = report.Choices - report.Holes.Count;
        string leftOut = left > 0 ? string.Create(CultureInfo.InvariantCulture, $"; {left} of {report.Choices} do not fit and are left out") : "";
        _ = page.Blank().Heading($"Holes, rising in percent; * is the present choice{leftOut}");
        if (report.Holes.Count == 0)
        {
            return;
        }

        IReadOnlyList<BarAngle> bars = report.View.Line.Bars;
        var table = new TextTable([false, .. report.Brackets.Select(_ => false), true, true, true, true, .. bars.SelectMany(_ => NumberThenWords)]);
        _ = table.Named(["", .. report.Brackets.Select(path => path["rear.linkage.".Length..]), "percent", "IC ahead", "IC up", "neutral line", .. bars.SelectMany(bar => new[] { bar.Name, bar.Name.Replace(" bar", "", StringComparison.Ordinal) + " length" })]);
        foreach (HoleRow row in report.Holes)
        {
            string[] start = [row.Present ? "*" : "", .. row.Holes];
            table.Add(row.Line is { } line
                ? [.. start, .. Line(line, report, readout), .. line.Bars.SelectMany((bar, i) => new[] { Readout.Angle.WithSign(bar.Climb), BarLengthWords.Of(row.Bars[i], readout) })]
                : [.. start, "cannot be put together, or the car cannot stand with it"]);
        }

        _ = page.Table(table, 1 + report.Brackets.Count);
    }

    private static void Worth(Page page, GeometryReport report, Readout readout)
    {
        string centre = readout.IsShop ? "1 in" : "10 mm", end = readout.IsShop ? "1/16 in" : "1 mm";
        Scale percent = Readout.Percent.With(1);
        var table = new TextTable(false, true, false);
        table.Add($"centre of gravity {centre} higher", Change(percent, report.CentreOfGravity.Percent));
        foreach (EndSensitivity point in report.Ends)
        {
            table.Add($"{Name(point.Point)} {end} up", Change(percent, point.PercentUp), $"{end} ahead {Change(percent, point.PercentAhead)}");
        }

        _ = page.Blank().Heading("What it is worth in percent, the bar re-set so that the axle housing keeps its angle").Table(table);
    }

    private static void Travel(Page page, GeometryReport report, Readout readout)
    {
        if (report.Travel is not { } rows)
        {
            _ = page.Blank().Line("The table through the travel needs rear.tire.loaded_radius: the height of the rear wheel centre above the floor.");
            return;
        }

        IReadOnlyList<BarAngle> bars = report.View.Line.Bars;
        var table = new TextTable([true, true, true, true, true, .. bars.Select(_ => true), true]);
        _ = table.Named(["body up", "percent", "IC ahead", "IC up", "neutral line", .. bars.Select(bar => bar.Name), "pinion change"]);
        foreach (TravelRow row in rows)
        {
            table.Add([readout.Travel.WithSign(row.BodyUp), .. Line(row.Line, report, readout), .. row.Line.Bars.Select(bar => Readout.Angle.WithSign(bar.Climb)), Readout.Angle.WithSign(row.PinionChange)]);
        }

        _ = page.Blank().Heading("Through the travel: the body moved straight up and down, the rear wheel where it stands").Table(table);
    }

    private static string[] Line(StaticLine line, GeometryReport report, Readout readout)
    {
        string percent = double.IsFinite(line.Percent) ? Readout.Percent.Text(line.Percent) : "none";
        return StaticLineWords.IsFar(line, report.View.Wheelbase)
            ? [percent, "far away", "", ""]
            : [percent, readout.Place.Text(line.InstantCentreAhead), readout.Place.Text(line.InstantCentreUp), readout.Place.Text(line.NeutralLineUp)];
    }

    private static string Change(Scale percent, double value) => double.IsFinite(value) ? percent.WithSign(value) : "none";

    private static string Name(LinkagePoint point) => point switch
    {
        LinkagePoint.LowerAxle => "lower bar's end on the axle",
        LinkagePoint.LowerBody => "lower bar's end on the body",
        LinkagePoint.UpperAxle => "upper bar's end on the axle",
        LinkagePoint.UpperBody => "upper bar's end on the body",
        _ => "pivot",
    };
}
