using System.Globalization;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>A piece of a path in a pass file: a key, or the index of a list's item. What stands below <c>changed</c> is one key.</summary>
internal readonly record struct PathPiece(string Key, int? Index)
{
    private const string Changed = "changed.";

    public static IEnumerable<PathPiece> Of(string path)
    {
        if (path.StartsWith(Changed, StringComparison.Ordinal))
        {
            return [new("changed", null), new(path[Changed.Length..], null)];
        }

        return path.Split('.').SelectMany(OfOne);
    }

    private static IEnumerable<PathPiece> OfOne(string piece)
    {
        int bracket = piece.IndexOf('[', StringComparison.Ordinal);
        yield return new(bracket < 0 ? piece : piece[..bracket], null);
        if (bracket >= 0 && int.TryParse(piece.AsSpan(bracket + 1).TrimEnd(']'), NumberStyles.None, CultureInfo.InvariantCulture, out int index))
        {
            yield return new("", index);
        }
    }
}
