using CsCheck;
using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.SideViews;
using LaunchSim.Reports.Numbers;
using OxyPlot;

namespace LaunchSim.Charts.Tests.SideViews;

public class SideViewLabelTests
{
    private static readonly OxyRect Area = new(20, 30, 1144, 420);

    [Theory]
    [MemberData(nameof(Shipped.All), MemberType = typeof(Shipped))]
    public void Draw_ShippedScenario_LabelsAreClearAndNoneIsDropped(string path)
    {
        var scenario = Shipped.Read(path);
        var scene = SideViewScene.Of(scenario);

        DrawnSideView drawn = SideViewDrawing.Draw(new Recorder(), Area, scene, new Readout(scenario.UnitSystem));

        AreClear(drawn);
        Assert.Empty(drawn.Labels.Dropped);
        Assert.Contains(drawn.Labels.Placed, label => label.Text == "neutral line, 100 %");
        Assert.Contains(drawn.Labels.Placed, label => label.Text.Contains("instant centre", StringComparison.Ordinal));
    }

    [Fact]
    public void Draw_AnyGeometry_LabelsAreClearAndTheDroppedAreTold() => RandomEntries.Any.Sample(
        entries =>
        {
            var scene = SideViewScene.AsEntered(entries);
            var recorder = new Recorder();

            DrawnSideView drawn = SideViewDrawing.Draw(recorder, Area, scene, new Readout(entries.UnitSystem));

            AreClear(drawn);
            StaysInside(recorder);
            Assert.All(drawn.Labels.Dropped, text => Assert.Contains(drawn.Notes, note => note.Contains(text.Replace('\n', ' '), StringComparison.Ordinal)));
            Assert.True(drawn.Labels.Dropped.Count <= 2, string.Join("; ", drawn.Labels.Dropped));
        },
        iter: 400);

    [Fact]
    public void EnteredPicture_AnyGeometry_IsReadable() => RandomEntries.Any.Sample(
        entries =>
        {
            if (EnteredPicture.Of(entries, "random", new Readout(entries.UnitSystem)) is { } picture)
            {
                Recorder.Of(picture).IsReadable(picture);
            }
        },
        iter: 200);

    private static void AreClear(DrawnSideView drawn)
    {
        IReadOnlyList<PlacedLabel> placed = drawn.Labels.Placed;
        for (int i = 0; i < placed.Count; i++)
        {
            Assert.True(placed[i].IsClear, placed[i].Text);
            Assert.True(placed[i].Area.Left >= Area.Left && placed[i].Area.Right <= Area.Right && placed[i].Area.Top >= Area.Top && placed[i].Area.Bottom <= Area.Bottom, placed[i].Text);
            for (int j = 0; j < i; j++)
            {
                Assert.False(Clip.Overlap(placed[i].Area, placed[j].Area), $"{placed[i].Text} on {placed[j].Text}");
            }
        }
    }

    // Marks may stand over the edge by their own size, lines may not.
    private static void StaysInside(Recorder recorder)
    {
        const double Mark = 16;
        Assert.All(recorder.Points, point => Assert.True(
            point.X >= Area.Left - Mark && point.X <= Area.Right + Mark && point.Y >= Area.Top - Mark && point.Y <= Area.Bottom + Mark,
            FormattableString.Invariant($"{point} is outside")));
    }
}
