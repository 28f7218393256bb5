using LaunchSim.Dynamics;

namespace LaunchSim.Figures.Families;

/// <summary>
/// Times and speeds at the marks: from release, and as a timing beam sees it, whose clock starts when the rear axle has
/// rolled the rollout. A mark is a place of the rear wheel centre.
/// </summary>
internal sealed class MarkFigures : IFigureFamily
{
    private static readonly FigureDefinition Rollout = new("rollout_time_s", "Clock starts", FigureUnit.Time,
        "when the rear axle has rolled the rollout and a timing beam's clock starts; 0 without rollout");

    private readonly Mark[] _marks;

    /// <summary>Declares the figures of a number of marks.</summary>
    /// <param name="marks">How many.</param>
    public MarkFigures(int marks)
    {
        _marks = new Mark[marks];
        for (int i = 0; i < marks; i++)
        {
            _marks[i] = new Mark(i + 1);
        }

        Definitions = [Rollout, .. _marks.SelectMany(mark => mark.Definitions)];
    }

    public string Title => "Marks";

    public IReadOnlyList<FigureDefinition> Definitions { get; }

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        // The standing car may be a rounding error behind X = 0: without rollout the clock starts at the release.
        double rollout = launch.Settings.Rollout;
        double start = rollout > 0 ? launch.FirstAt(Signal.RearPlace, rollout) : 0;
        figures.Set(Rollout, start, "the rear axle never rolled the rollout");
        for (int i = 0; i < _marks.Length; i++)
        {
            _marks[i].Read(launch, figures, launch.Settings.Marks[i], rollout, start);
        }
    }

    private sealed class Mark(int number)
    {
        private const string NotReached = "not reached in this run";

        private readonly FigureDefinition
            _distance = new($"mark_{number}_distance_m", $"Mark {number}", FigureUnit.Length, "where the mark is, by the rear axle"),
            _time = new($"mark_{number}_time_s", $"Mark {number}, from release", FigureUnit.Time, "time from release to the mark"),
            _beam = new($"mark_{number}_beam_time_s", $"Mark {number}, by the beam", FigureUnit.Time, "time to the mark on a clock that starts when the rear axle has rolled the rollout"),
            _speed = new($"mark_{number}_speed_mps", $"Mark {number}, speed", FigureUnit.Speed, "speed of the sprung CG at the mark");

        public IEnumerable<FigureDefinition> Definitions => [_distance, _time, _beam, _speed];

        public void Read(LaunchReading launch, FigureWriter figures, double place, double rollout, double start)
        {
            figures.Set(_distance, place);
            if (!figures.Wants(_time, _beam, _speed))
            {
                return;
            }

            double time = launch.FirstAt(Signal.RearPlace, place);
            figures.Set(_time, time, NotReached);
            figures.Set(_beam, place < rollout ? double.NaN : time - start, place < rollout ? "the mark lies within the rollout" : NotReached);
            if (!figures.Wants(_speed))
            {
                return;
            }

            if (double.IsNaN(time))
            {
                figures.None(_speed, NotReached);
                return;
            }

            launch.Solution.At(time, out Observation seen);
            figures.Set(_speed, seen.Speed);
        }
    }
}
