using System.Globalization;
using System.Text;
using LaunchSim.Fuzz.Checks;

namespace LaunchSim.Fuzz;

/// <summary>Counts of what came of the cases. Safe to use from several threads.</summary>
/// <param name="digests">Takes a line for each case, its seed and its digest, or null.</param>
internal sealed partial class Tally(TextWriter? digests = null)
{
    private const int SlowestKept = 5;

    private readonly Lock _lock = new();
    private readonly SortedDictionary<string, int[]> _byCommand = new(StringComparer.Ordinal);
    private readonly List<(TimeSpan Took, long Seed)> _slowest = [];
    private long _cases, _ran, _complete, _failures;
    private ulong _digest;

    /// <summary>Cases so far.</summary>
    public long Cases => Interlocked.Read(ref _cases);

    /// <summary>Cases with something wrong.</summary>
    public long Failures => Interlocked.Read(ref _failures);

    /// <summary>
    /// A number that two runs over the same seeds share when every case came out the same, to the byte, on however many
    /// threads and in whatever order.
    /// </summary>
    public ulong Digest => Volatile.Read(ref _digest);

    /// <summary>Counts a case.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <param name="isFailure">Whether something is wrong with it.</param>
    public void Add(Outcome outcome, bool isFailure)
    {
        ulong digest = DigestOf(outcome);
        lock (_lock)
        {
            _cases++;
            _failures += isFailure ? 1 : 0;
            _digest += digest;
            digests?.WriteLine(FormattableString.Invariant($"{outcome.Case.Seed} {digest:x16}"));
            if (!_byCommand.TryGetValue(outcome.Case.Command, out int[]? codes))
            {
                _byCommand.Add(outcome.Case.Command, codes = new int[4]);
            }

            codes[outcome.Code is 0 or 1 or 2 ? outcome.Code.Value : 3]++;
            _ran += outcome.Ran ? 1 : 0;
            _complete += outcome.Ran && outcome.Code == 0 ? 1 : 0;
            _slowest.Add((outcome.Took, outcome.Case.Seed));
            if (_slowest.Count > 20 * SlowestKept)
            {
                Trim();
            }
        }
    }

    /// <summary>All counts, some lines.</summary>
    /// <param name="took">How long it took.</param>
    public string Report(TimeSpan took)
    {
        lock (_lock)
        {
            Trim();
            var text = new StringBuilder();
            _ = text.Append(CultureInfo.InvariantCulture, $"{_cases} seeds in {took.TotalSeconds:0.0} s, {_cases / took.TotalSeconds:0} a second\n");
            _ = text.Append("command      exit 0     exit 1     exit 2      other\n");
            int[] all = new int[4];
            foreach ((string command, int[] codes) in _byCommand)
            {
                Row(text, command, codes);
                for (int i = 0; i < all.Length; i++)
                {
                    all[i] += codes[i];
                }
            }

            Row(text, "all", all);
            _ = text.Append(CultureInfo.InvariantCulture, $"{Share(_ran)} of all seeds got through reading and really ran a launch, {Share(_complete)} to its end\n");
            _ = text.Append("slowest: ").AppendJoin(", ", _slowest.Select(one => FormattableString.Invariant($"seed {one.Seed} {one.Took.TotalSeconds:0.00} s"))).Append('\n');
            _ = text.Append(CultureInfo.InvariantCulture, $"digest {_digest:x16}\n");
            return text.ToString();
        }
    }

    private string Share(long count) => (_cases == 0 ? 0 : 100.0 * count / _cases).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    private void Trim()
    {
        _slowest.Sort((a, b) => b.Took != a.Took ? b.Took.CompareTo(a.Took) : a.Seed.CompareTo(b.Seed));
        _slowest.RemoveRange(Math.Min(SlowestKept, _slowest.Count), Math.Max(0, _slowest.Count - SlowestKept));
    }

    private static void Row(StringBuilder text, string name, int[] counts) =>
        text.Append(CultureInfo.InvariantCulture, $"{name,-9}{counts[0],10} {counts[1],10} {counts[2],10} {counts[3],10}\n");

    // The folder of all cases has another name each time, of which a message may show a part.
    [System.Text.RegularExpressions.GeneratedRegex(CaseFolders.Stem + "[A-Za-z0-9]*")]
    private static partial System.Text.RegularExpressions.Regex Root();

    // FNV-1a over all that came out.
    private static ulong DigestOf(Outcome outcome)
    {
        ulong hash = 14695981039346656037;
        Take(outcome.Case.Seed.ToString(CultureInfo.InvariantCulture));
        Take(outcome.Code?.ToString(CultureInfo.InvariantCulture) ?? "none");
        Take(outcome.Output);
        Take(outcome.Error);
        foreach ((string name, byte[] content) in outcome.Written)
        {
            Take(name);
            Take(Encoding.UTF8.GetString(content));
        }

        return hash;

        void Take(string text)
        {
            foreach (char c in Root().Replace(text, ""))
            {
                hash = (hash ^ c) * 1099511628211;
            }

            hash = (hash ^ 0xFFFF) * 1099511628211;
        }
    }
}
