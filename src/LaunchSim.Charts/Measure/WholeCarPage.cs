using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.SideViews;
using LaunchSim.Reports.Numbers;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.Measure;

/// <summary>The first page: how the car has to stand, how to hold the tape, and what is measured on the whole car.</summary>
internal sealed class WholeCarPage
{
    private const double LeftWidth = 292, Between = 26, Column = 206, DrawingHeight = 244;
    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;

    private readonly MeasureUnits _units;
    private readonly LinkageKind _linkage;
    private readonly Asked[] _asked;

    /// <summary>Prepares the page.</summary>
    /// <param name="units">The units.</param>
    /// <param name="linkage">The linkage.</param>
    public WholeCarPage(MeasureUnits units, LinkageKind linkage)
    {
        (_units, _linkage) = (units, linkage);
        string length = units.Length, force = units.Force;
        Blank[][] scales = [[new("left", force)], [new("right", force)], [new("both", force)]];
        _asked =
        [
            new(0, WriteIn.Number("Rear tyre pressure", "rear.tire.pressure.measured", "", units.Pressure), new Point(-0.20, 0.52)),
            new(2, WriteIn.Number("Front tyre pressure", "front.tire.pressure.measured", "", units.Pressure), new Point(2.76, 0.50)),
            new(0, new WriteIn("Rear scales", ["car.scales.rear (both)"], scales), new Point(0.16, -0.13)),
            new(2, new WriteIn("Front scales", ["car.scales.front (both)"], scales), new Point(2.44, -0.13)),
            new(1, WriteIn.Number("Wheelbase", "car.wheelbase", "", length), new Point(1.30, -0.24)),
            new(0, WriteIn.Number("Rear wheel centre, up", "rear.tire.loaded_radius", "", length), new Point(-0.07, 0.165)),
            new(2, WriteIn.Number("Front wheel centre, up", "front.tire.loaded_radius", "", length), new Point(2.67, 0.155)),
            new(1, new WriteIn("Centre of gravity, up", ["car.cg_height"], [new Blank("", length)], [new Blank("±", length)]), new Point(1.43, 0.27)),
            new(1, new WriteIn("Wheelie bar's wheel, lowest", ["rear.wheelie_bar.wheel"], [new Blank("ahead  −", length)], [new Blank("up", length)]), new Point(-1.05, 0.22)),
        ];
    }

    /// <summary>How many things are asked on this page.</summary>
    public int Items => _asked.Length;

    /// <summary>Draws the page.</summary>
    /// <param name="canvas">Where it is drawn.</param>
    /// <param name="area">Where on it.</param>
    public void Draw(IRenderContext canvas, OxyRect area)
    {
        var pen = new MeasurePen(canvas);
        pen.Row([new Blank("Car", ""), new Blank("Date", "")], new ScreenPoint(area.Left + area.Width - 330, area.Top - 14));
        Instructions(canvas, pen, new ScreenPoint(area.Left, area.Top), area.Bottom);

        double left = area.Left + LeftWidth + Between, width = area.Width - LeftWidth - Between;
        var drawing = new OxyRect(left, area.Top, width, DrawingHeight);
        SideViewScene scene = SchematicCar.Scene(_linkage);
        Projection projection = SideViewDrawing.Draw(canvas, drawing, scene, new Readout(_units.System),
            new SideViewOptions { HasLabels = false, HasLines = false, HasDimensions = false }).Projection;
        Dimensions(canvas, projection, scene);
        Ask(pen, projection, left, drawing.Bottom + 50);
        canvas.Text("8: a guess will do to begin with, so long as ± says how rough it is.", new ScreenPoint(left, area.Bottom - 34), MeasurePen.Key + 1, OxyColors.Black);
        canvas.Text("Type the numbers in under the grey names. `launchsim check FILE --picture FILE.png` draws them to scale.", new ScreenPoint(left, area.Bottom - 15), MeasurePen.Key + 1, OxyColors.Black);
    }

