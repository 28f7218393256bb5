using System.CommandLine;
using System.Globalization;
using LaunchSim.Fuzz;
using LaunchSim.Fuzz.Cases;
using LaunchSim.Fuzz.Commands;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
var seeds = new Option<string>("--seeds") { HelpName = "A..B", Description = "Run these seeds, both included" };
var from = new Option<long>("--from") { HelpName = "seed", Description = "The first seed; with --count" };
var count = new Option<long>("--count") { HelpName = "number", Description = "How many seeds", DefaultValueFactory = _ => 10_000 };
var seed = new Option<long?>("--seed") { HelpName = "seed", Description = "Run one seed and tell all about it" };
var keep = new Option<string>("--keep") { HelpName = "folder", Description = "Keep what fails in this folder" };
var digests = new Option<string>("--digests") { HelpName = "file", Description = "Write each seed with a digest of all that came out: two such files, sorted, show where two runs differ" };
var threads = new Option<int>("--threads") { HelpName = "number", Description = "On how many threads; as many as there are cores when left out", DefaultValueFactory = _ => Environment.ProcessorCount };
var root = new RootCommand("Takes the whole command line through cases that seeds decide: odd cars that run, and broken files that must be refused in plain words")
{
    seeds, from, count, seed, keep, digests, threads,
};
root.SetAction(parsed =>
{
    if (FuzzCommands.Differences() is { Count: > 0 } differences)
    {
        Console.Error.WriteLine(string.Join('\n', differences));
        return 1;
    }

    using StreamWriter? each = parsed.GetValue(digests) is { } file ? new StreamWriter(file) : null;
    var fuzzer = new Fuzzer(new CaseMaker(Sources.Shipped()), Console.Out, parsed.GetValue(keep) is { } folder ? new Keeper(folder) : null, each);
    if (parsed.GetValue(seed) is { } one)
    {
        return fuzzer.Replay(one) ? 0 : 1;
    }

    (long first, long last) = (parsed.GetValue(from), parsed.GetValue(from) + parsed.GetValue(count) - 1);
    if (parsed.GetValue(seeds) is { } range)
    {
        string[] ends = range.Split("..");
        if (ends.Length != 2 || !long.TryParse(ends[0], out first) || !long.TryParse(ends[1], out last))
        {
            Console.Error.WriteLine($"--seeds {range}: allowed: two whole numbers with .. between, as in 0..9999");
            return 2;
        }
    }

    if (first < 0 || last < first || parsed.GetValue(threads) < 1)
    {
        Console.Error.WriteLine($"seeds {first} to {last} on {parsed.GetValue(threads)} threads: allowed: seeds from 0 up, the smaller one first, and one thread or more");
        return 2;
    }

    return fuzzer.Run(first, last, parsed.GetValue(threads)) ? 0 : 1;
});
return root.Parse(args).Invoke();
