using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;

namespace LaunchSim.Reports;

/// <summary>
/// Where percent and instant centre may lie by the doubts that were entered of wheelbase, height of the centre of gravity
/// and the linkage's points: drawn again and again, so that it holds however crooked the geometry is.
/// </summary>
public sealed record GeometryDoubt
{
    private const int Draws = 400, Seed = 1;

    /// <summary>Static lines drawn by the doubts.</summary>
    public required IReadOnlyList<StaticLine> Lines { get; init; }

    /// <summary>How many draws were left out, since no linkage or no standing car could be made of them.</summary>
    public required int Failed { get; init; }

    /// <summary>Percent that one draw in forty stays below.</summary>
    public required double LowPercent { get; init; }

    /// <summary>Percent that one draw in forty exceeds.</summary>
    public required double HighPercent { get; init; }

    /// <summary>Whether points of the linkage or the wheelbase are in doubt, so that the instant centre may lie elsewhere.</summary>
    public required bool MovesInstantCentre { get; init; }

    /// <summary>Reads it off a scenario; null when none of these values is in doubt, or nothing can be made of any draw.</summary>
    /// <param name="scenario">The scenario, whose linkage can be put together.</param>
    public static GeometryDoubt? Of(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        GeometryPart part = scenario.Geometry;
        double height = HalfWidth(scenario, "car.cg_height"), wheelbase = HalfWidth(scenario, "car.wheelbase");
        (LinkagePoint Point, double Ahead, double Up)[] points = [.. GeometryReport.PlacesOf(scenario)
            .Select(place => (place.Point, HalfWidth(scenario, place.Path + ".ahead"), HalfWidth(scenario, place.Path + ".up")))
            .Where(place => place.Item2 > 0 || place.Item3 > 0)];
        if (height == 0 && wheelbase == 0 && points.Length == 0)
        {
            return null;
        }

        var normal = new Normal(Seed);
        var lines = new List<StaticLine>(Draws);
        for (int i = 0; i < Draws; i++)
        {
            // Half a half-width is the standard deviation.
            double cg = part.CentreOfGravityHeight + (0.5 * height * normal.Next()), length = part.Wheelbase + (0.5 * wheelbase * normal.Next());
            Linkage linkage = part.Linkage;
            foreach ((LinkagePoint point, double ahead, double up) in points)
            {
                Point at = linkage.Get(point);
                linkage = linkage.With(point, new Point(at.Ahead + (0.5 * ahead * normal.Next()), at.Up + (0.5 * up * normal.Next())));
            }

            if (cg > 0 && length > 0 && View(scenario, linkage, cg, length) is { CanBeAssembled: true, Line: var line } && double.IsFinite(line.Percent))
            {
                lines.Add(line);
            }
        }

        if (lines.Count == 0)
        {
            return null;
        }

        double[] percents = [.. lines.Select(line => line.Percent).Order()];
        int edge = percents.Length / 40;
        return new GeometryDoubt { Lines = lines, LowPercent = percents[edge], HighPercent = percents[^(1 + edge)], MovesInstantCentre = points.Length > 0, Failed = Draws - lines.Count };
    }

    private static SideView? View(Scenario scenario, Linkage linkage, double height, double wheelbase)
    {
        if (scenario.Car is not { } car)
        {
            return SideView.AsMeasured(linkage, scenario.Geometry.RearLoadedRadius, height, wheelbase);
        }

        car = car with { Chassis = car.Chassis with { CentreOfGravityHeight = height, Wheelbase = wheelbase } };
        return car.WithLinkage(linkage);
    }

    private static double HalfWidth(Scenario scenario, string path) =>
        scenario.Doubts.TryGetValue(path, out Doubt doubt) ? doubt.HalfWidth : 0;

    // Box and Muller's pairs; the same numbers at every call.
    private sealed class Normal(int seed)
    {
        private readonly Random _random = new(seed);
        private double _spare = double.NaN;

        public double Next()
        {
            if (!double.IsNaN(_spare))
            {
                double kept = _spare;
                _spare = double.NaN;
                return kept;
            }

            double radius = Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble()));
            (double sin, double cos) = Math.SinCos(2 * Math.PI * _random.NextDouble());
            _spare = radius * sin;
            return radius * cos;
        }
    }
}
