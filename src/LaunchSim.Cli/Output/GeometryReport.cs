using LaunchSim.Cli.Terminal;
using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;

namespace LaunchSim.Cli.Output;

/// <summary>Everything that the side view of one scenario tells.</summary>
internal sealed record GeometryReport
{
    // More choices than this are a mistake in the file, not a table that a person reads.
    private const double MostChoices = 100_000;

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

    /// <summary>How many there are in all.</summary>
    public required int Choices { get; init; }

    /// <summary>Step of the centre of gravity, m, and what it is worth in percent.</summary>
    public required (double Step, double Percent) CentreOfGravity { get; init; }

    /// <summary>Step of a bar's end, m.</summary>
    public required double EndStep { get; init; }

    /// <summary>What that is worth at each end.</summary>
    public required IReadOnlyList<EndSensitivity> Ends { get; init; }

    /// <summary>Through the travel; null when the rear wheel centre's height is not known.</summary>
    public required IReadOnlyList<TravelRow>? Travel { get; init; }

    /// <summary>Reads it off a scenario.</summary>
    /// <param name="scenario">The scenario, whose linkage can be put together.</param>
    /// <param name="shop">Whether steps are to be round in inches or in millimetres.</param>
    /// <param name="percent">Percent to keep, or all.</param>
    /// <param name="length">Instant centre ahead to keep, m, or all.</param>
    public static GeometryReport Of(Scenario scenario, bool shop, Span? percent, Span? length)
    {
        GeometryPart part = scenario.Geometry;
        StandingCar? standing = scenario.Car is { } car ? StandingCar.Find(car) : null;
        SideView Measured(Linkage linkage) => SideView.AsMeasured(linkage, part.RearLoadedRadius, part.CentreOfGravityHeight, part.Wheelbase);
        SideView? Build(Linkage linkage) => standing is null ? Measured(linkage) : standing.Car.WithLinkage(linkage);

        SideView view = standing?.SideView() ?? Measured(part.Linkage);
        (string Path, LinkageBracket Bracket)[] brackets =
        [
            .. Places.Where(place => scenario.Brackets.ContainsKey(place.Path))
                .Select(place => (place.Path, new LinkageBracket(place.Point, scenario.Brackets[place.Path].Holes, scenario.Brackets[place.Path].Use))),
        ];
        LinkageBracket[] only = [.. brackets.Select(pair => pair.Bracket)];
        if (HoleTable.Choices(only) > MostChoices)
        {
            throw new InputException($"{scenario.SourceFile}: found brackets with more than 100,000 choices of holes together; leave out holes that you would not use");
        }

        IReadOnlyList<HoleRow> all = HoleTable.Of(view, only, Build);
        bool Kept(HoleRow row) => (percent is null && length is null)
            || (row.Line is { } line && percent?.Holds(line.Percent) != false && length?.Holds(line.InstantCentreAhead) != false);

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
}
