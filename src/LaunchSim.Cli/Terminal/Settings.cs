using System.CommandLine;
using LaunchSim.Cli.Completion;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;
using LaunchSim.Studies.Aims;

namespace LaunchSim.Cli.Terminal;

/// <summary>Arguments and options that several commands share.</summary>
internal static class Settings
{
    public static Argument<string[]> Files() => new("FILE")
    {
        HelpName = "FILE",
        Arity = ArgumentArity.OneOrMore,
        Description = "Scenario files; a folder stands for the .yaml files in it",
        CompletionSources = { FileOffers.Scenarios },
    };

    public static Option<string[]> Set() => new("--set")
    {
        HelpName = "path=value",
        Description = "A value in the place of the file's, as in --set \"rear.spring.rate=175 lb/in\"; may be given again and again",
        Arity = ArgumentArity.OneOrMore,
        CompletionSources = { PathOffers.Of },
    };

    public static Option<string> Units()
    {
        var option = new Option<string>("--units") { HelpName = "shop|si", Description = "Units of what is printed; those of the file when left out" };
        _ = option.AcceptOnlyFromAmong("shop", "si");
        return option;
    }

    public static Option<string> Profile() => new("--profile")
    {
        HelpName = "in-step|stay-down",
        CompletionSources = { _ => AimProfiles.All.Select(profile => Offer.Word(profile.Name, profile.Words)) },
        Description = "The ready set of aims in the place of the one that the file begins from",
    };

    /// <summary>A profile by its name; none when none was named.</summary>
    /// <param name="name">What was written, or null.</param>
    /// <exception cref="InputException">There is no such profile.</exception>
    public static AimProfile? Profile(string? name)
    {
        if (name is null)
        {
            return null;
        }

        if (AimProfiles.Find(name) is { } profile)
        {
            return profile;
        }

        string[] all = [.. AimProfiles.All.Select(one => one.Name)];
        string meant = Nearest.To(name, all) is { } near ? $"; did you mean {near}?" : "";
        throw new InputException($"--profile: found `{name}`; allowed: {string.Join(", ", all)}{meant}");
    }

    public static Option<string> Format()
    {
        var option = new Option<string>("--format") { HelpName = "png|svg", Description = "Kind of the pictures that get their names from the program; png when left out" };
        _ = option.AcceptOnlyFromAmong("png", "svg");
        return option;
    }

    /// <summary>The values of --set, parted at the first equals sign.</summary>
    /// <param name="given">What was written.</param>
    /// <exception cref="InputException">One has no equals sign or no path.</exception>
    public static List<(string Path, string Value)> Overrides(IEnumerable<string>? given)
    {
        var overrides = new List<(string Path, string Value)>();
        foreach (string text in given ?? [])
        {
            int equals = text.IndexOf('=', StringComparison.Ordinal);
            if (equals < 1)
            {
                throw new InputException($"--set {text}: found no path before an equals sign; write --set \"path=value\", as in --set \"rear.spring.rate=175 lb/in\"");
            }

            overrides.Add((text[..equals].Trim(), text[(equals + 1)..].Trim()));
        }

        return overrides;
    }

    /// <summary>The units to print in.</summary>
    /// <param name="given">The option's value, or null.</param>
    /// <param name="ofFile">The units of the file.</param>
    public static UnitSystem System(string? given, UnitSystem ofFile) => given switch
    {
        "shop" => UnitSystem.Shop,
        "si" => UnitSystem.Si,
        _ => ofFile,
    };
}
