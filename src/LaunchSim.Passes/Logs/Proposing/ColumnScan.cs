using System.Globalization;
using CsvHelper;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Logs.Proposing;

/// <summary>What the rows of a log say of one column: read once, nothing held.</summary>
internal sealed class ColumnScan
{
    private double _before = double.NaN;
    private (string? First, string Last) _clocks = (null, "");

    /// <summary>How many numbers there are.</summary>
    public long Numbers { get; private set; }

    /// <summary>How many empty cells and NaN.</summary>
    public long Gaps { get; private set; }

    /// <summary>How many words.</summary>
    public long Words { get; private set; }

    /// <summary>The lowest number.</summary>
    public double Low { get; private set; } = double.PositiveInfinity;

    /// <summary>The highest number.</summary>
    public double High { get; private set; } = double.NegativeInfinity;

    /// <summary>The first number; of times of the clock the first in s.</summary>
    public double First { get; private set; } = double.NaN;

    /// <summary>The last number, likewise.</summary>
    public double Last => _before;

    /// <summary>How often a number is below the one before.</summary>
    public long Falls { get; private set; }

    /// <summary>How often a number is that of the row before.</summary>
    public long Repeats { get; private set; }

    /// <summary>Whether all numbers are whole.</summary>
    public bool AllWhole { get; private set; } = true;

    /// <summary>Whether cells look like h:mm:ss.</summary>
    public bool IsClock { get; private set; }

    /// <summary>Takes a cell.</summary>
    public void Add(string cell, bool comma)
    {
        if (cell.Length == 0)
        {
            Gaps++;
        }
        else if (!LogLayout.TryNumber(cell, comma, out double value))
        {
            Words++;
            if (LogLayout.TryClock(cell, comma, out double time))
            {
                IsClock = true;
                First = double.IsNaN(First) ? time : First;
                _before = time;
                _clocks = (_clocks.First ?? cell, cell);
            }
        }
        else if (!double.IsFinite(value))
        {
            Gaps++;
        }
        else
        {
            Numbers++;
            First = double.IsNaN(First) ? value : First;
            Low = Math.Min(Low, value);
            High = Math.Max(High, value);
            Falls += value < _before ? 1 : 0;
            Repeats += value == _before ? 1 : 0;
            AllWhole &= value == Math.Floor(value);
            _before = value;
        }
    }

    /// <summary>Reads all columns of a log.</summary>
    /// <param name="path">The file.</param>
    /// <param name="layout">How it is written.</param>
    /// <param name="progress">Told now and then what share was read; or null.</param>
    /// <param name="cancellation">Asked now and then.</param>
    /// <param name="rows">How many rows there are.</param>
    /// <param name="problem">What keeps the log from being read; null for nothing.</param>
    public static ColumnScan[] Of(string path, LogLayout layout, Action<double>? progress, CancellationToken cancellation, out long rows, out Diagnostic? problem)
    {
        ColumnScan[] columns = [.. layout.Names.Select(_ => new ColumnScan())];
        rows = 0;
        problem = null;
        using LogText text = LogText.Open(path, out Diagnostic? unreadable) ?? throw new LogTextException(unreadable!);
        for (int i = 0; i < layout.Lead + (layout.Units.Count > 0 ? 1 : 0); i++)
        {
            _ = text.ReadLine();
        }

        string? bad = null;
        using var parser = new CsvParser(layout.Separator == ' ' ? new SingleSpaces(text) : text, layout.Csv(args => bad ??= args.Field));
        try
        {
            while (parser.Read())
            {
                int line = layout.Lead + parser.RawRow;
                for (int i = 0; i < columns.Length && i < parser.Count; i++)
                {
                    columns[i].Add(parser[i], layout.DecimalComma);
                }

                if (bad is not null)
                {
                    problem = new WrittenPlace(path, line, 1).Error("", "a quote mark that is not closed, or stands within a cell", "cells without quote marks, or in a pair of them", "close it or take it away");
                    return columns;
                }

                if (rows++ % 4096 == 0)
                {
                    cancellation.ThrowIfCancellationRequested();
                    progress?.Invoke((double)text.Position / text.Length);
                }
            }
        }
        catch (MaxFieldSizeException)
        {
            problem = new WrittenPlace(path, layout.Lead + parser.RawRow, 1).Error("", "a cell that does not end", "a row for each instant, each on its own line", "look for a quote mark that is not closed");
        }

        return columns;
    }

    /// <summary>The numbers from lowest to highest, as a sentence has them.</summary>
    public string Range() => Numbers == 0 && _clocks.First is { } first ? $"{first} to {_clocks.Last}" : Numbers == 0 ? "no numbers" : string.Create(CultureInfo.InvariantCulture, $"{Low:0.####} to {High:0.####}");
}
