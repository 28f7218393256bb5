using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.SideViews;

/// <summary>From metres to the picture, the same scale both ways.</summary>
internal sealed class Projection
{
    private readonly double _left, _ground;

    /// <summary>Fits a window into an area, in its middle and on its bottom.</summary>
    /// <param name="area">Where it is drawn.</param>
    /// <param name="window">What is shown.</param>
    public Projection(OxyRect area, SideViewWindow window)
    {
        Scale = Math.Min(area.Width / window.Width, area.Height / window.Tall);
        Area = area;
        _left = area.Left + (0.5 * (area.Width - (Scale * window.Width))) - (Scale * window.Left);
        _ground = area.Bottom + (Scale * window.Bottom);
    }

    /// <summary>Where it is drawn.</summary>
    public OxyRect Area { get; }

    /// <summary>The picture's units for each metre.</summary>
    public double Scale { get; }

    /// <summary>Where the ground is in the picture.</summary>
    public double Ground => _ground;

    /// <summary>Where a point is in the picture.</summary>
    /// <param name="point">The point.</param>
    public ScreenPoint At(Point point) => At(point.Ahead, point.Up);

    /// <summary>Where a point is in the picture.</summary>
    /// <param name="ahead">Ahead of the rear wheel centre, m.</param>
    /// <param name="up">Above the ground, m.</param>
    public ScreenPoint At(double ahead, double up) => new(_left + (Scale * ahead), _ground - (Scale * up));

    /// <summary>Whether a point is within the area.</summary>
    /// <param name="point">The point.</param>
    /// <param name="margin">How far from the edges at least.</param>
    public bool Shows(Point point, double margin = 0)
    {
        ScreenPoint at = At(point);
        return at.X >= Area.Left + margin && at.X <= Area.Right - margin && at.Y >= Area.Top + margin && at.Y <= Area.Bottom - margin;
    }
}
