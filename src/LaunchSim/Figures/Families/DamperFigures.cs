namespace LaunchSim.Figures.Families;

/// <summary>How fast the dampers move and how their time is shared out.</summary>
internal sealed class DamperFigures : IFigureFamily
{
    /// <summary>Half an inch a second, m/s: slower than this counts as still.</summary>
    private const double Still = 0.5 * 0.0254;

    private static readonly End Front = new("front", Signal.FrontDamperSpeed), Rear = new("rear", Signal.RearDamperSpeed);

    public string Title => "Dampers";

    public IReadOnlyList<FigureDefinition> Definitions { get; } = [.. Front.Definitions, .. Rear.Definitions];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        Front.Read(launch, figures);
        Rear.Read(launch, figures);
    }

    private sealed class End(string name, Signal speed)
    {
        private readonly FigureDefinition
            _extension = new($"{name}_damper_extension_speed_largest_mps", $"{Capital(name)} damper, fastest extension", FigureUnit.Speed,
                $"largest shaft speed of the {name} dampers getting longer; 0 when they never do"),
            _compression = new($"{name}_damper_compression_speed_largest_mps", $"{Capital(name)} damper, fastest compression", FigureUnit.Speed,
                $"largest shaft speed of the {name} dampers getting shorter, as a positive number; 0 when they never do"),
            _opening = new($"{name}_damper_opening_time_s", $"{Capital(name)} damper opening", FigureUnit.Time,
                $"total time in which the {name} dampers get longer by more than 0.5 in/s"),
            _closing = new($"{name}_damper_closing_time_s", $"{Capital(name)} damper closing", FigureUnit.Time,
                $"total time in which the {name} dampers get shorter by more than 0.5 in/s"),
            _still = new($"{name}_damper_still_time_s", $"{Capital(name)} damper still", FigureUnit.Time,
                $"total time in which the {name} dampers move by no more than 0.5 in/s");

        public IEnumerable<FigureDefinition> Definitions => [_extension, _compression, _opening, _closing, _still];

        public void Read(LaunchReading launch, FigureWriter figures)
        {
            if (!figures.Wants(_extension, _compression, _opening, _closing, _still))
            {
                return;
            }

            // Shorter than −0.5 in/s is what is not above −0.5 in/s.
            double opening = launch.TimeAbove(speed, Still), closing = launch.Duration - launch.TimeAbove(speed, -Still);
            figures.Set(_extension, Math.Max(0, launch.Largest(speed).Value), NoFigure.NoRun);
            figures.Set(_compression, Math.Max(0, -launch.Smallest(speed).Value), NoFigure.NoRun);
            figures.Set(_opening, opening);
            figures.Set(_closing, closing);
            figures.Set(_still, launch.Duration - opening - closing);
        }

        private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];
    }
}
