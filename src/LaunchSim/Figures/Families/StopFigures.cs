namespace LaunchSim.Figures.Families;

/// <summary>Whether the dampers reach their stops, how often, first when, and how hard. The single contacts are events.</summary>
internal sealed class StopFigures : IFigureFamily
{
    private static readonly Stop[] Stops =
    [
        new("front_top_stop", "front dampers", "top out", LaunchEventKind.FrontTopStop),
        new("front_bottom_stop", "front dampers", "bottom", LaunchEventKind.FrontBottomStop),
        new("rear_top_stop", "rear dampers", "top out", LaunchEventKind.RearTopStop),
        new("rear_bottom_stop", "rear dampers", "bottom", LaunchEventKind.RearBottomStop),
    ];

    public string Title => "Damper stops";

    public IReadOnlyList<FigureDefinition> Definitions { get; } = [.. Stops.SelectMany(stop => stop.Definitions)];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        foreach (Stop stop in Stops)
        {
            stop.Read(launch, figures);
        }
    }

    private sealed class Stop(string key, string who, string does, LaunchEventKind kind)
    {
        private readonly string _never = $"the {who} never {does}";

        private readonly FigureDefinition
            _count = new($"{key}_count", $"{Capital(who)} {does}, times", FigureUnit.Count, $"how often the {who} {does}"),
            _first = new($"{key}_first_s", $"{Capital(who)} {does}, first", FigureUnit.Time, $"first time at which the {who} {does}"),
            _force = new($"{key}_force_n", $"{Capital(who)} {does}, hardest", FigureUnit.Force, $"largest force of the stop when the {who} {does}, per side");

        public IEnumerable<FigureDefinition> Definitions => [_count, _first, _force];

        public void Read(LaunchReading launch, FigureWriter figures)
        {
            LaunchEvents spells = launch.Spells;
            figures.Set(_count, spells.CountOf(kind));
            figures.Set(_first, spells.First(kind)?.Time ?? double.NaN, _never);
            if (figures.Wants(_force))
            {
                figures.Set(_force, launch.HardestAmount(kind), _never);
            }
        }

        private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
    }
}
