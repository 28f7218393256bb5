using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.SideViews;
using LaunchSim.Reports.Numbers;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.Measure;

/// <summary>The second page: the points of the rear end, the dampers' travel, and the holes of brackets.</summary>
/// <param name="units">The units.</param>
/// <param name="linkage">The linkage.</param>
/// <param name="before">How many things the page before asked.</param>
internal sealed class RearEndPage(MeasureUnits units, LinkageKind linkage, int before)
{
    private const double Column = 318, Step = 6;
    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;
    private static readonly OxyColor Leader = OxyColor.FromRgb(0x7A, 0x7A, 0x7A);

    /// <summary>Draws the page.</summary>
    /// <param name="canvas">Where it is drawn.</param>
    /// <param name="area">Where on it.</param>
    public void Draw(IRenderContext canvas, OxyRect area)
    {
        var pen = new MeasurePen(canvas);
        pen.ContinueAfter(before);
        canvas.Text("Ahead of the chalk line of the axle tube's centre, up from the floor; behind the line with a minus. Nobody under a car on a jack without stands.", new ScreenPoint(area.Left, area.Top - 6), MeasurePen.Text, OxyColors.Black);

        double top = area.Top + 22, middle = area.Left + Column + 6, width = area.Width - (2 * Column) - 12;
        double tall = 4 * (MeasurePen.HeightOf(WriteIn.Point("", "", "")) + Step);
        Projection projection = SideViewDrawing.Draw(canvas, new OxyRect(middle, top, width, tall - 12), SchematicCar.Scene(linkage), new Readout(units.System),
            new SideViewOptions { HasLabels = false, HasLines = false, HasDimensions = false, HasBody = false, Window = SchematicCar.Rear }).Projection;

        string length = units.Length;
        (WriteIn[] axle, WriteIn[] body) = Points(length);

        // What is low on the axle is asked low on the page.
        double y = top + tall - (axle.Length * tall / 4);
        foreach (WriteIn item in axle)
        {
            Point(canvas, pen, projection, item, new ScreenPoint(area.Left, y), area.Left + Column);
            y += MeasurePen.HeightOf(item) + Step;
        }

        y = top;
        double right = area.Right - Column;
        foreach (WriteIn item in body)
        {
            Point(canvas, pen, projection, item, new ScreenPoint(right, y), right);
            y += MeasurePen.HeightOf(item) + Step;
        }

        y = top + tall + 2;
        WriteIn[] others =
        [
            Travel("Rear damper, at this ride height", "rear.damper.travel", length),
            Travel("Front damper, at this ride height", "front.damper.travel", length),
            WriteIn.Number("Pinion angle, nose up is +", "rear.linkage.pinion_angle", "", "°"),
        ];
        for (int i = 0; i < others.Length; i++)
        {
            _ = pen.Draw(others[i], new ScreenPoint(area.Left + (i * 0.345 * area.Width), y));
        }

        Holes(canvas, new ScreenPoint(area.Left, y + MeasurePen.HeightOf(others[0]) + 10), area);
    }

    private (WriteIn[] Axle, WriteIn[] Body) Points(string length)
    {
        WriteIn Of(string words, string key) => WriteIn.Point(words, key, length);
        WriteIn[] axleUnits = [Of("Spring, axle end", "rear.spring.axle"), Of("Damper, axle end (if apart)", "rear.damper.axle")];
        WriteIn[] bodyUnits = [Of("Damper, body end (if apart)", "rear.damper.body"), Of("Spring, body end", "rear.spring.body")];
        return linkage == LinkageKind.LadderBar
            ? (axleUnits, [.. bodyUnits, Of("Ladder bar's front pivot", "rear.linkage.pivot")])
            : ([Of("Upper bar, axle end", "rear.linkage.upper.axle"), Of("Lower bar, axle end", "rear.linkage.lower.axle"), .. axleUnits],
                [.. bodyUnits, Of("Upper bar, body end", "rear.linkage.upper.body"), Of("Lower bar, body end", "rear.linkage.lower.body")]);
    }

    private static WriteIn Travel(string words, string key, string length) => new(
        words, [$"{key}.extend", ".compress"], [new Blank("longer until it tops out", length)], [new Blank("shorter until it bottoms", length)]);

    private static void Point(IRenderContext canvas, MeasurePen pen, Projection projection, WriteIn item, ScreenPoint at, double edge)
    {
        ScreenPoint number = pen.Draw(item, at), target = projection.At(SchematicCar.Points[item.Keys[0]]);
        bool isLeft = target.X > edge;
        ScreenPoint bend = new(isLeft ? edge + 2 : edge - 4, number.Y);
        double words = canvas.MeasureText(item.Words, Theme.FontFamily, MeasurePen.Text, Theme.Bold).Width + 30;
        ScreenPoint start = isLeft ? new(at.X + words, number.Y) : new(number.X - 9, number.Y);
        canvas.Path([start, bend, Short(bend, target)], Leader, 1);
    }

    // Ends at the ring, not in it.
    private static ScreenPoint Short(ScreenPoint from, ScreenPoint to)
    {
        double x = to.X - from.X, y = to.Y - from.Y, length = Math.Max(1, Math.Sqrt((x * x) + (y * y)));
        return new ScreenPoint(to.X - (6 * x / length), to.Y - (6 * y / length));
    }

    private void Holes(IRenderContext canvas, ScreenPoint at, OxyRect area)
    {
        canvas.Text("Holes of the brackets", at, 14, OxyColors.Black, Theme.Bold);
        canvas.Text(
            $"In the file: {{holes: {{NAME: ahead up {units.Length}, NAME: …}}, use: NAME}} in the place of the bar's end. Tick the hole in use.",
            new ScreenPoint(at.X + 160, at.Y + 2), MeasurePen.Key + 1, OxyColors.Black);
        double[] widths = [124, 76, 106, 106, 44];
        string[] heads = ["which end of which bar", "hole", $"ahead, {units.Length}", $"up, {units.Length}", "in use"];
        double table = widths.Sum(), top = at.Y + 24;
        int rows = (int)((area.Bottom - top - 14) / MeasurePen.LineStep);
        foreach (double left in new[] { at.X, area.Right - table })
        {
            double x = left;
            for (int column = 0; column < widths.Length; column++)
            {
                canvas.Text(heads[column], new ScreenPoint(x + 2, top), MeasurePen.Key + 1, OxyColors.Black);
                for (int row = 1; row <= rows; row++)
                {
                    double y = top + 14 + (row * MeasurePen.LineStep);
                    if (column < widths.Length - 1)
                    {
                        canvas.DrawLine([new(x, y), new(x + widths[column] - 8, y)], OxyColors.Black, 1, Exact);
                    }
                    else
                    {
                        canvas.DrawRectangle(new OxyRect(x + 8, y - 14, 13, 13), OxyColors.White, OxyColors.Black, 1.2, Exact);
                    }
                }

                x += widths[column];
            }
        }
    }
}
