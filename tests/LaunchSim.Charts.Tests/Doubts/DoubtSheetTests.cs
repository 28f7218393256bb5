using LaunchSim.Charts.Doubts;
using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.Launch;
using LaunchSim.Charts.Tests.Launch;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Charts.Tests.Doubts;

public class DoubtSheetTests
{
    [Theory]
    [InlineData(0.02, 1.8, UnitSystem.Shop)]
    [InlineData(0.3, 1, UnitSystem.Si)]
    [InlineData(0, 0.4, UnitSystem.Si)]
    [InlineData(3, 4, UnitSystem.Shop)]
    public void Sheet_BandsOfAnyWidth_AreReadable(double spread, double duration, UnitSystem units)
    {
        DoubtSheetData data = Data(spread, duration, new Readout(units), 20, 8);
        var canvas = new TextRecorder();

        PageFrame page = DoubtSheet.Draw(canvas, data);

        canvas.IsReadable($"spread {spread}");
        Assert.All(page.Placed, label => Assert.True(label.IsClear, $"'{label.Text}' covers something at {label.Area}"));
        Assert.Equal(4, canvas.Texts.Count(text => text.Text == "own car"));
        Assert.Contains(canvas.Texts, text => text.Text == "What to measure better first");
        Assert.Contains(canvas.Texts, text => text.Text == "rear.linkage.upper.body.up 14.6 ±0.06 in");
    }

    [Fact]
    public void Sheet_NothingThatVaries_SaysSo()
    {
        DoubtSheetData data = Data(0, 1, new Readout(UnitSystem.Si), 3, 0) with { NumbersNote = "Nothing of the answer varies among the cars." };
        var canvas = new TextRecorder();

        _ = DoubtSheet.Draw(canvas, data);

        canvas.IsReadable("nothing varies");
        Assert.Contains(canvas.Texts, text => text.Text.StartsWith("Nothing of the answer", StringComparison.Ordinal));
    }

    private static DoubtSheetData Data(double spread, double duration, Readout readout, int statements, int numbers) => new()
    {
        Title = "In 91 % (89 to 92 %) of the plausible cars the rear comes up first, the front is late, as in the file's own car; measure rear.tire.grip better first.",
        Explanation = "Shaded: what nine in ten of 2,000 plausible cars stay within. Line: the file's own car. Bold: said of it.",
        Imprint = "A car · units · seed 1",
        Rises = [Band("Rear rise", readout.Travel, 0.05, spread, duration, false), Band("Front rise", readout.Travel, 0.12, spread, duration, true)],
        Separation = Band("Rear separation", readout.Travel, 0.04, spread, duration, false),
        RearLoad = Band("Rear tyre load", readout.Force, 9000, spread, duration, false),
        Statements = [.. Enumerable.Range(0, statements).Select(i => new DrawnShare($"the low after the hit is below standing, in a shift {i}", "over 99 %", 0.995, 0.99, 1, i % 2 == 0))],
        Numbers = [.. Enumerable.Range(0, numbers).Select(i => new DrawnShare("rear.linkage.upper.body.up 14.6 ±0.06 in", "12 ±2 %", 0.12, 0.1, 0.14, false))],
        NumbersNote = "Share of the variance of the answer that each decides, ± one standard error. The remaining 30 ±5 % no number decides alone: numbers act together, or by leaps.",
    };

    private static DrawnBand Band(string heading, Scale scale, double size, double spread, double duration, bool isFront)
    {
        const double step = 0.005;
        double[] own = [.. Enumerable.Range(0, (int)(duration / step) + 1).Select(row => size * (1 - Math.Exp(-row * step / 0.15)) * (1 + (0.2 * Math.Sin(row * step * 12))))];
        return new DrawnBand(heading, "Over the ground", scale, isFront, 1, step, [.. own.Select(value => value * (1 - spread))], [.. own.Select(value => value * (1 + spread))], own);
    }
}
