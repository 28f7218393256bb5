using System.Collections;

namespace LaunchSim.Figures;

/// <summary>A thing that happens in a launch, from one instant until another.</summary>
public enum LaunchEventKind
{
    /// <summary>Rear dampers in their top stop. Amount: largest stop force, N per side.</summary>
    RearTopStop,

    /// <summary>Rear dampers in their bottom stop. Amount: largest stop force, N per side.</summary>
    RearBottomStop,

    /// <summary>Front dampers in their top stop. Amount: largest stop force, N per side.</summary>
    FrontTopStop,

    /// <summary>Front dampers in their bottom stop. Amount: largest stop force, N per side.</summary>
    FrontBottomStop,

    /// <summary>Front tyres without load, from leaving until landing. Amount: greatest height of the wheel centre above the free radius, m.</summary>
    FrontTireOff,

    /// <summary>Rear tyres without load, from leaving until landing. Amount: greatest height of the wheel centre above the free radius, m.</summary>
    RearTireOff,

    /// <summary>Rear slip ratio beyond the tyre's peak, either way. Amount: the largest slip ratio.</summary>
    RearSlipPastPeak,

    /// <summary>Rear springs loose: at their free length, without force.</summary>
    RearSpringLoose,

    /// <summary>Front springs loose: at their free length, without force.</summary>
    FrontSpringLoose,

    /// <summary>Wheelie bar on the ground. Amount: its largest force, N.</summary>
    WheelieBar,

    /// <summary>Clutch locked, until it lets go.</summary>
    ClutchLocked,

    /// <summary>A shift, until the next gear is in. Amount: the number of the gear that goes in, the first being 1.</summary>
    Shift,

    /// <summary>Rear tyres so heavily loaded that their grip stands on its floor of a fifth.</summary>
    RearGripFloor,

    /// <summary>Front tyres so heavily loaded that their grip stands on its floor of a fifth.</summary>
    FrontGripFloor,
}

/// <summary>One thing that happened.</summary>
/// <param name="Kind">What.</param>
/// <param name="Time">When it began, s; 0 when it held from the release on.</param>
/// <param name="Until">When it ended, s; null when it still held where the run ended.</param>
/// <param name="Amount">How hard, how far or which, as the kind says; null where the kind has no such number.</param>
/// <param name="AmountTime">When that was, s; null likewise.</param>
public readonly record struct LaunchEvent(LaunchEventKind Kind, double Time, double? Until, double? Amount, double? AmountTime);

/// <summary>What happened in a launch, in the order in which it began. Immutable.</summary>
public sealed class LaunchEvents : IReadOnlyList<LaunchEvent>
{
    private readonly List<LaunchEvent> _events;

    internal LaunchEvents(List<LaunchEvent> events) => _events = events;

    /// <inheritdoc/>
    public int Count => _events.Count;

    /// <inheritdoc/>
    public LaunchEvent this[int index] => _events[index];

    /// <summary>The first event of a kind, or null.</summary>
    /// <param name="kind">The kind.</param>
    public LaunchEvent? First(LaunchEventKind kind)
    {
        foreach (LaunchEvent item in _events)
        {
            if (item.Kind == kind)
            {
                return item;
            }
        }

        return null;
    }

    /// <summary>How often a kind happened.</summary>
    /// <param name="kind">The kind.</param>
    public int CountOf(LaunchEventKind kind)
    {
        int count = 0;
        foreach (LaunchEvent item in _events)
        {
            count += item.Kind == kind ? 1 : 0;
        }

        return count;
    }

    /// <summary>The event of a kind with the largest amount, or null: the hardest contact, the highest lift.</summary>
    /// <param name="kind">The kind.</param>
    public LaunchEvent? Hardest(LaunchEventKind kind)
    {
        LaunchEvent? hardest = null;
        foreach (LaunchEvent item in _events)
        {
            if (item.Kind == kind && (hardest is null || item.Amount > hardest.Value.Amount))
            {
                hardest = item;
            }
        }

        return hardest;
    }

    /// <summary>How long a kind held in all, s.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="duration">Where the run ended, s.</param>
    public double TotalTime(LaunchEventKind kind, double duration)
    {
        double total = 0;
        foreach (LaunchEvent item in _events)
        {
            total += item.Kind == kind ? (item.Until ?? duration) - item.Time : 0;
        }

        return total;
    }

    /// <inheritdoc/>
    public IEnumerator<LaunchEvent> GetEnumerator() => _events.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
