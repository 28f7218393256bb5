using System.Globalization;
using System.Text;

namespace LaunchSim.Studies.Running;

/// <summary>Joins the tables of a study's parts into the table that one run would have written, byte for byte.</summary>
public sealed class RowMerge
{
    private const string Part = "part", RowCount = "rows";

    private readonly IReadOnlyList<string> _parts;
    private readonly string _header;

    private RowMerge(IReadOnlyList<string> parts, string header, StudyIdentity identity, long rows) =>
        (_parts, _header, Identity, Rows) = (parts, header, identity, rows);

    /// <summary>What the whole table comes from.</summary>
    public StudyIdentity Identity { get; }

    /// <summary>How many rows the whole table has.</summary>
    public long Rows { get; }

    /// <summary>Looks at all parts.</summary>
    /// <param name="tables">The parts' tables, in any order.</param>
    /// <param name="problems">What keeps them from being joined, a sentence each.</param>
    /// <returns>What joins them; null when there is a problem.</returns>
    /// <exception cref="IOException">A part cannot be read.</exception>
    public static RowMerge? Plan(IReadOnlyList<string> tables, out IReadOnlyList<string> problems)
    {
        ArgumentNullException.ThrowIfNull(tables);
        var found = new List<string>();
        problems = found;
        var parts = new SortedDictionary<int, (string Table, StudyIdentity Identity, Shard Shard)>();
        (string Table, StudyIdentity Identity, Shard Shard)? first = null;
        foreach (string table in tables)
        {
            if (Identified(table, found) is not { } identity)
            {
                continue;
            }

            if (!Shard.TryParse(identity.Find(Part) ?? "", out Shard shard))
            {
                found.Add($"`{RowFile.Sidecar(table)}` does not say which part of a study `{table}` is");
                continue;
            }

            first ??= (table, identity, shard);
            IReadOnlyList<string> differences = first.Value.Identity.Differences(identity, Part);
            if (differences.Count > 0)
            {
                found.Add($"`{table}` is of another study than `{first.Value.Table}`; {string.Join("; ", differences).Replace(": there ", $": in `{table}` ", StringComparison.Ordinal).Replace(", here ", $", in `{first.Value.Table}` ", StringComparison.Ordinal)}");
            }
            else if (shard.Of != first.Value.Shard.Of)
            {
                found.Add($"`{table}` is part {shard} and `{first.Value.Table}` part {first.Value.Shard}: the study was parted in two ways; take parts of one of them");
            }
            else if (!parts.TryAdd(shard.Number, (table, identity, shard)))
            {
                found.Add($"`{table}` and `{parts[shard.Number].Table}` are both part {shard}; leave one out");
            }
        }

        if (first is { } one && found.Count == 0)
        {
            int[] missing = [.. Enumerable.Range(1, one.Shard.Of).Where(number => !parts.ContainsKey(number))];
            if (missing.Length > 0)
            {
                found.Add($"of {one.Shard.Of} parts {(missing.Length == 1 ? "one is" : "these are")} missing: {string.Join(", ", missing.Take(20))}{(missing.Length > 20 ? ", …" : "")}; name all of them");
            }
        }

        return found.Count > 0 || first is null ? null : Checked([.. parts.Values], found);
    }

    /// <summary>Writes the whole table.</summary>
    /// <param name="stream">Where to.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="IOException">It cannot be read or written.</exception>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public void Write(Stream stream, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(stream);
        stream.Write(Encoding.UTF8.GetBytes(_header));
        byte[] buffer = new byte[1 << 16];
        int header = Encoding.UTF8.GetByteCount(_header);
        foreach (string part in _parts)
        {
            using var rows = new FileStream(part, FileMode.Open, FileAccess.Read, FileShare.Read, 1);
            _ = rows.Seek(header, SeekOrigin.Begin);
            int read;
            while ((read = rows.Read(buffer)) > 0)
            {
                cancellation.ThrowIfCancellationRequested();
                stream.Write(buffer, 0, read);
            }
        }
    }

    /// <summary>Writes beside a table what it comes from.</summary>
    /// <param name="path">The table's name.</param>
    /// <exception cref="RowFileException">Something else is in the way.</exception>
    /// <exception cref="IOException">It cannot be written.</exception>
    public void WriteSidecar(string path) => RowFile.WriteSidecar(path, Identity);

    private static StudyIdentity? Identified(string table, List<string> found)
    {
        string sidecar = RowFile.Sidecar(table);
        if (!File.Exists(table))
        {
            found.Add(File.Exists(RowFile.Unfinished(table))
                ? $"`{table}` is not finished: its rows so far are in `{RowFile.Unfinished(table)}`; go on with it by --resume first"
                : $"there is no file `{table}`");
            return null;
        }

        if (!File.Exists(sidecar))
        {
            found.Add($"`{table}` has no `{sidecar}` beside it, which says what it came from; bring it along");
            return null;
        }

        if (new FileInfo(sidecar).Length > 1 << 24 || StudyIdentity.Parse(File.ReadAllText(sidecar)) is not { } identity)
        {
            found.Add($"`{sidecar}` does not come from this program");
            return null;
        }

        return identity;
    }

    private static RowMerge? Checked(IReadOnlyList<(string Table, StudyIdentity Identity, Shard Shard)> parts, List<string> found)
    {
        StudyIdentity identity = parts[0].Identity;
        string? header = null;
        bool isCounted = long.TryParse(identity.Find(RowCount), NumberStyles.None, CultureInfo.InvariantCulture, out long rows);
        if (!isCounted)
        {
            found.Add($"`{RowFile.Sidecar(parts[0].Table)}` does not say how many rows the study has");
            return null;
        }

        foreach ((string table, _, Shard shard) in parts)
        {
            (string own, long lines, bool isWhole) = Look(table);
            header ??= own;
            (long from, long to) = shard.Rows(rows);
            if (own != header)
            {
                found.Add($"`{table}` has other columns than `{parts[0].Table}`: it was changed; run it again");
            }
            else if (lines != to - from || !isWhole)
            {
                found.Add($"`{table}` has {lines} whole rows where part {shard} has {to - from}: it was changed; run it again");
            }
        }

        return found.Count > 0 ? null : new RowMerge(
            [.. parts.Select(part => part.Table)], header!,
            new StudyIdentity(identity.Facts.Select(fact => fact.Key == Part ? new(Part, Shard.Whole.ToString()) : fact)), rows);
    }

    // The first line with its end, how many lines follow, and whether the last one is whole.
    private static (string Header, long Lines, bool IsWhole) Look(string table)
    {
        using var stream = new FileStream(table, FileMode.Open, FileAccess.Read, FileShare.Read, 1);
        var header = new MemoryStream();
        byte[] buffer = new byte[1 << 16];
        long lines = -1;
        bool isWhole = false;
        int read;
        while ((read = stream.Read(buffer)) > 0)
        {
            for (int i = 0; i < read; i++)
            {
                if (lines < 0)
                {
                    header.WriteByte(buffer[i]);
                }

                lines += buffer[i] == (byte)'\n' ? 1 : 0;
            }

            isWhole = buffer[read - 1] == (byte)'\n';
        }

        return (Encoding.UTF8.GetString(header.ToArray()), Math.Max(lines, 0), isWhole);
    }
}
