namespace LaunchSim.Web.Tests.Front;

/// <summary>The time that a page shares: the instant at which all looks, and the part of the run that the charts show.</summary>
public class TimeTests
{
    [Fact]
    public void Cursor_SetOutsideOfTheRun_StaysWithinAndTellsAtOnce()
    {
        using var script = new FrontScript("cursor.js");
        script.Execute("const seen = []; const cursor = tested.createCursor(1.8); const end = cursor.subscribe((time) => seen.push(time)); cursor.set(0.4); cursor.set(0.4); cursor.set(7); cursor.set(-1); cursor.set(NaN); end(); cursor.set(1);");
        Assert.Equal([0.4, 1.8, 0], script.Numbers("seen"));
        Assert.Equal(1, script.Number("cursor.time"));
    }

    [Fact]
    public void Cursor_WhoseListenerLeavesWhileItIsTold_StillTellsTheOthers()
    {
        using var script = new FrontScript("cursor.js");
        script.Execute("const seen = []; const cursor = tested.createCursor(1); const end = cursor.subscribe(() => end()); cursor.subscribe((time) => seen.push(time)); cursor.set(0.2); cursor.set(0.3);");
        Assert.Equal([0.2, 0.3], script.Numbers("seen"));
    }

    [Fact]
    public void Cursor_OfAShorterRun_ComesBackIntoIt()
    {
        using var script = new FrontScript("cursor.js");
        script.Execute("const cursor = tested.createCursor(2); cursor.set(1.5); cursor.reach(1);");
        Assert.Equal([1, 1], script.Numbers("[cursor.time, cursor.duration]"));
    }

    [Theory]
    [InlineData("range.set(0.5, 0.2)", 0.2, 0.5)]
    [InlineData("range.set(-1, 9)", 0, 2)]
    [InlineData("range.set(1.9999, 2)", 1.995, 2)]
    [InlineData("range.set(NaN, 1)", 0, 2)]
    [InlineData("tested.zoomAbout(range, 0.5, 0.5)", 0.25, 1.25)]
    [InlineData("tested.zoomAbout(range, 0.5, 4)", 0, 2)]
    [InlineData("range.set(0.2, 0.6); tested.shiftBy(range, 5)", 1.6, 2)]
    [InlineData("range.set(0.2, 0.6); tested.bringIn(range, 0.1)", 0.1, 0.5)]
    [InlineData("range.set(0.2, 0.6); tested.bringIn(range, 0.3)", 0.2, 0.6)]
    [InlineData("range.set(0.2, 0.6); range.reset()", 0, 2)]
    [InlineData("range.reach(1)", 0, 1)]
    [InlineData("range.set(0.2, 0.6); range.reach(3)", 0.2, 0.6)]
    public void Range_OfARunOfTwoSeconds_StaysWithinIt(string act, double from, double to)
    {
        using var script = new FrontScript("charts/range.js");
        script.Execute($"const range = tested.createRange(2); {act};");
        Assert.Equal([from, to], script.Numbers("[range.from, range.to]"), Near.To(1e-12));
    }

    [Fact]
    public void Range_ThatDoesNotChange_TellsNobody()
    {
        using var script = new FrontScript("charts/range.js");
        script.Execute("let told = 0; const range = tested.createRange(2); range.subscribe(() => told++); range.set(0, 2); range.reset(); range.set(0, 1); range.set(0, 1);");
        Assert.Equal(1, script.Number("told"));
        Assert.False(script.Holds("range.isWhole"));
    }
}
