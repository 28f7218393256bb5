using LaunchSim.Launch;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Vehicle;

namespace LaunchSim.Passes.Fitting;

/// <summary>What was seen of a pass as residuals.</summary>
internal sealed class SeenResiduals
{
    private readonly int _count;
    private SeenResiduals(int count) => _count = count;
    public int Count => _count;
    public bool Any => _count > 0;
    public bool HasClock => _count > 0;
    public double ClockSd => _count;
    public static SeenResiduals Of(SeenFacts seen) => new(0);
    public void Write(LaunchSolution launch, RunSettings settings, double shift, Span<double> residuals) => residuals[.._count].Clear();
}
