using System.Text.RegularExpressions;
using LaunchSim.Charts.Measure;
using LaunchSim.Charts.Tests.SideViews;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;
using OxyPlot;

namespace LaunchSim.Charts.Tests.Measure;

public partial class MeasuringSheetTests
{
    private const double Millimetre = 96 / 25.4;

    public static TheoryData<LinkageKind, UnitSystem> Kinds => new()
    {
        { LinkageKind.FourLink, UnitSystem.Shop },
        { LinkageKind.FourLink, UnitSystem.Si },
        { LinkageKind.LadderBar, UnitSystem.Shop },
        { LinkageKind.LadderBar, UnitSystem.Si },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Pages_AnyKind_KeepTheMarginsOfBothPapers(LinkageKind linkage, UnitSystem system)
    {
        foreach (Paper paper in new[] { Paper.A4, Paper.Letter })
        {
            IReadOnlyList<Picture> pages = MeasuringSheet.Pages(linkage, system, paper);
            Assert.Equal(2, pages.Count);
            foreach (Picture page in pages)
            {
                Recorder recorder = Recorder.Of(page);
                recorder.IsReadable(page);
                double margin = 11.5 * Millimetre;
                IEnumerable<ScreenPoint> drawn = recorder.Points.Concat(recorder.Texts.SelectMany(text => new[] { text.Area.TopLeft, text.Area.BottomRight }));
                Assert.All(drawn, point => Assert.True(
                    point.X >= margin && point.X <= page.Width - margin && point.Y >= margin && point.Y <= page.Height - margin, FormattableString.Invariant($"{point}")));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Pages_LinesToWriteOn_AreLongEnoughAndFarEnoughApart(LinkageKind linkage, UnitSystem system)
    {
        foreach (Picture page in MeasuringSheet.Pages(linkage, system, Paper.A4))
        {
            // Level black lines below words: where somebody writes.
            (ScreenPoint From, ScreenPoint To)[] lines = [.. Recorder.Of(page).Lines
                .Where(line => line.Points.Count == 2 && line.Points[0].Y == line.Points[1].Y && line.Color == OxyColors.Black && line.Points[1].X - line.Points[0].X > 60)
                .Select(line => (line.Points[0], line.Points[1]))];
            Assert.True(lines.Length > 15);
            foreach ((ScreenPoint from, ScreenPoint to) in lines)
            {
                ScreenPoint[] above = [.. lines.Where(other => other.From.Y < from.Y && other.From.X < to.X && other.To.X > from.X).Select(other => other.From)];
                Assert.All(above, other => Assert.True(from.Y - other.Y >= 7 * Millimetre, FormattableString.Invariant($"{from} and {other}")));
            }

            // All but those for a hole's name take a number.
            Assert.True(lines.Count(line => line.To.X - line.From.X >= 25 * Millimetre) >= lines.Length - 16);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Pages_Keys_AreThoseOfTheScenarioFile(LinkageKind linkage, UnitSystem system)
    {
        Scenario[] scenarios =
        [
            Shipped.Read("scenarios/door-car.yaml", ("rear.damper.axle", "-3 9 in"), ("rear.damper.body", "-1 24 in"), ("front.tire.pressure", "{measured: 30 psi, set: 30 psi, vertical: 10 lb/in/psi, grip: 0 /psi}")),
            Shipped.Read("scenarios/ladder-bar.yaml"),
        ];
        string[] keys = [.. MeasuringSheet.Pages(linkage, system, Paper.A4).SelectMany(page => Recorder.Of(page).Texts)
            .SelectMany(text => Key().Matches(text.Text).Select(match => match.Value)).Distinct()];

        Assert.Contains("car.wheelbase", keys);
        Assert.Contains(linkage == LinkageKind.FourLink ? "rear.linkage.upper.body" : "rear.linkage.pivot", keys);
        Assert.All(keys, key => Assert.Contains(scenarios, scenario => scenario.Find(key) is not null));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Pages_Numbers_CountOnFromOneThroughBoth(LinkageKind linkage, UnitSystem system)
    {
        int[] numbers = [.. MeasuringSheet.Pages(linkage, system, Paper.Letter).SelectMany(page => Recorder.Of(page).Texts)
            .Where(text => text.Text.All(char.IsAsciiDigit)).Select(text => int.Parse(text.Text, System.Globalization.CultureInfo.InvariantCulture)).Distinct().Order()];

        Assert.Equal(Enumerable.Range(1, numbers.Length), numbers);
        Assert.True(numbers.Length >= 17);
    }

    [GeneratedRegex(@"\b(car|front|rear)(\.[a-z_]+)+")]
    private static partial Regex Key();
}
