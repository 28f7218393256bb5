namespace LaunchSim.Charts.Measure;

/// <summary>A line to write on.</summary>
/// <param name="Before">What stands before it.</param>
/// <param name="Unit">What stands after it.</param>
internal sealed record Blank(string Before, string Unit);

/// <summary>One thing to measure and write down.</summary>
/// <param name="Words">What it is, in plain words.</param>
/// <param name="Keys">The scenario keys that take it, one for all its lines or one a line.</param>
/// <param name="Lines">Its lines, row by row.</param>
internal sealed record WriteIn(string Words, IReadOnlyList<string> Keys, params IReadOnlyList<Blank>[] Lines)
{
    /// <summary>A point: ahead and up.</summary>
    /// <param name="words">What it is.</param>
    /// <param name="key">Its key.</param>
    /// <param name="unit">Unit of length.</param>
    public static WriteIn Point(string words, string key, string unit) => new(words, [key], [new Blank("ahead", ""), new Blank("up", unit)]);

    /// <summary>One number.</summary>
    /// <param name="words">What it is.</param>
    /// <param name="key">Its key.</param>
    /// <param name="before">What stands before the line.</param>
    /// <param name="unit">Its unit.</param>
    public static WriteIn Number(string words, string key, string before, string unit) => new(words, [key], [new Blank(before, unit)]);
}
