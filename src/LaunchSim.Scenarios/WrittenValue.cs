namespace LaunchSim.Scenarios;

/// <summary>A value as it was written, at its path.</summary>
/// <param name="Path">Such as <c>rear.linkage.upper.body.use</c>; every hole and every row of clicks has its own.</param>
/// <param name="Text">The value in the notation of the file.</param>
public sealed record WrittenValue(string Path, string Text)
{
    // Two spellings of one number may differ by this much once they are in SI, as a share.
    private const double Rounding = 1e-12;

    /// <summary>The numbers in SI; empty for words.</summary>
    internal double[] Numbers { get; init; } = [];

    /// <summary>Whether two values are the same to whoever reads the file: 12 in and 1 ft are.</summary>
    /// <param name="other">The other value.</param>
    public bool IsSameAs(WrittenValue other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (Numbers.Length == 0 || Numbers.Length != other.Numbers.Length)
        {
            return Numbers.Length == other.Numbers.Length && Text == other.Text;
        }

        for (int i = 0; i < Numbers.Length; i++)
        {
            if (Math.Abs(Numbers[i] - other.Numbers[i]) > Rounding * Math.Abs(Numbers[i]))
            {
                return false;
            }
        }

        return true;
    }
}
