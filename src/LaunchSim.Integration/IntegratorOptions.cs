namespace LaunchSim.Integration;

/// <summary>Accuracy and limits of a run.</summary>
public sealed record IntegratorOptions
{
    /// <summary>Relative tolerance; above 0.</summary>
    public double Tolerance { get; init; } = 1e-8;

    /// <summary>
    /// Each state's scale: the absolute tolerance is the relative one times this. Null means 1 for all.
    /// </summary>
    public IReadOnlyList<double>? Scales { get; init; }

    /// <summary>
    /// How much a step may change <see cref="IEventSystem.Invariant"/>: a step that changes it by more counts as too
    /// inaccurate, whatever the states' own estimates say. Infinite for no such check.
    /// </summary>
    public double InvariantTolerance { get; init; } = double.PositiveInfinity;

    /// <summary>
    /// Steps shorter than this are not held to the invariant: there its change is rounding, or the solution has a corner
    /// that no step is short enough for, and the states' own estimates decide.
    /// </summary>
    public double InvariantStepFloor { get; init; }

    /// <summary>First step tried; null lets the integrator choose.</summary>
    public double? InitialStep { get; init; }

    /// <summary>Largest step; exceeded by up to 1 % where that saves a sliver before a declared instant or the end.</summary>
    public double MaximumStep { get; init; } = double.PositiveInfinity;

    /// <summary>Smallest step before the run is given up, relative to the time reached or to 1, whichever is larger.</summary>
    public double StepFloor { get; init; } = 1e-14;

    /// <summary>How closely an event is located, in the unit of the independent variable.</summary>
    public double EventTolerance { get; init; } = 1e-13;

    /// <summary>Most steps tried, accepted or not.</summary>
    public int MaximumSteps { get; init; } = 1_000_000;

    /// <summary>
    /// From this many steps on a run is given up that would take more than ten times <see cref="MaximumSteps"/> at its pace so
    /// far: it will not come to its end, and says so sooner. No such look when it is not below <see cref="MaximumSteps"/>.
    /// </summary>
    public int StepsBeforePace { get; init; } = int.MaxValue;
}
