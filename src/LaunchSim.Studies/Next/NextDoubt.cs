using LaunchSim.Scenarios;
using LaunchSim.Studies.Doubting;

namespace LaunchSim.Studies.Next;

/// <summary>How sure it is that the changes of a study help, given what could not be measured.</summary>
/// <param name="Changes">The changes that were looked at: the best single ones and pairs.</param>
/// <param name="Help">What each does on the plausible cars, in their order.</param>
public sealed record NextDoubt(IReadOnlyList<NextChange> Changes, HelpResult Help)
{
    private const int MostSingles = 8, MostPairs = 2;

    /// <summary>The changes worth a look: the best single ones that come to the end of their launch, and the best pairs.</summary>
    /// <param name="result">What came of trying them on the scenario as it stands.</param>
    public static IReadOnlyList<NextChange> Worth(NextResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return [.. result.Singles.Where(change => change.Trouble is null).Take(MostSingles), .. result.Pairs.Take(MostPairs)];
    }

    /// <summary>Looks at them on plausible cars.</summary>
    /// <param name="result">What came of trying them on the scenario as it stands.</param>
    /// <param name="scenario">The scenario as it stands.</param>
    /// <param name="settings">How cars are drawn.</param>
    /// <param name="done">Told how many more cars are done; null when nobody wants to know.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static NextDoubt Of(NextResult result, Scenario scenario, DoubtSettings settings, Action<int>? done, CancellationToken cancellation)
    {
        IReadOnlyList<NextChange> changes = Worth(result);
        return new NextDoubt(changes, HelpShares.Of([scenario, .. changes.Select(change => change.Scenario!)], result.Aims, settings, holdsGrip: true, done, cancellation));
    }
}
