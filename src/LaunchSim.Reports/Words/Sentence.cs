namespace LaunchSim.Reports.Words;

/// <summary>One sentence of a report.</summary>
/// <param name="Key">
/// Which sentence it is, whatever its numbers: <c>rise.front_first</c>. Subject, then what is said of it. Keys keep their
/// meaning for ever, so that the same sentence can be counted over many cars.
/// </param>
/// <param name="Text">The sentence, with its final stop.</param>
public sealed record Sentence(string Key, string Text)
{
    /// <inheritdoc/>
    public override string ToString() => Text;
}
