using System.Globalization;
using System.Text;
using LaunchSim.Dynamics;
using LaunchSim.Passes.Comparing;
using LaunchSim.Passes.Logs;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Web.Documents;
using LaunchSim.Web.Pages;
using LaunchSim.Web.Tests.Front;

namespace LaunchSim.Web.Tests.Documents;

/// <summary>What was measured of a pass, as the page has it.</summary>
public sealed class MeasuredTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("launchsim").FullName;

    [Fact]
    public void Charts_OfAPass_DrawPointsOverThePredictedLine()
    {
        LaunchOutcome run = Shipped.Run("door-car");
        PassComparison pass = Pass(run);
        using var script = new FrontScript("charts/all.js");
        script.Add("decoding", "document.js");
        script.Set("text", LaunchDocument.Text([new DocumentedLaunch(run, "door car", null, pass)], new Readout(run.Scenario.UnitSystem), "LaunchSim"));
        script.Execute("const source = decoding.decode(JSON.parse(text)), group = tested.chartsOf(source)[0], chart = group.charts[0];");

        Assert.Equal("measured", script.Text("group.name"));
        Assert.Equal("measured-rear_ride_height,measured-wheel_speed", script.Text("group.charts.map(({ name }) => name).join()"));
        Assert.Equal("predicted solid,measured points", script.Text("chart.curves.map(({ label, style }) => `${label} ${style}`).join()"));
        Assert.Equal(Readout.Rotation.Unit, script.Text("group.charts[1].unit"));

        // The line is the prediction, to single digits; the points are the log's values from the release on.
        double inch = 0.0254;
        run.Solution.At(0.3, out Observation seen);
        Assert.Equal(seen.RearRise / inch, script.Number("chart.curves[0].values[chart.curves[0].times.indexOf(0.3)]"), 1e-4);
        Assert.Equal(pass.Channels[0].Times.Count(time => time >= 0 && time <= run.Solution.Duration), script.Number("chart.curves[1].times.length"));
        Assert.Contains("t = 0 by the onset", script.Text("chart.explanation"), StringComparison.Ordinal);
    }

    [Fact]
    public void Page_WithALog_StaysOneFileUnderItsSize()
    {
        LaunchOutcome run = Shipped.Run("door-car");
        string text = LaunchPage.Of([new DocumentedLaunch(run, "door car", null, Pass(run))], new Readout(run.Scenario.UnitSystem), "LaunchSim").Text;

        Assert.InRange(text.Length, 100_000, 1_500_000);
    }

    public void Dispose() => Directory.Delete(_folder, true);

    private PassComparison Pass(LaunchOutcome run)
    {
        var log = new StringBuilder("t,rear,wheel\n");
        for (int i = 0; i < 300; i++)
        {
            double time = i * 0.01, at = time - 0.734;
            run.Solution.At(Math.Clamp(at, 0, run.Solution.Duration), out Observation seen);
            _ = log.Append(CultureInfo.InvariantCulture, $"{time:0.00},{(at < 0 ? 0 : 1e3 * seen.RearRise):0.00},{(at < 0 ? 0 : seen.WheelSpeed):0.00}\n");
        }

        string file = Path.Combine(_folder, "log.csv"), mapping = Path.Combine(_folder, "mapping.yaml");
        File.WriteAllText(file, log.ToString());
        File.WriteAllText(mapping, "time: {column: t, unit: s}\ncolumns:\n  - {column: rear, quantity: rear_ride_height, unit: mm}\n  - {column: wheel, quantity: wheel_speed, unit: rad/s}\n");
        LogResult read = LogReader.Read(file, mapping, run);
        Assert.Empty(read.Errors);
        return PassComparison.Of(run, [new ComparedLog(file, read.Log!)]);
    }
}
