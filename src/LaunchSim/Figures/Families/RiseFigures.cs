namespace LaunchSim.Figures.Families;

/// <summary>How the body's ends come up over the ground, as a camera beside the track sees it, and which is first.</summary>
internal sealed class RiseFigures : IFigureFamily
{
    private const double Window = 0.4, LeastRise = 2e-3;

    private static readonly End Front = new("front", Signal.FrontRise), Rear = new("rear", Signal.RearRise);

    private static readonly FigureDefinition Lag = new("rise_lag_s", "Rise lag", FigureUnit.Time,
        "t50(front) − t50(rear): zero is together, positive means that the front is late");

    public string Title => "Rise";

    public IReadOnlyList<FigureDefinition> Definitions { get; } = [Lag, .. Front.Definitions, .. Rear.Definitions];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        bool lag = figures.Wants(Lag);
        double front = Front.Read(launch, figures, lag, out string? frontReason), rear = Rear.Read(launch, figures, lag, out string? rearReason);
        figures.Set(Lag, front - rear, rearReason ?? frontReason);
    }

    private sealed class End(string name, Signal signal)
    {
        private readonly FigureDefinition _peak = new($"{name}_rise_peak_m", $"{Capital(name)} rise, largest", FigureUnit.Length,
            $"largest height change over the ground of the body at the standing {name} wheel centre, first 0.4 s");

        private readonly FigureDefinition _t10 = Time(name, 10), _t50 = Time(name, 50), _t90 = Time(name, 90);
        private readonly InstantFigures _instants = new($"{name}_rise", $"{Capital(name)} rise", signal,
            $"height change over the ground of the body at the standing {name} wheel centre");

        public IEnumerable<FigureDefinition> Definitions => [_peak, _t10, _t50, _t90, .. _instants.Definitions];

        private readonly string _squats = $"the {name} end rose less than 2 mm in the first 0.4 s: a squat";

        /// <summary>Writes this end's figures and returns its t50, s, when that or one of them is wanted.</summary>
        public double Read(LaunchReading launch, FigureWriter figures, bool wantsHalf, out string? reason)
        {
            reason = null;
            _instants.Read(launch, figures);
            if (!wantsHalf && !figures.Wants(_peak, _t10, _t50, _t90))
            {
                return double.NaN;
            }

            double peak = launch.Largest(signal, 0, Window).Value;
            figures.Set(_peak, peak, NoFigure.NoRun);
            reason = peak >= LeastRise ? null
                : launch.Nodes == 0 ? NoFigure.NoRun
                : _squats;
            if (reason is not null)
            {
                figures.None(_t10, reason);
                figures.None(_t50, reason);
                figures.None(_t90, reason);
                return double.NaN;
            }

            Set(_t10, 0.1);
            Set(_t90, 0.9);
            double half = launch.FirstAt(signal, 0.5 * peak);
            figures.Set(_t50, half);
            return half;

            void Set(FigureDefinition figure, double share)
            {
                if (figures.Wants(figure))
                {
                    figures.Set(figure, launch.FirstAt(signal, share * peak));
                }
            }
        }

        private static FigureDefinition Time(string name, int percent) => new(
            $"{name}_rise_t{percent}_s", $"{Capital(name)} rise, {percent} %", FigureUnit.Time,
            $"first time with {percent} % of the {name} end's own largest rise in the first 0.4 s; none when that is under 2 mm");

        private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];
    }
}
