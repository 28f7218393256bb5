namespace LaunchSim.Charts.Measure;

/// <summary>Which linkage there is to measure.</summary>
public enum LinkageKind
{
    /// <summary>A lower and an upper bar a side.</summary>
    FourLink,

    /// <summary>Ladder bars with one pivot a side.</summary>
    LadderBar,
}
