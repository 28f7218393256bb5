using System.Globalization;
using System.Text.RegularExpressions;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Seasons;

/// <summary>The files of a season's folder.</summary>
public static partial class SeasonFolder
{
    /// <summary>What temporary files of the season begin with: one that is there while nobody holds the lock is a dead writer's.</summary>
    internal const string Temporary = ".season-";

    private const int LongestSlug = 40;

    private static readonly TimeSpan Forgotten = TimeSpan.FromMinutes(10);

    /// <summary>The pass files by their names, numbers in them counting as numbers: pass-2 before pass-10.</summary>
    /// <param name="folder">The folder, as it was named.</param>
    public static IReadOnlyList<string> Passes(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return [.. Directory.EnumerateFiles(folder)
            .Where(file => Yaml().IsMatch(file) && Path.GetFileName(file) is var name && name != SeasonFile.FileName && !name.StartsWith('.'))
            .Where(file => Numbered().IsMatch(Path.GetFileName(file)) || LooksLikeAPass(file))
            .OrderBy(file => Ordered(Path.GetFileName(file)), StringComparer.Ordinal)];
    }

    /// <summary>
    /// The name of the next pass's file, in the manner of those that are there: <c>pass-3.yaml</c> after <c>pass-2.yaml</c>,
    /// <c>03-one-hole-down.yaml</c> after <c>02-as-measured.yaml</c>.
    /// </summary>
    /// <param name="folder">The folder.</param>
    /// <param name="name">What the pass is called; null or empty when it has no name.</param>
    public static string NextName(string folder, string? name)
    {
        ArgumentNullException.ThrowIfNull(folder);
        (long last, string digits, bool isPlain) = Passes(folder).Concat(Directory.EnumerateFiles(folder, "pass-*"))
            .Select(file => AnyNumber().Match(Path.GetFileName(file))).Where(match => match.Success)
            .Select(match => (long.TryParse(match.Groups[2].ValueSpan, CultureInfo.InvariantCulture, out long number) ? number : 0, match.Groups[2].Value, match.Groups[1].Length == 0))
            .DefaultIfEmpty((0, "", false)).MaxBy(one => one.Item1);
        string next = (last + 1).ToString(CultureInfo.InvariantCulture).PadLeft(digits.StartsWith('0') ? digits.Length : 1, '0');
        string slug = isPlain ? NotInNames().Replace((name ?? "").ToLowerInvariant(), "-").Trim('-') : "";
        return isPlain ? $"{next}{(slug.Length > 0 ? "-" + slug[..Math.Min(slug.Length, LongestSlug)].TrimEnd('-') : "")}.yaml" : $"pass-{next}.yaml";
    }

    /// <summary>Takes away what writers left that were killed: only to be called by who holds the lock.</summary>
    internal static void Tidy(string folder)
    {
        // Others that ask for the lock have temporary files, too, for an instant.
        IEnumerable<string> asked = Directory.EnumerateFiles(folder, SeasonLock.Temporary + "*.tmp").Where(file => DateTime.UtcNow - File.GetLastWriteTimeUtc(file) > Forgotten);
        foreach (string left in Directory.EnumerateFiles(folder, Temporary + "*.tmp").Concat(asked).ToArray())
        {
            try
            {
                File.Delete(left);
            }
            catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
            {
                // It does no harm.
            }
        }
    }

    // Mappings and marks lie in the same folder; of all of them only a pass names a car.
    private static bool LooksLikeAPass(string file)
    {
        try
        {
            return new FileInfo(file).Length is > 0 and < 1 << 20 && PassEdit.Find(File.ReadAllText(file), "car") is { } car && car[0] != '{';
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static string Ordered(string name) => Digits().Replace(name, match => match.Value.TrimStart('0').PadLeft(19, '0'));

    [GeneratedRegex(@"\.ya?ml$", RegexOptions.IgnoreCase)]
    private static partial Regex Yaml();

    [GeneratedRegex(@"^pass-(\d+)\b.*\.ya?ml$", RegexOptions.IgnoreCase)]
    private static partial Regex Numbered();

    [GeneratedRegex(@"^(pass-)?(\d+)(?!\d).*\.ya?ml$", RegexOptions.IgnoreCase)]
    private static partial Regex AnyNumber();

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NotInNames();

    [GeneratedRegex(@"\d+")]
    private static partial Regex Digits();
}
