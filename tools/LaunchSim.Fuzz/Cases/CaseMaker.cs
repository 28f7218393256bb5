using LaunchSim.Fuzz.Commands;

namespace LaunchSim.Fuzz.Cases;

/// <summary>Seed → case.</summary>
/// <param name="sources">The shipped scenarios.</param>
internal sealed class CaseMaker(Sources sources)
{
    // So many cases in a hundred are made to be run, and most of them can be.
    private const double SoundShare = 0.76;

    private static readonly string[] OddArguments = ["--nonsense", "--json=maybe", "--", "-", "", "@car.yaml", "--set", "--csv", "--units", "run", "[diagram]", "[suggest]", "[suggest:5]", "--help", "-h", "-?", "--version", "\u001b[31m", "--json --quiet", "/?", "no-such.yaml", new('x', 10_000)];

    private readonly Documents _documents = new(sources);

    /// <summary>The case of a seed.</summary>
    /// <param name="seed">The seed.</param>
    public FuzzCase Make(long seed)
    {
        var dice = new Dice(seed);
        var draft = new Draft(dice);
        FuzzCommand command = dice.Pick(FuzzCommands.All, one => one.Weight);
        int files = command.Files(dice);
        for (int i = 0; i < files; i++)
        {
            if (dice.Chance(command.Name == "run" ? 0.01 : 0.15))
            {
                Documents.AddPart(draft);
            }
            else
            {
                _documents.AddSound(draft);
            }
        }

        if (files > 0 && dice.Chance(0.02))
        {
            draft.Note("the folder in their place");
            draft.Named.Clear();
            draft.Named.Add(".");
        }

        bool sound = dice.Chance(SoundShare);
        int spoilt = sound || files == 0 ? 0 : dice.Below(100);
        if (spoilt is > 0 and < 68)
        {
            Documents.Spoil(draft);
        }
        else if (spoilt is >= 68 and < 80)
        {
            Documents.Reform(draft);
        }

        List<string> arguments = [.. command.Name.Split(' '), .. (command.NamesFiles ? draft.Named : []).Select(name => Path.IsPathRooted(name) || name.Length == 0 ? name : $"{FuzzCase.Folder}/{name}")];
        if (command.Argument is { } argument)
        {
            arguments.Add(argument(draft));
        }

        if (command.Second is { } second)
        {
            arguments.Add(second(draft));
        }

        bool oddOption = spoilt >= 80 || (files == 0 && !sound);
        foreach (FuzzOption option in command.Options)
        {
            Add(option, draft, arguments, oddOption && dice.Chance(0.4));
        }

        Sets(draft, command, arguments.Contains("--csv") || arguments.Contains("--out"));
        foreach (Change set in draft.Sets)
        {
            arguments.AddRange(["--set", $"{set.Path}={set.Value}"]);
        }

        if (command.IsStudy)
        {
            // A hundred launches of a minute each would say no more than a hundred short ones.
            arguments.AddRange(["--set", "run.duration=0.2 s"]);
        }

        if (spoilt > 92 || (files == 0 && dice.Chance(0.3)))
        {
            arguments.Insert(dice.Below(arguments.Count + 1), dice.Pick(OddArguments));
            draft.Note("an odd argument");
        }

        return new FuzzCase { Seed = seed, Command = command.Name, Arguments = arguments, Files = [.. draft.Files], Steps = draft.Steps, IsWild = draft.IsWild, Changes = command.Changes, Patience = command.IsStudy ? StudyPatience : 1 };
    }

    // How many times longer a study may take than a single launch.
    private const int StudyPatience = 6;

    private static void Add(FuzzOption option, Draft draft, List<string> arguments, bool odd)
    {
        if (odd && option.Odd is not null)
        {
            arguments.AddRange([option.Name, option.Odd(draft)]);
            draft.Note($"an odd {option.Name}");
            draft.IsWild = true;
        }
        else if (draft.Dice.Chance(option.Share))
        {
            arguments.Add(option.Name);
            if (option.Sound is not null)
            {
                arguments.Add(option.Sound(draft));
            }
        }
    }

    private void Sets(Draft draft, FuzzCommand command, bool hasTrace)
    {
        Dice dice = draft.Dice;
        if (!command.Options.Contains(OptionValues.Set))
        {
            return;
        }

        if (dice.Chance(0.25))
        {
            draft.Sets.AddRange(Texts.Changes(draft.Hosts.Count > 0 ? draft.Hosts[^1] : dice.Pick(sources.Whole), dice.From(1, 3), draft));
        }

        if (dice.Chance(0.25))
        {
            OddCar odd = dice.Pick(OddCars.All);
            draft.Note(odd.Name);
            draft.Sets.AddRange(odd.Changes(dice));
        }

        // A trace of a million rows is what was asked for, and takes its time.
        if (command.Name == "run" && (hasTrace || !dice.Chance(0.03)))
        {
            Short(draft);
        }
    }

    /// <summary>Most launches are cut short and sampled coarsely: what goes wrong goes wrong early, and so more can be tried.</summary>
    private static void Short(Draft draft)
    {
        Dice dice = draft.Dice;
        double seconds = dice.Below(100) switch { < 70 => dice.Spread(0.02, 0.3), < 90 => dice.Between(0.3, 0.8), _ => dice.Between(0.8, 3) };
        draft.Sets.Add(new Change("run.duration", FormattableString.Invariant($"{seconds:0.####} s")));
        draft.Sets.Add(new Change("run.sample", dice.Chance(0.9) ? "10 ms" : FormattableString.Invariant($"{dice.Between(1, 20):0.###} ms")));
    }
}
