using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;

namespace LaunchSim.Reports;

/// <summary>Everything that the side view of one scenario tells.</summary>
public sealed record GeometryReport
{
    /// <summary>How many choices of holes a table holds at the most; more are a mistake in the file, not a table that a person reads.</summary>
    public const double MostChoices = 100_000;

    private static readonly (string Path, LinkagePoint Point)[] Places =
    [
        ("rear.linkage.lower.axle", LinkagePoint.LowerAxle),
        ("rear.linkage.lower.body", LinkagePoint.LowerBody),
        ("rear.linkage.upper.axle", LinkagePoint.UpperAxle),
        ("rear.linkage.upper.body", LinkagePoint.UpperBody),
        ("rear.linkage.pivot", LinkagePoint.Pivot),
    ];

    /// <summary>The scenario.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The side view with the holes in use.</summary>
    public required SideView View { get; init; }

    /// <summary>Whether it is the standing car with its settings; otherwise the car as measured.</summary>
    public required bool IsStanding { get; init; }

    /// <summary>The paths of the brackets with holes.</summary>
    public required IReadOnlyList<string> Brackets { get; init; }

    /// <summary>The choices of holes that were to be kept.</summary>
    public required IReadOnlyList<HoleRow> Holes { get; init; }

    /// <summary>How many choices there are in all, those included that were not to be kept.</summary>
    public required int Choices { get; init; }

    /// <summary>Step of the centre of gravity, m, and what it is worth in percent.</summary>
    public required (double Step, double Percent) CentreOfGravity { get; init; }

    /// <summary>Step of a bar's end, m.</summary>
    public required double EndStep { get; init; }

    /// <summary>What that is worth at each end.</summary>
    public required IReadOnlyList<EndSensitivity> Ends { get; init; }

    /// <summary>Through the travel; null when the rear wheel centre's height is not known.</summary>
    public required IReadOnlyList<TravelRow>? Travel { get; init; }

    /// <summary>How many choices of holes a scenario's brackets have together.</summary>
    /// <param name="scenario">The scenario.</param>
    public static double ChoicesOf(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return HoleTable.Choices([.. BracketsOf(scenario).Select(pair => pair.Bracket)]);
    }

    /// <summary>Reads it off a scenario.</summary>
    /// <param name="scenario">The scenario, whose linkage can be put together.</param>
    /// <param name="shop">Whether steps are to be round in inches or in millimetres.</param>
    /// <param name="kept">Which static lines to keep in the table of holes; all when null.</param>
    /// <exception cref="ArgumentException">There are more than <see cref="MostChoices"/>.</exception>
    public static GeometryReport Of(Scenario scenario, bool shop, Func<StaticLine, bool>? kept = null)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        GeometryPart part = scenario.Geometry;
        StandingCar? standing = scenario.Car is { } car ? StandingCar.Find(car) : null;
        SideView Measured(Linkage linkage) => SideView.AsMeasured(linkage, part.RearLoadedRadius, part.CentreOfGravityHeight, part.Wheelbase);
        SideView? Build(Linkage linkage) => standing is null ? Measured(linkage) : standing.Car.WithLinkage(linkage);

        SideView view = standing?.SideView() ?? Measured(part.Linkage);
        (string Path, LinkageBracket Bracket)[] brackets = BracketsOf(scenario);
        LinkageBracket[] only = [.. brackets.Select(pair => pair.Bracket)];
        if (HoleTable.Choices(only) > MostChoices)
        {
            throw new ArgumentException("The brackets have too many choices of holes together.", nameof(scenario));
        }

        IReadOnlyList<HoleRow> all = HoleTable.Of(view, only, Build);
        bool Kept(HoleRow row) => kept is null || (row.Line is { } line && kept(line));

        double centreStep = shop ? 0.0254 : 0.010, endStep = shop ? 0.0254 / 16 : 0.001, travelStep = shop ? 0.0127 : 0.010;
        return new GeometryReport
        {
            Scenario = scenario,
            View = view,
            IsStanding = standing is not null,
            Brackets = [.. brackets.Select(pair => pair.Path)],
            Holes = [.. all.Where(Kept)],
            Choices = all.Count,
            CentreOfGravity = (centreStep, Sensitivity.ToCentreOfGravity(view, centreStep)),
            EndStep = endStep,
            Ends = Sensitivity.ToEnds(view, endStep, Build),
            Travel = part.RearLoadedRadius is null ? null
                : TravelTable.Of(view, travelStep, shop ? 6 : 8, shop ? 8 : 10, standing is null ? null : pose => standing.WithinTravel(pose)),
        };
    }

    /// <summary>The linkage's points with the paths of their coordinates: of a bracket those of the hole in use.</summary>
    internal static IEnumerable<(string Path, LinkagePoint Point)> PlacesOf(Scenario scenario)
    {
        IReadOnlyList<LinkagePoint> has = LinkagePoints.Of(scenario.Geometry.Linkage);
        return Places.Where(place => has.Contains(place.Point))
            .Select(place => (scenario.Brackets.TryGetValue(place.Path, out Bracket? bracket) ? $"{place.Path}.holes.{bracket.Use}" : place.Path, place.Point));
    }

    private static (string Path, LinkageBracket Bracket)[] BracketsOf(Scenario scenario) =>
    [
        .. Places.Where(place => scenario.Brackets.ContainsKey(place.Path))
            .Select(place => (place.Path, new LinkageBracket(place.Point, scenario.Brackets[place.Path].Holes, scenario.Brackets[place.Path].Use))),
    ];
}
