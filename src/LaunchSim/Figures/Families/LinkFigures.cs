namespace LaunchSim.Figures.Families;

/// <summary>The largest pull and push in each bar, per side.</summary>
internal sealed class LinkFigures : IFigureFamily
{
    private const string NoBars = "a ladder bar has no separate bars";

    private static readonly FigureDefinition
        UpperPull = new("upper_link_pull_n", "Upper bar, largest pull", FigureUnit.Force, "largest pull in an upper bar, per side; 0 when it only pushes"),
        UpperPush = new("upper_link_push_n", "Upper bar, largest push", FigureUnit.Force, "largest push in an upper bar, per side, as a positive number; 0 when it only pulls"),
        LowerPull = new("lower_link_pull_n", "Lower bar, largest pull", FigureUnit.Force, "largest pull in a lower bar, per side; 0 when it only pushes"),
        LowerPush = new("lower_link_push_n", "Lower bar, largest push", FigureUnit.Force, "largest push in a lower bar, per side, as a positive number; 0 when it only pulls");

    public string Title => "Bars";

    public IReadOnlyList<FigureDefinition> Definitions { get; } = [UpperPull, UpperPush, LowerPull, LowerPush];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        Write(Signal.UpperLink, UpperPull, UpperPush);
        Write(Signal.LowerLink, LowerPull, LowerPush);

        void Write(Signal signal, FigureDefinition pull, FigureDefinition push)
        {
            if (!figures.Wants(pull, push))
            {
                return;
            }

            Extremum most = launch.Largest(signal), least = launch.Smallest(signal);
            string reason = launch.Nodes == 0 ? NoFigure.NoRun : NoBars;
            figures.Set(pull, most.Exists ? Math.Max(0, most.Value) : double.NaN, reason);
            figures.Set(push, least.Exists ? Math.Max(0, -least.Value) : double.NaN, reason);
        }
    }
}
