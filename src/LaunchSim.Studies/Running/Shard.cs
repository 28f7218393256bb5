using System.Globalization;

namespace LaunchSim.Studies.Running;

/// <summary>One of the parts into which a study's rows are cut, to be run apart: the rows stay together in their order.</summary>
/// <param name="Number">Which part, from 1.</param>
/// <param name="Of">Of how many.</param>
public readonly record struct Shard(int Number, int Of)
{
    /// <summary>The whole study.</summary>
    public static Shard Whole { get; } = new(1, 1);

    /// <summary>Whether it is the whole study.</summary>
    public bool IsWhole => Of == 1;

    /// <summary>The rows of this part.</summary>
    /// <param name="rows">All rows of the study.</param>
    /// <returns>The first row and the one after the last.</returns>
    public (long From, long To) Rows(long rows) =>
        ((long)((Int128)rows * (Number - 1) / Of), (long)((Int128)rows * Number / Of));

    /// <summary>Reads <c>k/n</c>.</summary>
    /// <param name="text">As it was written.</param>
    /// <param name="shard">The part.</param>
    /// <returns>False when it is not a part of a whole.</returns>
    public static bool TryParse(string text, out Shard shard)
    {
        shard = Whole;
        string[] parts = text.Split('/');
        if (parts.Length != 2
            || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out int of)
            || number < 1 || number > of)
        {
            return false;
        }

        shard = new Shard(number, of);
        return true;
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Number}/{Of}");
}
