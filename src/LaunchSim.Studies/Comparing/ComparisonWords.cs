using LaunchSim.Reports.Numbers;

namespace LaunchSim.Studies.Comparing;

/// <summary>What a comparison comes to: for each set-up whether it is better, then why it launches differently.</summary>
public static class ComparisonWords
{
    /// <summary>The sentences on one set-up.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="difference">One of its differences.</param>
    /// <param name="readout">The units.</param>
    public static IReadOnlyList<string> Of(Comparison comparison, SetUpDifference difference, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(difference);
        string verdict = VerdictWords.Of(difference, comparison.Aims, readout);
        return difference.IsSame ? [verdict] : [verdict, .. CauseWords.Of(difference, readout)];
    }
}