    private void Instructions(IRenderContext canvas, MeasurePen pen, ScreenPoint at, double bottom)
    {
        const double Pad = 9;
        double y = at.Y + Pad;
        y += canvas.Wrapped("Secure the car first", new ScreenPoint(at.X + Pad, y), LeftWidth, 14, OxyColors.Black, Theme.Bold) + 2;
        y += canvas.Wrapped(
            "It stands on its wheels on a flat floor, wheels chocked, engine off. Nobody gets under a car that stands on a jack without stands that are rated for it. The rules of your class and qualified people come before this sheet.",
            new ScreenPoint(at.X + Pad, y), LeftWidth - (2 * Pad), MeasurePen.Text, OxyColors.Black) + Pad;
        canvas.DrawRectangle(new OxyRect(at.X, at.Y, LeftWidth, y - at.Y), OxyColors.Undefined, OxyColors.Black, 2, Exact);

        y += 12;
        y += canvas.Wrapped("How the car must stand", new ScreenPoint(at.X, y), LeftWidth, 14, OxyColors.Black, Theme.Bold) + 4;
        foreach (string words in (string[])
        [
            "Floor flat and level under all four tyres",
            "Driver aboard, or his weight in his seat",
            "Fuel, water, oil and ballast as for the pass",
            "Tyre pressures set, steering straight ahead",
            "Nothing but the tyres touches the floor",
            "Both ends bounced, car rolled a length back and forth, then left alone: ride height settled",
        ])
        {
            y += pen.Tick(words, new ScreenPoint(at.X, y), LeftWidth);
        }

        y += 10;
        y += canvas.Wrapped("How to hold the tape", new ScreenPoint(at.X, y), LeftWidth, 14, OxyColors.Black, Theme.Bold) + 2;
        foreach (string words in (string[])
        [
            "Ahead counts from the centre of the axle tube. Hang a plumb line from its middle on both sides, chalk the two marks on the floor, and join them with a straight line. What is behind that line gets a minus.",
            "Up counts from the floor.",
            "A point is the middle of the bolt or the rod end. Hang the plumb line from it, chalk the floor, and measure there.",
            $"Measure both sides and write the mean. If they differ by more than {_units.Slack}, find out why before you go on.",
            "Write ± and how far it may be off wherever you had to guess.",
        ])
        {
            y += canvas.Wrapped(words, new ScreenPoint(at.X, y), LeftWidth, MeasurePen.Text, OxyColors.Black) + 5;
        }

        y += 8;
        _ = canvas.Wrapped("Notes: fuel, driver, what was done before", new ScreenPoint(at.X, y), LeftWidth, MeasurePen.Text, OxyColors.Black, Theme.Bold);
        for (double line = y + 18 + MeasurePen.LineStep; line <= bottom; line += MeasurePen.LineStep)
        {
            canvas.DrawLine([new(at.X, line), new(at.X + LeftWidth, line)], OxyColors.Black, 1, Exact);
        }
    }

    private static void Dimensions(IRenderContext canvas, Projection projection, SideViewScene scene)
    {
        void Line(double fromAhead, double fromUp, double toAhead, double toUp) =>
            canvas.Path([projection.At(fromAhead, fromUp), projection.At(toAhead, toUp)], OxyColors.Black, 1);

        const double Tick = 0.025, Row = -0.24;
        foreach ((double ahead, double up) in new[] { (0.0, scene.RearWheel!.Centre.Up), (SchematicCar.Wheelbase, scene.FrontWheel!.Centre.Up), (scene.CentreOfGravity!.Value.Ahead, scene.CentreOfGravity.Value.Up) })
        {
            Line(ahead, 0, ahead, up);
            Line(ahead - Tick, 0, ahead + Tick, 0);
        }

        Line(0, Row, SchematicCar.Wheelbase, Row);
        foreach (double ahead in new[] { 0, SchematicCar.Wheelbase })
        {
            Line(ahead, Row - Tick, ahead, -0.03);

            // The pad of a scale.
            ScreenPoint pad = projection.At(ahead - 0.14, -0.015), end = projection.At(ahead + 0.14, -0.015);
            canvas.Path([pad, end], OxyColors.Black, 4);
        }
    }

    private void Ask(MeasurePen pen, Projection projection, double left, double top)
    {
        double[] used = [top, top, top];
        foreach (Asked asked in _asked)
        {
            ref double y = ref used[asked.Column];
            _ = pen.Draw(asked.Item, new ScreenPoint(left + (asked.Column * (Column + 10)), y));
            pen.Numbered(pen.Number, projection.At(asked.At));
            y += MeasurePen.HeightOf(asked.Item) + 13;
        }
    }

    private sealed record Asked(int Column, WriteIn Item, Point At);
}
