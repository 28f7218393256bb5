using LaunchSim.Reports;

namespace LaunchSim.Web.Tests.Front;

/// <summary>The charts that the browser makes of a launch, for every car that ships.</summary>
public class ChartsTests
{
    private const string Every = "groups.flatMap((group) => group.charts)";

    public static TheoryData<string> Names => Shipped.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Charts_OfAnyLaunch_HaveNamesValuesAndTheTitlesOfTheEngine(string name)
    {
        using FrontScript script = Of(Shipped.Run(name));
        Assert.Equal("", script.Text($"{Every}.flatMap(({{ name, title, curves }}) => (title && curves.length > 0 && curves.every(({{ label, times, values }}) => label && times.length === values.length) ? [] : [name])).join()"));
        Assert.Equal(script.Number($"{Every}.length"), script.Number($"new Set({Every}.map(({{ name }}) => name)).size"));
        Assert.Equal("", script.Text($"{Every}.filter(({{ curves }}) => !curves.some(({{ values }}) => values.some(Number.isFinite))).map(({{ name }}) => name).join()"));

        // The engine has titles for charts on paper that the page does not have: the dampers' tables.
        Assert.Equal("damper-tables", script.Text("Object.entries(source.launches[0].titles).filter(([name, title]) => !groups.some((group) => group.name === name && group.title === title)).map(([name]) => name).join()"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Charts_OfAnyLaunch_ShowWhatTheEngineFound(string name)
    {
        LaunchOutcome run = Shipped.Run(name);
        using FrontScript script = Of(run);
        double force = script.Number("source.units.force.factor"), travel = script.Number("source.units.travel.factor");
        script.Execute("const curve = (chart, i) => groups.flatMap((group) => group.charts).find((one) => one.name === chart).curves[i]; const at = (chart, i, time) => sample.valueAt(curve(chart, i).times, curve(chart, i).values, time);");

        // Samples are a millisecond apart: between them a load may bend.
        double hit = run.Figures["hit_n"]!.Value;
        Assert.Equal(hit, force * script.Number($"at('tyre-loads', 0, {FrontScript.Of(run.Figures["hit_time_s"]!.Value)})"), 1e-3 * hit);
        double apart = run.Figures["separation_peak_m"]!.Value;
        Assert.Equal(apart, travel * script.Number($"at('gaps', 0, {FrontScript.Of(run.Figures["separation_peak_time_s"]!.Value)})"), 1e-5);
        double gap = run.Figures["front_gap_at_200ms_m"]!.Value;
        Assert.Equal(gap, travel * script.Number("at('gaps', 1, 0.2)"), 1e-6);
    }

    [Fact]
    public void Charts_OfSeveralLaunches_TellThemApartWithoutColour()
    {
        using FrontScript script = Of(Shipped.Run("door-car"), Shipped.Run("door-car-dampers-soft"), Shipped.Run("door-car-dampers-stiff"));
        script.Execute("const mixed = groups.flatMap((group) => group.charts).filter(({ curves }) => new Set(curves.map((curve) => `${curve.style} ${curve.weight} ${curve.closing !== undefined}`)).size < curves.length).map(({ name }) => name).join();");
        Assert.Equal("", script.Text("mixed"));
        Assert.Equal("A rear,B rear,C rear,A front,B front,C front", script.Text("groups[0].charts[0].curves.map(({ label }) => label).join()"));
        Assert.Equal("ink,third,fourth", script.Text("groups.at(-1).charts[0].curves.map(({ tone }) => tone).join()"));
        Assert.Equal(2, script.Number("groups.find(({ name }) => name === 'rear-load-by-path').charts.length"));
    }

    [Fact]
    public void Charts_OfALadderBarBesideAFourLink_SayWhyOneHasNoBars()
    {
        using FrontScript script = Of(Shipped.Run("door-car"), Shipped.Run("ladder-bar"));
        Assert.Equal("bar-forces,ladder-bar-lift", script.Text("groups.find(({ name }) => name === 'bar-forces').charts.map(({ name }) => name).join()"));
        Assert.Equal("ladder bars have no upper and lower bar", script.Text("groups.find(({ name }) => name === 'bar-forces').charts[0].curves[1].reason"));
    }

    private static FrontScript Of(params LaunchOutcome[] runs)
    {
        var script = new FrontScript("charts/all.js");
        script.Add("decoding", "document.js");
        script.Add("sample", "charts/sample.js");
        script.Set("text", Shipped.Document(runs));
        script.Execute("const source = decoding.decode(JSON.parse(text)), groups = tested.chartsOf(source);");
        return script;
    }
}
