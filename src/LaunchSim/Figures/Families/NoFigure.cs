namespace LaunchSim.Figures.Families;

/// <summary>Reasons for which a figure has no value that several families give.</summary>
internal static class NoFigure
{
    public const string NoRun = "the launch did not begin";

    public const string TooShort = "the run ended before";
}
