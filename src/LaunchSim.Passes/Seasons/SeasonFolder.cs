using System.Globalization;
using System.Text.RegularExpressions;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Seasons;

/// <summary>The files of a season's folder.</summary>
public static partial class SeasonFolder
{
    /// <summary>What temporary files of the season begin with: one that is there while nobody holds the lock is a dead writer's.</summary>
    internal const string Temporary = ".season-";

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

    /// <summary>The name of the next pass's file.</summary>
    /// <param name="folder">The folder.</param>
    public static string NextName(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        long last = Directory.EnumerateFiles(folder).Select(file => Numbered().Match(Path.GetFileName(file)))
            .Where(match => match.Success).Select(match => long.TryParse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture, out long number) ? number : 0).DefaultIfEmpty(0).Max();
        return string.Create(CultureInfo.InvariantCulture, $"pass-{last + 1}.yaml");
    }

    /// <summary>Takes away what writers left that were killed: only to be called by who holds the lock.</summary>
    internal static void Tidy(string folder)
    {
        foreach (string left in Directory.EnumerateFiles(folder, Temporary + "*.tmp"))
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

    [GeneratedRegex(@"\d+")]
    private static partial Regex Digits();
}
