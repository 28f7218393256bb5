namespace LaunchSim.Passes.Seasons;

/// <summary>What a sentence on a season is about.</summary>
public enum LessonKind
{
    /// <summary>How far predictions are to be trusted.</summary>
    Trust,

    /// <summary>What a change went with.</summary>
    Change,

    /// <summary>Tyre shake.</summary>
    Shake,

    /// <summary>What somebody noted.</summary>
    Note,
}

/// <summary>One thing that a season shows, in a sentence.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Text">The sentence.</param>
public sealed record SeasonLesson(LessonKind Kind, string Text);
