using System.Text;
using System.Xml.Linq;
using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.Launch;
using LaunchSim.Launch;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using OxyPlot;
using SkiaSharp;

namespace LaunchSim.Charts.Tests.Launch;

/// <summary>Every chart and the sheet, on every shipped car and on cars that no picture was made for.</summary>
public class LaunchChartTests
{
    private const int RandomCars = 100;

    public static TheoryData<string> Names => [.. Launches.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Draw_AnyScenario_HasItsTitleItsUnitsAndNoLabelOnAnother(string name)
    {
        LaunchView view = Launches.Of(name);
        foreach (Drawn drawn in All(view))
        {
            drawn.IsReadable($"{name}, {drawn.Name}");
            string text = drawn.Text;
            Assert.Contains(drawn.Title, text, StringComparison.Ordinal);
            Assert.Contains(view.Run.Scenario.ContentHash[..8], text, StringComparison.Ordinal);
            Assert.Contains(LimitWords.Caution, text, StringComparison.Ordinal);
            Assert.Matches(Unit(drawn.Name, view.Readout), text);
        }
    }

    [Fact]
    public void Draw_RandomCars_HaveNoLabelOnAnother()
    {
        int drawnCharts = 0;
        foreach ((int seed, LaunchView view) in Launches.Random(RandomCars))
        {
            foreach (Drawn drawn in All(view))
            {
                drawn.IsReadable($"car {seed}, {drawn.Name}");
                drawnCharts++;
            }
        }

        Assert.InRange(drawnCharts, 9 * RandomCars, 10 * RandomCars);
    }

    [Fact]
    public void IsReadable_TextOnAnotherOrOffThePage_IsFound()
    {
        var one = new TextRecorder();
        one.Text("first", new ScreenPoint(100, 100), Theme.Body, Theme.Ink);
        one.IsReadable("alone");
        one.Text("second", new ScreenPoint(110, 105), Theme.Body, Theme.Ink);
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => one.IsReadable("on another"));

        var off = new TextRecorder();
        off.Text("far", new ScreenPoint(ChartPage.Width - 5, 100), Theme.Body, Theme.Ink);
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => off.IsReadable("off the page"));
    }

    [Fact]
    public void Charts_OfACar_AreThoseThatItsPartsHave()
    {
        Assert.DoesNotContain("driveline", LaunchCharts.Names(Launches.Of("door-car").Car));
        Assert.Contains("driveline", LaunchCharts.Names(Launches.Of("converter-car").Car));
        Assert.Equal(LaunchCharts.All.Count, LaunchCharts.All.Select(chart => chart.Name).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Svg_AnyScenario_Parses(string name)
    {
        LaunchView view = Launches.Of(name, ("run.duration", "0.1 s"));
        foreach (Picture picture in Pictures(view))
        {
            using var stream = new MemoryStream();
            PictureFormat.WriteSvg(picture, stream);
            XDocument document = XDocument.Parse(Encoding.UTF8.GetString(stream.ToArray()));

            Assert.Equal(picture.Title, document.Root!.Elements().First(element => element.Name.LocalName == "title").Value);
            Assert.Contains(document.Descendants(), element => element.Name.LocalName is "polyline" or "line");
            Assert.DoesNotContain("NaN", document.ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Png_Sheet_HasInkInEveryPart()
    {
        using var stream = new MemoryStream();
        LaunchView view = Launches.Of("door-car");
        PictureFormat.WritePng(LaunchCharts.Sheet(view.Run, view.Readout, "LaunchSim 0.0.0"), stream, 1);
        using SKBitmap bitmap = SKBitmap.Decode(stream.ToArray());

        Assert.Equal((1040, 585), (bitmap.Width, bitmap.Height));

        // Title, side view, sentences, both plots, foot.
        foreach ((int left, int top, int width, int height) in new[] { (22, 16, 900, 30), (22, 180, 420, 110), (22, 380, 420, 150), (510, 110, 480, 150), (510, 370, 480, 120), (22, 535, 800, 35) })
        {
            int dark = 0;
            for (int x = left; x < left + width; x++)
            {
                for (int y = top; y < top + height; y++)
                {
                    dark += bitmap.GetPixel(x, y).Red < 128 ? 1 : 0;
                }
            }

            Assert.True(dark > 200, $"{dark} dark pixels at {left}, {top}");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Labels_AnyScenario_SayTheFigures(string name)
    {
        LaunchView view = Launches.Of(name);
        Scale force = view.Readout.Force;
        List<Drawn> all = All(view);
        string sheet = all.Single(drawn => drawn.Name == "sheet").Text, bars = all.Single(drawn => drawn.Name == "bar-forces").Text;

        Assert.Equal(view["rise_lag_s"] is { } lag && Math.Abs(lag) >= 0.005, sheet.Contains($"rise lag {Math.Round(1000 * Math.Abs(view["rise_lag_s"] ?? 0))} ms", StringComparison.Ordinal));
        Assert.Contains($"hit {force.Text(view["hit_n"]!.Value)}\n", sheet, StringComparison.Ordinal);
        Assert.Contains($"low point {force.Text(view["lowest_rear_load_after_hit_n"]!.Value)}\n", sheet, StringComparison.Ordinal);
        Assert.Contains($"standing {force.Text(view["rear_tire_load_static_n"]!.Value)}\n", sheet, StringComparison.Ordinal);
        if (view["lower_link_push_n"] is { } push)
        {
            Assert.Contains(force.Text(Math.Max(push, view["lower_link_pull_n"]!.Value)), bars, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("door-car", "The rear comes up 47 ms after the front")]
    [InlineData("door-car-tops-out", "The front comes up 59 ms after the rear")]
    [InlineData("sixty-percent", "The front comes up, the rear does not rise over the ground")]
    public void Title_Rises_SaysWhoIsFirst(string name, string words) =>
        Assert.StartsWith(words, new RiseChart().Title(Launches.Of(name)), StringComparison.Ordinal);

    [Fact]
    public void Draw_RunThatStopped_SaysAndMarksIt()
    {
        LaunchView view = Launches.Of("test-stalls");
        foreach (Drawn drawn in All(view))
        {
            Assert.Contains("The run stopped at", drawn.Text, StringComparison.Ordinal);
            Assert.True(drawn.Name == "damper-tables" || drawn.Text.Contains("stopped\n", StringComparison.Ordinal), drawn.Name);
        }
    }

    [Theory]
    [InlineData("run.duration", "0.001 s")]
    [InlineData("run.duration", "0.05 s")]
    [InlineData("driveline.torque", "0 0 0 0 0 lb-ft")]
    public void Draw_RunWithLittleInIt_IsDrawn(string path, string value)
    {
        foreach (Drawn drawn in All(Launches.Of("door-car", (path, value))))
        {
            drawn.IsReadable(drawn.Name);
        }
    }

    [Fact]
    public void Draw_RunOfNoLength_IsDrawn()
    {
        LaunchView whole = Launches.Of("clutch-car");
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        LaunchSolution none = LaunchSimulation.Solve(whole.Car, whole.Run.Scenario.Run, cancelled.Token);
        Assert.Equal(0, none.Steps);
        foreach (Drawn drawn in All(new LaunchView(LaunchOutcome.Read(whole.Run.Scenario, none), whole.Readout, "LaunchSim 0.0.0")))
        {
            drawn.IsReadable(drawn.Name);
        }
    }

    private static List<Drawn> All(LaunchView view)
    {
        var all = new List<Drawn>();
        foreach (LaunchChart chart in LaunchCharts.All.Where(chart => chart.IsFor(view.Car)))
        {
            var canvas = new TextRecorder();
            var page = new ChartPage(canvas, view, chart.Title(view), chart.Explanation(view));
            chart.Draw(page);
            all.Add(new Drawn(chart.Name, chart.Title(view), canvas, page));
        }

        var sheet = new TextRecorder();
        all.Add(new Drawn("sheet", LaunchSheet.Title(view), sheet, LaunchSheet.Draw(sheet, view)));
        return all;
    }

    private static IEnumerable<Picture> Pictures(LaunchView view) =>
        LaunchCharts.Charts(view.Run, view.Readout, view.Program).Select(chart => chart.Picture).Append(LaunchCharts.Sheet(view.Run, view.Readout, view.Program));

    private static string Unit(string name, Readout readout) => name switch
    {
        "rises-and-gaps" => $", {readout.Travel.Unit}\n",
        "damper-speeds" or "damper-tables" => readout.ShaftSpeed.Unit,
        "instant-centre" => $", {readout.Place.Unit}\n",
        "driveline" => "rpm",
        _ => $", {readout.Force.Unit}[\n:]",
    };

    private sealed record Drawn(string Name, string Title, TextRecorder Canvas, ChartPage Page)
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
