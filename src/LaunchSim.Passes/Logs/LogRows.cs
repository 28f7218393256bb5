using System.Globalization;
using CsvHelper;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Logs;

/// <summary>
/// The rows of a log as numbers, one after the other: no more than one of them is held. What is wrong is collected with
/// its place; after some tens of errors reading ends.
/// </summary>
internal sealed class LogRows : IDisposable
{
    private const int MostErrors = 20, MostAside = 5;

    private readonly LogText _text;
    private readonly CsvParser _parser;
    private readonly LogLayout _layout;
    private readonly string _path;
    private readonly LogClock _clock;
    private readonly int _timeIndex;
    private readonly int[] _indices;
    private readonly HashSet<string> _missing;
    private readonly List<Diagnostic> _errors = [];
    private string? _badQuote;
    private double _last = double.NaN;
    private Diagnostic? _short;

    /// <summary>Opens a log at its first row.</summary>
    /// <param name="path">The file as it was named.</param>
    /// <param name="layout">How its rows are written.</param>
    /// <param name="clock">Which instant a row belongs to.</param>
    /// <param name="timeIndex">The column of time or frame; -1 without.</param>
    /// <param name="indices">The columns that are read.</param>
    /// <param name="missing">Words that stand for no value.</param>
    /// <exception cref="LogTextException">It cannot be read.</exception>
    public LogRows(string path, LogLayout layout, LogClock clock, int timeIndex, int[] indices, IEnumerable<string> missing)
    {
        _path = path;
        _layout = layout;
        _clock = clock;
        _timeIndex = timeIndex;
        _indices = indices;
        _missing = [.. missing];
        _text = LogText.Open(path, out Diagnostic? problem) ?? throw new LogTextException(problem!);
        for (int i = 0; i < layout.Lead; i++)
        {
            _ = _text.ReadLine();
        }

        TextReader rows = layout.Separator == ' ' ? new SingleSpaces(_text) : _text;
        _parser = new CsvParser(rows, layout.Csv(args => _badQuote ??= args.Field));
        Values = new double[indices.Length];
        Gaps = new long[indices.Length];
        Lowest = new double[indices.Length];
        Highest = new double[indices.Length];
        Array.Fill(Lowest, double.PositiveInfinity);
        Array.Fill(Highest, double.NegativeInfinity);
    }

    /// <summary>The row's values as written, not a number for a gap; the same array for every row.</summary>
    public double[] Values { get; }

    /// <summary>The row's time on the log's clock, s.</summary>
    public double Time { get; private set; }

    /// <summary>The line on which the row ends.</summary>
    public int Line => _layout.Lead + _parser.RawRow;

    /// <summary>How many rows were read, doubled ones included.</summary>
    public long Count { get; private set; }

    /// <summary>How many had the time of the row before them and were left out.</summary>
    public long Doubled { get; private set; }

    /// <summary>How many of the doubled rows had other values than the row before them.</summary>
    public long DoubledOtherwise { get; private set; }

    /// <summary>How many had no time and were left out.</summary>
    public long Timeless { get; private set; }

    /// <summary>How many lines of words stood between the names and the first numbers.</summary>
    public int Aside { get; private set; }

    /// <summary>How often each column had no value.</summary>
    public long[] Gaps { get; }

    /// <summary>The lowest number of each column as written.</summary>
    public double[] Lowest { get; }

    /// <summary>The highest number of each column as written.</summary>
    public double[] Highest { get; }

    /// <summary>The first row's time, s; not a number when there is none.</summary>
    public double First { get; private set; } = double.NaN;

    /// <summary>The latest row's time, s.</summary>
    public double Last => _last;

    /// <summary>Whether a last row was cut off and left out.</summary>
    public bool IsCutOff { get; private set; }

    /// <summary>What is wrong so far.</summary>
    public IReadOnlyList<Diagnostic> Errors => _errors;

    /// <summary>Share of the file that was read.</summary>
    public double Progress => _text.Length == 0 ? 1 : (double)_text.Position / _text.Length;

    /// <summary>Whether it is text in Latin-1.</summary>
    public bool IsLatin => _text.IsLatin;

    /// <summary>Reads the next row that has a time of its own.</summary>
    /// <returns>False at the end, or when there are too many errors to go on.</returns>
    public bool Read()
    {
        try
        {
            while (_errors.Count < MostErrors && _parser.Read())
            {
                if (Take())
                {
                    return true;
                }
            }
        }
        catch (LogTextException exception)
        {
            _errors.Add(exception.Finding);
        }
        catch (MaxFieldSizeException)
        {
            Error(1, "a cell that does not end", "a row for each instant, each on its own line", "look for a quote mark that is not closed");
        }

        if (_short is not null && _errors.Count < MostErrors)
        {
            // Only the very last row may be cut off: the logger's power went while it was written.
            IsCutOff = true;
        }

        return false;
    }

