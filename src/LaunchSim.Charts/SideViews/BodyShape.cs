using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.SideViews;

/// <summary>A faint shape of some car, so that front and rear are told apart at a glance. Nobody has measured it, and it says so.</summary>
public static class BodyShape
{
    /// <summary>Its height in wheelbases.</summary>
    public const double Height = 0.43;

    /// <summary>What a legend says of it.</summary>
    public const string Note = "The grey body is no measurement.";

    // Ahead of the rear axle and above the ground, in wheelbases, clockwise from the rear's lower edge.
    private static readonly (double Ahead, double Up)[] Shape =
    [
        (-0.135, 0.085), (-0.155, 0.15), (-0.15, 0.265), (-0.02, 0.295), (0.13, 0.40), (0.22, 0.425), (0.40, 0.425), (0.50, 0.395),
        (0.66, 0.30), (0.95, 0.275), (1.10, 0.235), (1.15, 0.17), (1.145, 0.08), (0.85, 0.065), (0.15, 0.065),
    ];

    private const int Pieces = 6;

    /// <summary>The shape as a closed line, m: ahead of the rear axle and above the ground.</summary>
    /// <param name="wheelbase">Wheelbase, m.</param>
    public static IReadOnlyList<Point> Outline(double wheelbase)
    {
        int count = Shape.Length;
        var points = new Point[count * Pieces];
        for (int i = 0; i < points.Length; i++)
        {
            (double a0, double u0) = Shape[((i / Pieces) + count - 1) % count];
            (double a1, double u1) = Shape[i / Pieces];
            (double a2, double u2) = Shape[((i / Pieces) + 1) % count];
            (double a3, double u3) = Shape[((i / Pieces) + 2) % count];
            double t = (double)(i % Pieces) / Pieces;
            points[i] = new Point(wheelbase * Between(a0, a1, a2, a3, t), wheelbase * Between(u0, u1, u2, u3, t));
        }

        return points;
    }

    /// <summary>The shape in the picture.</summary>
    /// <param name="projection">Where things are.</param>
    /// <param name="wheelbase">Wheelbase, m.</param>
    internal static ScreenPoint[] Of(Projection projection, double wheelbase) =>
        [.. Outline(wheelbase).Select(point => projection.At(point.Ahead, point.Up))];

    // A smooth curve through all four points (Catmull and Rom's, from memory).
    private static double Between(double before, double from, double to, double after, double t) =>
        0.5 * ((2 * from) + ((to - before) * t) + (((2 * before) - (5 * from) + (4 * to) - after) * t * t) + (((3 * from) - before - (3 * to) + after) * t * t * t));
}
