using LaunchSim.Geometry;
using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Geometry;

/// <summary>Tables of the side view against the drawing: lines that are cut with each other, circles about a pivot.</summary>
public class SideViewTests
{
    private const double Height = 0.53, Wheelbase = 2.68, Radius = 0.333;

    private static readonly FourLink Links = new()
    {
        LowerAxle = new(0.025, 0.193),
        LowerBody = new(0.533, 0.229),
        UpperAxle = new(0.064, 0.432),
        UpperBody = new(0.356, 0.371),
    };

    private static SideView View(Linkage linkage) => SideView.AsMeasured(linkage, Radius, Height, Wheelbase);

    private static double PercentByDrawing(FourLink links)
    {
        double lower = (links.LowerBody.Up - links.LowerAxle.Up) / (links.LowerBody.Ahead - links.LowerAxle.Ahead);
        double upper = (links.UpperBody.Up - links.UpperAxle.Up) / (links.UpperBody.Ahead - links.UpperAxle.Ahead);
        double ahead = (links.UpperBody.Up - (upper * links.UpperBody.Ahead) - links.LowerBody.Up + (lower * links.LowerBody.Ahead)) / (lower - upper);
        double up = links.LowerBody.Up + (lower * (ahead - links.LowerBody.Ahead));
        return 100 * (up / ahead) / (Height / Wheelbase);
    }

    [Fact]
    public void AsMeasured_WithoutTheWheelHeight_GivesTheSameLine()
    {
        StaticLine with = View(Links).Line, without = SideView.AsMeasured(Links, null, Height, Wheelbase).Line;

        Assert.Equal(with.Percent, without.Percent, 1e-9);
        Assert.Equal(with.InstantCentreAhead, without.InstantCentreAhead, 1e-12);
        Assert.Equal(with.InstantCentreUp, without.InstantCentreUp, 1e-12);
        Assert.Equal(PercentByDrawing(Links), with.Percent, 1e-9);
    }

    [Fact]
    public void CanBeAssembled_BarAndHousingInOneLine_IsFalse()
    {
        Assert.True(View(Links).CanBeAssembled);
        Assert.False(View(Links with { UpperBody = new(Links.LowerAxle.Ahead + (2 * 0.039), Links.LowerAxle.Up + (2 * 0.239)) }).CanBeAssembled);
        Assert.False(View(Links with { UpperBody = Links.UpperAxle }).CanBeAssembled);
    }

    [Fact]
    public void HoleTable_TwoBrackets_HoldsEveryChoiceRisingInPercent()
    {
        LinkageBracket[] brackets =
        [
            new(LinkagePoint.UpperAxle, [new("low", new(0.064, 0.42)), new("mid", new(0.064, 0.432))], "mid"),
            new(LinkagePoint.UpperBody, [new("1", new(0.356, 0.391)), new("2", new(0.356, 0.371)), new("3", new(0.356, 0.351))], "2"),
        ];

        IReadOnlyList<HoleRow> rows = HoleTable.Of(View(Links), brackets, View);

        Assert.Equal(6, rows.Count);
        Assert.Equal(rows.Select(row => row.Line!.Percent).Order(), rows.Select(row => row.Line!.Percent));
        HoleRow present = Assert.Single(rows, row => row.Present);
        Assert.Equal(["mid", "2"], present.Holes);
        Assert.All(present.Bars, bar => Assert.Equal(0, bar.Change));
        HoleRow other = rows.Single(row => row.Holes.SequenceEqual(["low", "3"]));
        Assert.Equal(PercentByDrawing(Links with { UpperAxle = new(0.064, 0.42), UpperBody = new(0.356, 0.351) }), other.Line!.Percent, 1e-9);
        Assert.Equal(Math.Sqrt((0.292 * 0.292) + (0.069 * 0.069)), other.Bars[1].Length, 1e-12);
        Assert.Equal(other.Bars[1].Length - present.Bars[1].Length, other.Bars[1].Change, 1e-12);
    }

    [Fact]
    public void HoleTable_ChoiceThatDoesNotClose_IsListedLast()
    {
        LinkageBracket[] brackets = [new(LinkagePoint.UpperBody, [new("bad", Links.UpperAxle), new("good", Links.UpperBody)], "good")];

        IReadOnlyList<HoleRow> rows = HoleTable.Of(View(Links), brackets, View);

        Assert.Equal(["good", "bad"], rows.Select(row => row.Holes[0]));
        Assert.Null(rows[1].Line);
    }

    [Fact]
    public void Sensitivity_StepsOfPoints_AreThoseOfTheDrawing()
    {
        const double step = 0.001;
        SideView view = View(Links);
        double now = PercentByDrawing(Links);

        IReadOnlyList<EndSensitivity> ends = Sensitivity.ToEnds(view, step, View);

        Assert.Equal(PercentByDrawing(Links with { UpperBody = new(0.356, 0.371 + step) }) - now, ends[3].PercentUp, 1e-9);
        Assert.Equal(PercentByDrawing(Links with { LowerAxle = new(0.025 + step, 0.193) }) - now, ends[0].PercentAhead, 1e-9);
        Assert.Equal(now * ((Height / (Height + 0.01)) - 1), Sensitivity.ToCentreOfGravity(view, 0.01), 1e-9);
    }

    [Fact]
    public void TravelTable_LadderBar_IsTheCircleAboutThePivot()
    {
        var pivot = new Point(0.81, 0.24);
        SideView view = View(new LadderBar { Pivot = pivot });
        double squared = (pivot.Ahead * pivot.Ahead) + ((pivot.Up - Radius) * (pivot.Up - Radius));

        IReadOnlyList<TravelRow> rows = TravelTable.Of(view, 0.01, 7, 9);

        Assert.Equal(17, rows.Count);
        foreach (TravelRow row in rows)
        {
            double up = pivot.Up + row.BodyUp, ahead = Math.Sqrt(squared - ((up - Radius) * (up - Radius)));
            Assert.Equal(ahead, row.Line.InstantCentreAhead, 1e-11);
            Assert.Equal(up, row.Line.InstantCentreUp, 1e-11);
            Assert.Equal(100 * (up / ahead) / (Height / Wheelbase), row.Line.Percent, 1e-9);
        }
    }

    [Fact]
    public void TravelTable_FarBeyondTheLinkage_EndsThere()
    {
        IReadOnlyList<TravelRow> rows = TravelTable.Of(View(Links), 0.05, 100, 100);

        Assert.InRange(rows.Count, 3, 30);
        Assert.All(rows, row => Assert.True(double.IsFinite(row.Line.Percent)));
    }
}