    private bool Take()
    {
        if (_badQuote is not null)
        {
            Error(1, $"a quote mark that is not closed, or stands within a cell: `{Cut(_badQuote)}`", "cells without quote marks, or in a pair of them", "close it or take it away");
            _badQuote = null;
            return false;
        }

        if (_short is { } before)
        {
            _errors.Add(before);
            _short = null;
        }

        int cells = _parser.Count;
        if (cells != _layout.Names.Count && !IsTrailing(cells))
        {
            return Ragged(cells);
        }

        if (Count == 0 && Aside < MostAside && IsWords())
        {
            Aside++;
            return false;
        }

        if (!TryTime(out double time))
        {
            return false;
        }

        bool good = true;
        bool isDouble = time == _last, same = true;
        for (int i = 0; i < _indices.Length; i++)
        {
            good &= TryValue(_indices[i], out double value);
            same &= !isDouble || value.Equals(Values[i]);
            if (!isDouble)
            {
                Values[i] = value;
            }
        }

        Count++;
        if (isDouble)
        {
            Doubled++;
            DoubledOtherwise += same ? 0 : 1;
            return false;
        }

        if (time < _last)
        {
            Error(ColumnOf(_timeIndex), string.Create(CultureInfo.InvariantCulture, $"time running backward, from {_last:R} s to {time:R} s"), "times that rise from row to row", "cut the log to one recording; a logger that was switched off and on writes two");
            return false;
        }

        First = double.IsNaN(First) ? time : First;
        _last = Time = time;
        for (int i = 0; i < Values.Length; i++)
        {
            if (double.IsNaN(Values[i]))
            {
                Gaps[i]++;
            }
            else
            {
                Lowest[i] = Math.Min(Lowest[i], Values[i]);
                Highest[i] = Math.Max(Highest[i], Values[i]);
            }
        }

        return good;
    }

    private bool Ragged(int cells)
    {
        if (_parser.RawRecord.Contains('"', StringComparison.Ordinal))
        {
            Error(1, $"a quote mark that is not closed, or stands within a cell: `{Cut(_parser.RawRecord)}`", "cells without quote marks, or in a pair of them", "close it or take it away");
            return false;
        }

        string hint = cells > _layout.Names.Count && _layout.Separator == ',' ? "are its decimals behind commas? then the cells have to be parted by something else: export it anew"
            : _layout.Separator == ' ' ? "names or values may hold spaces: export it with another separator"
            : "look at that row; an export that was cut or joined leaves such rows";
        Diagnostic finding = new WrittenPlace(_path, Line, 1).Error("", $"a row of {cells} cells below {_layout.Names.Count} names", "as many cells as names", hint);
        if (cells < _layout.Names.Count && Count > 0)
        {
            _short = finding;
        }
        else
        {
            _errors.Add(finding);
        }

        return false;
    }

    // A separator at the end of every row makes one empty cell more.
    private bool IsTrailing(int cells) => cells == _layout.Names.Count + 1 && _parser[cells - 1].Length == 0;

    private bool IsWords()
    {
        foreach (int index in _timeIndex < 0 ? _indices : [.. _indices, _timeIndex])
        {
            string cell = _parser[index];
            if (cell.Length > 0 && (LogLayout.TryNumber(cell, _layout.DecimalComma, out _) || _missing.Contains(cell) || (index == _timeIndex && _clock is TimeColumn { IsClock: true } && LogLayout.TryClock(cell, _layout.DecimalComma, out _))))
            {
                return false;
            }
        }

        return true;
    }

    private bool TryTime(out double time)
    {
        if (_clock is FixedRate rate)
        {
            time = Count / rate.Rate;
            return true;
        }

        time = double.NaN;
        string cell = _parser[_timeIndex];
        if (cell.Length == 0 || _missing.Contains(cell))
        {
            Timeless++;
            return false;
        }

        if (!(_clock is TimeColumn { IsClock: true } ? LogLayout.TryClock(cell, _layout.DecimalComma, out time) : LogLayout.TryNumber(cell, _layout.DecimalComma, out time)))
        {
            string wanted = _clock is TimeColumn { IsClock: true } ? "h:mm:ss with decimals" : "a number";
            Error(ColumnOf(_timeIndex), $"`{Cut(cell)}` in the column `{_layout.Names[_timeIndex]}`, which is no time", wanted, Hint(cell));
            return false;
        }

        time = _clock switch
        {
            TimeColumn column => time * column.Seconds,
            FrameColumn frames => time / frames.FramesPerSecond,
            _ => time,
        };
        if (!double.IsFinite(time))
        {
            Timeless++;
            return false;
        }

        return true;
    }

    private bool TryValue(int index, out double value)
    {
        string cell = _parser[index];
        if (cell.Length == 0 || _missing.Contains(cell))
        {
            value = double.NaN;
            return true;
        }

        if (!LogLayout.TryNumber(cell, _layout.DecimalComma, out value))
        {
            value = double.NaN;
            Error(ColumnOf(index), $"`{Cut(cell)}` in the column `{_layout.Names[index]}`, which is no number", "a number, nothing, or NaN", Hint(cell));
            return false;
        }

        value = double.IsFinite(value) ? value : double.NaN;
        return true;
    }

    private string Hint(string cell) =>
        LogLayout.TryNumber(cell, !_layout.DecimalComma, out _) ? $"its decimals stand after a {(_layout.DecimalComma ? "point" : "comma")}: write decimal: {(_layout.DecimalComma ? "point" : "comma")} under table: of the mapping"
        : $"where it stands for no value, name it: missing: \"{Cut(cell)}\" under table: of the mapping";

    // Where a cell begins in its line, from 1; told from the text of the row, which is only looked at when something is wrong.
    private int ColumnOf(int index)
    {
        if (index < 0)
        {
            return 1;
        }

        string raw = _parser.RawRecord;
        int cell = 0;
        bool quoted = false;
        for (int i = 0; i < raw.Length; i++)
        {
            if (cell == index)
            {
                return i + 1;
            }

            quoted ^= raw[i] == '"';
            cell += !quoted && raw[i] == _layout.Separator ? 1 : 0;
        }

        return 1;
    }

    private void Error(int column, string found, string allowed, string mend) =>
        _errors.Add(new WrittenPlace(_path, Line, column).Error("", found, allowed, mend));

    private static string Cut(string cell)
    {
        string line = cell.ReplaceLineEndings(" ").Trim();
        return line.Length > 40 ? line[..40] + "…" : line;
    }

    public void Dispose()
    {
        _parser.Dispose();
        _text.Dispose();
    }
}
