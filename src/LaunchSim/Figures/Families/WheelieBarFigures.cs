namespace LaunchSim.Figures.Families;

/// <summary>Whether the wheelie bar is used.</summary>
internal sealed class WheelieBarFigures : IFigureFamily
{
    private static readonly FigureDefinition
        First = new("wheelie_bar_first_s", "Wheelie bar touches", FigureUnit.Time, "first time at which the bar's wheel is on the ground"),
        Total = new("wheelie_bar_time_s", "Wheelie bar on the ground", FigureUnit.Time, "total time with the bar's wheel on the ground"),
        Force = new("wheelie_bar_force_n", "Wheelie bar, hardest", FigureUnit.Force, "largest force of the bar, one for the car");

    public string Title => "Wheelie bar";

    public IReadOnlyList<FigureDefinition> Definitions { get; } = [First, Total, Force];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        LaunchEvents spells = launch.Spells;
        string reason = launch.Solution.Car.Model.HasWheelieBar ? "the bar never touches" : "there is no wheelie bar";
        figures.Set(First, spells.First(LaunchEventKind.WheelieBar)?.Time ?? double.NaN, reason);
        figures.Set(Total, spells.TotalTime(LaunchEventKind.WheelieBar, launch.Duration));
        if (figures.Wants(Force))
        {
            figures.Set(Force, launch.HardestAmount(LaunchEventKind.WheelieBar), reason);
        }
    }
}
