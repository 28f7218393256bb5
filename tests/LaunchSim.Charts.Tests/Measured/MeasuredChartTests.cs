using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.Launch;
using LaunchSim.Charts.Measured;
using LaunchSim.Charts.Tests.Launch;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Units;
using OxyPlot;

namespace LaunchSim.Charts.Tests.Measured;

/// <summary>Charts of measured over predicted, for data that no picture was made for: dense and sparse, noisy, off, of several logs.</summary>
public class MeasuredChartTests
{
    private const double Duration = 1.75;

    public static TheoryData<int, int, double> Cases => new()
    {
        { 1, 1, 1000 }, { 2, 1, 200 }, { 3, 2, 50 }, { 4, 3, 200 }, { 5, 1, 8 }, { 6, 3, 1000 }, { 9, 2, 100 },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Sheet_AnyData_IsReadableAndNamesBoth(int quantities, int logs, double rate)
    {
        MeasuredPanel[] panels = [.. Enumerable.Range(0, quantities).Select(i => Panel(i, logs, rate))];
        var canvas = new TextRecorder();
        var page = new PageFrame(canvas, "Rise lag: -49 ms measured, -47 ms predicted", "Line: predicted. Marks: measured.", [], "Shop units");
        _ = MeasuredCharts.Draw(page, [.. panels.Take(MeasuredCharts.MostPanels)], Duration);

        canvas.IsReadable($"{quantities} quantities of {logs} logs");
        Assert.All(page.Placed, label => Assert.True(label.IsClear, $"'{label.Text}' covers something at {label.Area}"));
        Assert.Equal(Math.Min(quantities, MeasuredCharts.MostPanels), page.Placed.Count(label => label.Text == "predicted"));
        Assert.Equal(Math.Min(quantities, MeasuredCharts.MostPanels) * logs, page.Placed.Count(label => label.Text.StartsWith("measured", StringComparison.Ordinal)));
    }

    [Fact]
    public void Chart_NothingRecordedInTime_StillShowsThePrediction()
    {
        MeasuredPanel panel = Panel(0, 1, 100) with { Measured = [new MeasuredTrace("late", [3, 4], [0.1, 0.2])] };
        var canvas = new TextRecorder();
        MeasuredCharts.Chart(panel, new MeasuredPageText(panel.Title, "", "SI units"), Duration).Draw(canvas);

        canvas.IsReadable("nothing in time");
        Assert.Contains(canvas.Texts, text => text.Text == "predicted");
    }

    private static MeasuredPanel Panel(int number, int logs, double rate)
    {
        var random = new Random(number);
        double Course(double t) => 0.1 * (1 - Math.Exp(-3 * t)) * Math.Cos((2 + number) * t);
        double[] times = [.. Enumerable.Range(0, (int)(2.5 * rate)).Select(i => (i / rate) - 0.4)];
        return new MeasuredPanel(
            $"quantity-{number}", "Front ride height", "Front ride height: off by 0.2 in at most", new Readout(UnitSystem.Shop).Travel, 0.0127,
            [.. Enumerable.Range(0, 876).Select(i => (i * 0.002, Course(i * 0.002)))],
            [.. Enumerable.Range(0, logs).Select(log => new MeasuredTrace($"log-{log}.csv", times, [.. times.Select(t => Course(Math.Max(0, t - (0.02 * log))) + (0.004 * random.NextDouble()))]))]);
    }
}
