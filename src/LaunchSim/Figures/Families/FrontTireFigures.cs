namespace LaunchSim.Figures.Families;

/// <summary>Whether and how far the front tyres leave the ground, and the rear ones too.</summary>
internal sealed class FrontTireFigures : IFigureFamily
{
    private const string StaysDown = "the front tyres stay on the ground";

    private static readonly FigureDefinition
        Lowest = new("front_load_lowest_n", "Front load, lowest", FigureUnit.Force, "lowest front tyre load, axle"),
        LowestTime = new("front_load_lowest_time_s", "Front load, lowest, at", FigureUnit.Time, "first time at which it is that low"),
        Leaves = new("front_tire_leaves_s", "Front tyres first leave", FigureUnit.Time, "first time at which the front tyre load reaches 0"),
        Lands = new("front_tire_lands_s", "Front tyres first land", FigureUnit.Time, "first time after that with a front tyre load above 0"),
        Zero = new("front_tire_zero_load_time_s", "Front tyres in the air", FigureUnit.Time, "total time without front tyre load"),
        Highest = new("front_tire_highest_clearance_m", "Front tyres, highest", FigureUnit.Length,
            "greatest height of the front wheel centre above the free radius; negative when the tyre is never out of its squash"),
        RearZero = new("rear_tire_zero_load_time_s", "Rear tyres in the air", FigureUnit.Time, "total time without rear tyre load");

    public string Title => "Front tyres";

    public IReadOnlyList<FigureDefinition> Definitions { get; } = [Lowest, LowestTime, Leaves, Lands, Zero, Highest, RearZero];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        if (figures.Wants(Lowest, LowestTime))
        {
            Extremum lowest = launch.Smallest(Signal.FrontLoad);
            figures.Set(Lowest, lowest.Value, NoFigure.NoRun);
            figures.Set(LowestTime, lowest.Time, NoFigure.NoRun);
        }

        if (figures.Wants(Highest))
        {
            figures.Set(Highest, launch.Largest(Signal.FrontClearance).Value, NoFigure.NoRun);
        }

        LaunchEvent? off = launch.Spells.First(LaunchEventKind.FrontTireOff);
        figures.Set(Leaves, off?.Time ?? double.NaN, StaysDown);
        figures.Set(Lands, off?.Until ?? double.NaN, off is null ? StaysDown : "the front tyres are still in the air where the run ends");
        figures.Set(Zero, launch.Spells.TotalTime(LaunchEventKind.FrontTireOff, launch.Duration));
        figures.Set(RearZero, launch.Spells.TotalTime(LaunchEventKind.RearTireOff, launch.Duration));
    }
}
