namespace LaunchSim.Charts.Studies;

/// <summary>One set-up and how its score is put together.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Shares">What each aim adds to the score, in the order of the aims; none when it has no score.</param>
/// <param name="Note">What else is to be said of it, in few words; may be empty.</param>
/// <param name="IsPresent">Whether it is the set-up as it stands.</param>
public sealed record ScoreBar(string Name, IReadOnlyList<double> Shares, string Note, bool IsPresent);

/// <summary>A point of a front.</summary>
/// <param name="X">Along the axis.</param>
/// <param name="Y">Up the axis.</param>
public readonly record struct FrontPoint(double X, double Y);

/// <summary>Set-ups of which none is beaten in both of two figures, and two that are looked for among them.</summary>
/// <param name="Caption">What the vertical axis measures, with its unit.</param>
/// <param name="Along">What the horizontal axis measures, with its unit.</param>
/// <param name="Points">The set-ups, rising along the axis.</param>
/// <param name="Present">The set-up as it stands; null when it is not known.</param>
/// <param name="Best">The best by the score; null when there is none.</param>
public sealed record FrontCourse(string Caption, string Along, IReadOnlyList<FrontPoint> Points, FrontPoint? Present, FrontPoint? Best);
