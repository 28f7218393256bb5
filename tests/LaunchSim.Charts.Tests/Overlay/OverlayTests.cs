using System.Text;
using System.Xml.Linq;
using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.Launch;
using LaunchSim.Charts.Overlay;
using LaunchSim.Charts.Tests.Launch;
using LaunchSim.Reports.Words;

namespace LaunchSim.Charts.Tests.Overlay;

/// <summary>Every overlay and its sheet, over pairs of shipped cars and of cars that no picture was made for.</summary>
public class OverlayTests
{
    private const int RandomPairs = 40;

    // As long as what a comparison has to say.
    private static readonly string[] Sentences =
    [
        "For both ends coming up in step, B is worse than A, 6.4 points off what is wanted against 5.4: better in the rise lag (-13 ms against -47 ms); worse in the time of slip past the peak (154 ms against 0 ms).",
        "The rear tyres of B are hit harder, 2641 lb against 2508 lb, because the links give 169 lb more, although the dampers take 108 lb where they gave 31 lb; at the low point they carry 433 lb less, because the wheelie bar and the axle's inertia take 201 lb more.",
        "The two part first at 0.055 s, with the rear opening, 0.32 in open against 0.26 in open; in the first 0.15 s the rear dampers, opening, hold against it with 39 lb more on the mean and take 10 J more.",
    ];

    public static TheoryData<string, string> Pairs
    {
        get
        {
            string[] names = [.. Launches.Names];
            var pairs = new TheoryData<string, string>();
            for (int i = 0; i < names.Length; i++)
            {
                pairs.Add(names[i], names[(i + 1) % names.Length]);
            }

            return pairs;
        }
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Draw_ShippedPair_HasBothNamesAndNoLabelOnAnother(string one, string other)
    {
        OverlayView view = ViewOf(Launches.Of(one), Launches.Of(other));
        foreach (Drawn drawn in All(view))
        {
            drawn.IsReadable($"{one} and {other}, {drawn.Name}");
            Assert.Contains(drawn.Title, drawn.Text, StringComparison.Ordinal);
            Assert.Contains(LimitWords.Caution, drawn.Text, StringComparison.Ordinal);
            foreach (Overlaid launch in view.Launches)
            {
                Assert.Contains(launch.View.Run.Scenario.ContentHash[..8], drawn.Text, StringComparison.Ordinal);
                Assert.True(drawn.Name == "load-paths" || drawn.Page.Placed.Any(label => label.Text == launch.Name || label.Text.StartsWith(launch.Name + " ", StringComparison.Ordinal)), $"{drawn.Name}: no curve is named {launch.Name}");
            }
        }
    }

    [Fact]
    public void Draw_RandomPairs_HaveNoLabelOnAnother()
    {
        LaunchView[] views = [.. Launches.Random(RandomPairs + 1).Select(one => one.View)];
        int drawnPictures = 0;
        for (int i = 0; i < RandomPairs; i++)
        {
            foreach (Drawn drawn in All(ViewOf(views[i], views[i + 1])))
            {
                drawn.IsReadable($"pair {i}, {drawn.Name}");
                drawnPictures++;
            }
        }

        Assert.Equal(RandomPairs * (OverlayCharts.All.Count + 1), drawnPictures);
    }

    [Fact]
    public void Draw_AsManyAsThereAreLines_HasNoLabelOnAnother()
    {
        string[] names = ["door-car", "door-car-hole-lower", "door-car-dampers-soft", "door-car-dampers-stiff", "ladder-bar"];
        foreach (Drawn drawn in All(ViewOf([.. names.Take(OverlayCharts.Most).Select(name => Launches.Of(name))])))
        {
            drawn.IsReadable(drawn.Name);
        }
    }

    [Fact]
    public void Draw_OneThatStopped_SaysWhyAndMarksIt()
    {
        foreach (Drawn drawn in All(ViewOf(Launches.Of("test-clutch"), Launches.Of("test-stalls"))))
        {
            Assert.Contains("B: The run stopped at", drawn.Text, StringComparison.Ordinal);
            Assert.True(drawn.Name is "percent" or "load-paths" || drawn.Text.Contains("B stopped\n", StringComparison.Ordinal), drawn.Name);
            drawn.IsReadable(drawn.Name);
        }
    }

    [Fact]
    public void Draw_SameSideView_IsDrawnOnceAndSaid()
    {
        Drawn sheet = All(ViewOf(Launches.Of("door-car"), Launches.Of("door-car-dampers-soft"))).Single(drawn => drawn.Name == "sheet");

        Assert.Contains("B looks like A", sheet.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Pens_OfLaunches_DifferInTheirDashesAndNoneIsTheNeutralLine()
    {
        string[] dashes = [.. OverlayPens.All.Select(pen => string.Join(' ', pen.Dash ?? []))];

        Assert.Equal(dashes.Length, dashes.Distinct().Count());
        Assert.DoesNotContain(string.Join(' ', Theme.LongDash), dashes);
        Assert.Equal(4, OverlayPens.Paths.Select(pen => string.Join(' ', pen.Dash ?? [])).Distinct().Count());
    }

    [Fact]
    public void Svg_Sheet_Parses()
    {
        LaunchView one = Launches.Of("door-car"), other = Launches.Of("ladder-bar");
        using var stream = new MemoryStream();
        PictureFormat.WriteSvg(OverlayCharts.Sheet([new("A", one.Run), new("B", other.Run)], Sentences, one.Readout, "LaunchSim 0.0.0"), stream);
        XDocument document = XDocument.Parse(Encoding.UTF8.GetString(stream.ToArray()));

        Assert.DoesNotContain("NaN", document.ToString(), StringComparison.Ordinal);
        Assert.Contains("stroke-dasharray", document.ToString(), StringComparison.Ordinal);
    }

    private static OverlayView ViewOf(params LaunchView[] launches) =>
        new([.. launches.Select((launch, i) => new OverlayLaunch(((char)('A' + i)).ToString(), launch.Run))], launches[0].Readout, "LaunchSim 0.0.0");

    private static List<Drawn> All(OverlayView view)
    {
        var all = new List<Drawn>();
        foreach (OverlayChart chart in OverlayCharts.All)
        {
            var canvas = new TextRecorder();
            var page = new OverlayPage(canvas, view, chart.Title(view), chart.Explanation(view));
            chart.Draw(page);
            all.Add(new Drawn(chart.Name, chart.Title(view), canvas, page));
        }

        var sheet = new TextRecorder();
        all.Add(new Drawn("sheet", OverlaySheet.Title(view), sheet, OverlaySheet.Draw(sheet, view, Sentences)));
        return all;
    }

    private sealed record Drawn(string Name, string Title, TextRecorder Canvas, OverlayPage Page)
    {
        public string Text { get; } = string.Concat(Canvas.Texts.Select(text => text.Text.Replace('\n', ' ') + "\n"));

        public void IsReadable(string of)
        {
            Canvas.IsReadable(of);
            foreach (PlacedLabel label in Page.Placed)
            {
                Assert.True(label.IsClear, $"{of}: '{label.Text}' covers something at {label.Area}");
            }
        }
    }
}
