using LaunchSim.Reports;

namespace LaunchSim.Studies.Comparing;

/// <summary>
/// What makes the difference between two launches, read off their solutions: on which path the rear tyres' load changed, in
/// which part of the travel they part, and which dampers took more or less. What was edited in the files is not asked.
/// </summary>
public sealed record Cause
{
    /// <summary>The first part of a launch, in which the dampers decide who comes up first, s.</summary>
    public const double First = 0.15;

    /// <summary>
    /// Changes of load below this share of the first car's standing rear load are not of note; of the dampers' force on the
    /// mean half of it. A choice of this project: a fiftieth is what a set of scales shows twice the same.
    /// </summary>
    public const double LeastShare = 0.02;

    /// <summary>The rear tyres' load: at the hit, over the first part, at the low point; those that both launches reached.</summary>
    public required IReadOnlyList<LoadChange> Loads { get; init; }

    /// <summary>Where the two part; null when they do not.</summary>
    public required Parting? Parting { get; init; }

    /// <summary>The dampers in the first part, then from there to the later low point.</summary>
    public required IReadOnlyList<DamperChange> Dampers { get; init; }

    /// <summary>How much of a load is of note, N, axle.</summary>
    public required double LeastLoad { get; init; }

    /// <summary>How much of the dampers' force on the mean is of note, N, both sides.</summary>
    public double LeastDamperForce => 0.5 * LeastLoad;

    /// <summary>How long the first part is, s: less than <see cref="First"/> when a launch stopped before.</summary>
    public required double FirstPart { get; init; }

    /// <summary>The changes of load that are of note.</summary>
    public IEnumerable<LoadChange> NotedLoads => Loads.Where(load => Math.Abs(load.Change) >= LeastLoad);

    /// <summary>
    /// The dampers whose force changed most, if that is of note: those of the first part before the later ones, for what
    /// comes later follows from it.
    /// </summary>
    public DamperChange? NotedDamper => Dampers.Where(damper => Math.Abs(damper.MeanForce) >= LeastDamperForce)
        .OrderBy(damper => damper.From).ThenByDescending(damper => Math.Abs(damper.MeanForce)).FirstOrDefault();

    /// <summary>Whether anything of note changed.</summary>
    public bool IsOfNote => Parting is not null || NotedLoads.Any() || NotedDamper is not null;

    /// <summary>Looks for it.</summary>
    /// <param name="first">The one launch; not read by another thread meanwhile.</param>
    /// <param name="other">The other, likewise.</param>
    public static Cause Of(LaunchOutcome first, LaunchOutcome other)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(other);
        double end = Math.Min(first.Solution.Duration, other.Solution.Duration), part = Math.Min(First, end);
        var loads = new List<LoadChange>();
        Add(LoadMoment.Hit, At(first, "hit"), At(other, "hit"));
        if (part > 0)
        {
            Add(LoadMoment.First, LoadShares.Mean(first.Solution, part), LoadShares.Mean(other.Solution, part));
        }

        Add(LoadMoment.LowPoint, At(first, "lowest_rear_load_after_hit"), At(other, "lowest_rear_load_after_hit"));
        double low = Math.Min(end, Math.Max(TimeOf(first), TimeOf(other)));
        return new Cause
        {
            Loads = loads,
            Parting = Parting.Of(first.Solution, other.Solution),
            Dampers = [.. Damped(0, part), .. Damped(part, low)],
            LeastLoad = LeastShare * first.Solution.Car.Standing.RearLoad,
            FirstPart = part,
        };

        void Add(LoadMoment moment, LoadShares? before, LoadShares? after)
        {
            if (before is { } one && after is { } two)
            {
                loads.Add(new LoadChange(moment, one, two));
            }
        }

        DamperChange[] Damped(double from, double until)
        {
            if (!(until > from))
            {
                return [];
            }

            DamperWork[] before = DamperWork.Of(first.Solution, from, until), after = DamperWork.Of(other.Solution, from, until);
            return [.. Enum.GetValues<DamperMotion>().Select(motion => new DamperChange(motion, from, until, before[(int)motion], after[(int)motion]))];
        }
    }

    private static double TimeOf(LaunchOutcome run) => run.Figures["lowest_rear_load_after_hit_time_s"] ?? 0;

    private static LoadShares? At(LaunchOutcome run, string figure) =>
        run.Figures[$"{figure}_n"] is { } load && run.Figures[$"{figure}_time_s"] is { } time ? LoadShares.At(run.Solution, time, load) : null;
}
