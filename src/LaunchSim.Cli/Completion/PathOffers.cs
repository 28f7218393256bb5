using System.CommandLine.Completions;
using System.Text.RegularExpressions;
using LaunchSim.Scenarios;

namespace LaunchSim.Cli.Completion;

/// <summary>Paths of the scenario file, one step at a time, up to the equals sign that the value follows.</summary>
internal static partial class PathOffers
{
    /// <summary>The next steps of a path.</summary>
    /// <param name="context">Holds the word.</param>
    public static IEnumerable<CompletionItem> Of(CompletionContext context)
    {
        string word = context.WordToComplete;

        // The items of a list are alike.
        string asked = Item().Replace(word, "[0]");
        NamedPath[] below = [.. ScenarioSchema.Paths.Where(path => path.Path.StartsWith(asked, StringComparison.Ordinal))];
        var sections = new HashSet<string>();
        foreach (NamedPath path in below)
        {
            int dot = path.Path.IndexOf('.', asked.Length);
            if (dot < 0)
            {
                if (!path.IsSection)
                {
                    yield return Offer.Part(word + path.Path[asked.Length..] + "=", path.What);
                }
            }
            else if (sections.Add(path.Path[..dot]))
            {
                yield return Offer.Part(word + path.Path[asked.Length..(dot + 1)], below.FirstOrDefault(section => section.Path == path.Path[..dot])?.What);
            }
        }
    }

    [GeneratedRegex(@"\[\d+\]")]
    private static partial Regex Item();
}
