using LaunchSim.Charts.Drawing;
using LaunchSim.Reports.Numbers;
using OxyPlot;

namespace LaunchSim.Charts.SideViews;

/// <summary>Draws a car from the side, to scale, front to the right.</summary>
internal static class SideViewDrawing
{
    // Room below the ground for two rows of dimensions, or for the mark of the contact patch alone.
    private const double Dimensions = 46, Foot = 10;

    /// <summary>Draws a side view into an area.</summary>
    /// <param name="canvas">Where it is drawn.</param>
    /// <param name="area">The area; nothing is drawn outside of it.</param>
    /// <param name="scene">What is drawn.</param>
    /// <param name="readout">The units of its numbers.</param>
    /// <param name="options">What is shown; the whole car with all its names when null.</param>
    public static DrawnSideView Draw(IRenderContext canvas, OxyRect area, SideViewScene scene, Readout readout, SideViewOptions? options = null)
    {
        options ??= new SideViewOptions();
        bool hasBody = HasBody(scene, options);
        var projection = new Projection(new OxyRect(area.Left, area.Top, area.Width, Math.Max(1, area.Height - FootOf(options))), WindowOf(scene, options));
        var labels = new Labels(canvas, area);
        var lines = new LinePainter(canvas, scene, projection);
        var car = new CarPainter(canvas, scene, projection);
        car.Background(hasBody);
        if (options.HasLines)
        {
            lines.Neutral();
            lines.Bars();
            if (scene.Line is { } line)
            {
                lines.Percent(line);
            }
        }

        if (options.HasSurroundings)
        {
            car.Surroundings();
            lines.Gravity();
        }

        car.Linkage();
        if (options.HasLines)
        {
            lines.Centre();
        }

        if (options.HasDimensions)
        {
            new DimensionPainter(canvas, projection, readout, labels, options.TextSize).Below(scene, lines.InstantCentre);
        }

        var notes = new List<string>();
        if (options.HasLabels)
        {
            Label(scene, readout, options, projection, labels, lines);
            if (labels.Dropped.Count > 0)
            {
                notes.Add($"No room was left for: {string.Join("; ", labels.Dropped.Select(text => text.Replace('\n', ' ')))}.");
            }
        }

        if (hasBody)
        {
            notes.Add(BodyShape.Note);
        }

        return new DrawnSideView(projection, labels, notes, [.. scene.Entered.Where(point => !projection.Shows(point.At))]);
    }

    /// <summary>How high an area has to be for a side view to fill its width.</summary>
    /// <param name="width">Width of the area.</param>
    /// <param name="scene">What is drawn.</param>
    /// <param name="options">What is shown.</param>
    public static double HeightFor(double width, SideViewScene scene, SideViewOptions? options = null)
    {
        options ??= new SideViewOptions();
        SideViewWindow window = WindowOf(scene, options);
        return (width * window.Tall / window.Width) + FootOf(options);
    }

    private static bool HasBody(SideViewScene scene, SideViewOptions options) => options is { HasBody: true, Window: null } && scene.Wheelbase is not null;

    private static double FootOf(SideViewOptions options) => options.HasDimensions ? Dimensions : Foot;

    private static SideViewWindow WindowOf(SideViewScene scene, SideViewOptions options)
    {
        SideViewWindow window = options.Window ?? SideViewWindow.Whole(scene);
        return HasBody(scene, options) ? window with { Top = Math.Max(window.Top, BodyShape.Height * scene.Wheelbase!.Value) } : window;
    }

    private static void Label(SideViewScene scene, Readout readout, SideViewOptions options, Projection projection, Labels labels, LinePainter lines)
    {
        var names = new SideViewLabels(scene, projection, lines, readout, labels, options.TextSize);
        if (options.HasLines)
        {
            names.Lines();
        }

        if (options.Points is { } points)
        {
            names.Entered(points);
        }
        else if (options.NamesParts)
        {
            names.Bars();
            names.Parts();
        }

        if (options.HasLines)
        {
            names.InstantCentre();
        }

        if (options.NamesParts)
        {
            names.Gravity();
            names.Wheels();
        }
    }
}
