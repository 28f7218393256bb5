using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Scales;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Scales;

namespace LaunchSim.Cli.Output;

/// <summary>What scales and tape told, in words and tables.</summary>
internal static class ScalesText
{
    // Readings that disagree so much come up in one honest sheet of a hundred.
    private const double Suspicious = 0.01;

    // Readings off by more than their doubt are looked at first.
    private const double Notable = 1;

    private static readonly (ScaleCause Cause, string Words)[] Causes =
    [
        (ScaleCause.Scales, "the scales"), (ScaleCause.Height, "how high it was lifted"), (ScaleCause.Radius, "the tyres: height of the wheel centres on the level"), (ScaleCause.Wheelbase, "the tape along the wheelbase"),
    ];

    /// <summary>The whole text.</summary>
    /// <param name="result">What was found.</param>
    /// <param name="readout">The units.</param>
    /// <param name="screen">Where it is read.</param>
    public static string Of(ScaleResult result, Readout readout, Screen screen)
    {
        Scale place = readout.Place;
        ScaleSheet sheet = result.Sheet;
        Page page = new Page(screen)
            .Heading($"{sheet.Name}: centre of gravity {DoubtedText.Of(result.Up.Value, result.Up.HalfWidth, place)} above the floor, {DoubtedText.Of(result.Ahead.Value, result.Ahead.HalfWidth, place)} ahead of the rear axle")
            .Blank();
        var table = new TextTable(false, false, false);
        table.Add("height above the floor", DoubtedText.Of(result.Up.Value, result.Up.HalfWidth, place), "");
        table.Add("ahead of the rear axle", DoubtedText.Of(result.Ahead.Value, result.Ahead.HalfWidth, place), string.Create(CultureInfo.InvariantCulture, $"{100 * sheet.Front.Total / sheet.Weight:F1} % of the weight on the front tyres"));
        if (result.LeftShare is { } share)
        {
            string left = string.Create(CultureInfo.InvariantCulture, $"{100 * share:F1} % of the weight on the left tyres");
            table.Add(result.Left is { } off ? "left of the middle" : "left and right", result.Left is { } side ? DoubtedText.Of(side.Value, side.HalfWidth, place) : "track not given", left);
        }

        table.Add("weight", DoubtedText.Of(result.Weight.Value, result.Weight.HalfWidth, readout.Force), "");
        _ = page.Table(table).Line("± holds nineteen times in twenty.").Blank().Heading("Where the height's doubt comes from");
        var causes = new TextTable(true, false);
        foreach ((ScaleCause cause, string words) in Causes.OrderByDescending(one => result.HeightShares[one.Cause]))
        {
            causes.Add(string.Create(CultureInfo.InvariantCulture, $"{100 * result.HeightShares[cause]:F0} %"), words);
        }

        _ = page.Table(causes).Blank().Heading("Each reading against the car that fits all of them best");
        Readings(page, result, readout);
        Warnings(page, result, readout);
        return page.Blank()
            .Line("It holds for a car whose suspension is blocked, whose tyres are hard, whose wheels roll freely, and whose driver (or the same weight in the seat) and fuel stayed as they were.")
            .Line("Lifting: on a level floor, stands and blocks rated for the load, the car secured so that it can neither roll nor slip, nobody in or under it, with help that has done it before. What the rules of track and shop say goes first.")
            .ToString();
    }

    private static void Readings(Page page, ScaleResult result, Readout readout)
    {
        var table = new TextTable(false, false, true, true, true).Named("reading", "read", "fitted", "off by", "share");
        foreach (ScaleRow row in result.Rows)
        {
            Scale scale = row.Cause == ScaleCause.Scales ? readout.Force.With(1) : readout.IsShop ? readout.Travel.With(3) : readout.Travel;
            double off = row.Read - row.Fitted;
            table.Add(
                row.Words,
                DoubtedText.Of(row.Read, row.HalfWidth, scale) + (row.IsEntered ? "" : " usual"),
                scale.Text(row.Fitted),
                scale.WithSign(off),
                string.Create(CultureInfo.InvariantCulture, $"{100 * row.HeightShare:F0} %"));
        }

        _ = page.Table(table);
        if (result.Rows.Any(row => !row.IsEntered))
        {
            _ = page.Line("usual: written without ±, so it has the usual doubt of such a reading (common practice, no source).");
        }

        string slopes = string.Join(", ", result.Slopes.Select(slope => Readout.Angle.Text(Math.Abs(slope))));
        _ = page.Line($"Slope of the car when lifted: {slopes}. Share: of the height's variance.");
    }

    private static void Warnings(Page page, ScaleResult result, Readout readout)
    {
        if (result.Agreement is null)
        {
            _ = page.Line("One lift: nothing checks it. A second one, to another height or of the other axle, would show a misread scale.");
        }
        else if (result.Agreement < Suspicious)
        {
            ScaleRow worst = result.Rows.MaxBy(row => Math.Abs(row.Read - row.Fitted) / row.HalfWidth)!;
            _ = page.Blank().Line(string.Create(
                CultureInfo.InvariantCulture,
                $"The readings do not agree: doubts as entered would leave this much in {100 * result.Agreement:G2} % of sheets. Look at {worst.Words} first ({worst.Place}); then at a suspension that moved, tyres that gave, wheels that did not roll freely, fuel that ran. Until that is found the ± above is too small."));
        }
        else if (result.Rows.Any(row => Math.Abs(row.Read - row.Fitted) > Notable * row.HalfWidth))
        {
            ScaleRow worst = result.Rows.MaxBy(row => Math.Abs(row.Read - row.Fitted) / row.HalfWidth)!;
            _ = page.Line($"The readings agree as a whole; {worst.Words} is off by more than its doubt.");
        }
        else
        {
            _ = page.Line("The readings agree within their doubts.");
        }

        if (result.Up.Value <= Math.Min(result.Sheet.FrontRadius.Value, result.Sheet.RearRadius.Value))
        {
            _ = page.Blank().Line("The centre of gravity comes out no higher than the wheel centres, which hardly any car has: look at which axle was raised and which was read.");
        }

        if (result.Up.HalfWidth > ScaleFit.WantedHalfWidth)
        {
            Scale place = readout.Place;
            string heading = $"The lift is too small to tell the height to {place.Text(ScaleFit.WantedHalfWidth)}";
            string axle = result.Better is { RaisesFront: true } ? "front" : "rear";
            ScaleCause most = result.HeightShares.MaxBy(pair => pair.Value).Key;
            string cause = Causes.First(one => one.Cause == most).Words;
            _ = page.Blank().Line(result.Better switch
            {
                { Suffices: true } better => $"{heading}: with the {axle} wheel centres at {place.Text(better.Height)} ({Readout.Angle.Text(better.Slope)}) the same scales and tape would tell it to ±{place.Text(better.HalfWidth)}.",
                { } better => $"{heading}, and even at {Readout.Angle.Text(better.Slope)} ({axle} wheel centres at {place.Text(better.Height)}) it would be ±{place.Text(better.HalfWidth)}: get {cause} better, or average several lifts.",
                null => $"{heading}, and steeper than this it should not stand: get {cause} better, or average several lifts.",
            });
        }
    }
}
