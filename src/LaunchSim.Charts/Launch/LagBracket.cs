using LaunchSim.Charts.Drawing;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>The time between the same moment of the rear and of the front, as a bracket between both curves.</summary>
internal static class LagBracket
{
    private const double EndTick = 5, Radius = 4;
    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;

    /// <summary>Draws it; one end alone gets its ring only.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="plot">The plot, drawn already.</param>
    /// <param name="rear">The rear's moment and value in the axes' units, or none.</param>
    /// <param name="front">The front's, or none.</param>
    /// <param name="text">What stands at the bracket.</param>
    public static void Draw(IRenderContext canvas, Plot plot, DataPoint? rear, DataPoint? front, string text)
    {
        ScreenPoint? a = On(plot, rear), b = On(plot, front);
        if (a is { } one && b is { } other)
        {
            // From the higher dot level to the lower one's instant, and down to it.
            (ScreenPoint high, ScreenPoint low) = one.Y <= other.Y ? (one, other) : (other, one);
            var corner = new ScreenPoint(low.X, high.Y);
            Pen pen = Pen.Measure;
            canvas.DrawLine([high, corner], pen.Color, 2, Exact);
            canvas.DrawLine([new(low.X, high.Y - EndTick), low], pen.Color, pen.Thickness, Exact, Theme.Dot, LineJoin.Miter);
            canvas.DrawLine([new(low.X, high.Y - EndTick), new(low.X, high.Y + EndTick)], pen.Color, 2, Exact);
            canvas.DrawLine([new(high.X, high.Y - EndTick), new(high.X, high.Y + EndTick)], pen.Color, 2, Exact);
            plot.Labels.Keep(new OxyRect(Math.Min(high.X, low.X), high.Y - EndTick, Math.Abs(high.X - low.X), 2 * EndTick));
            plot.Labels.Avoid([corner, low]);
            _ = plot.Labels.Place(text, [new(Math.Max(high.X, low.X), high.Y), new(Math.Min(high.X, low.X), high.Y)],
                new LabelStyle { Size = Theme.Body, Weight = Theme.Bold, Directions = [0, 45, 315, 180, 135, 90], Gap = 8 });
        }

        Ring(a, Theme.Rear);
        Ring(b, Theme.Front);

        void Ring(ScreenPoint? at, OxyColor color)
        {
            if (at is { } point)
            {
                canvas.Ring(point, Radius, color, 2);
                plot.Labels.Keep(new OxyRect(point.X - Radius, point.Y - Radius, 2 * Radius, 2 * Radius));
            }
        }
    }

    private static ScreenPoint? On(Plot plot, DataPoint? point) =>
        point is { } one && plot.At(one.X, one.Y) is { } at && plot.Holds(at) ? at : null;
}
