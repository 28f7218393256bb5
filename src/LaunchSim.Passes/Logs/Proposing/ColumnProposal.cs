using System.Globalization;
using LaunchSim.Passes.Measured;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Logs.Proposing;

/// <summary>
/// Says what the columns of a log may be, by their names, the units in the names or below them, how far their numbers go,
/// and how fast rows come; and why. What it cannot tell it leaves open.
/// </summary>
public static class ColumnProposal
{
    // A logger writes a row in between these, s.
    private const double Fastest = 2e-5, Slowest = 0.21;

    private static readonly string[] LoggedUnits = ["s", "ms", "us"];

    /// <summary>Looks at a log of any length, once from beginning to end.</summary>
    /// <param name="logFile">The log.</param>
    /// <param name="progress">Told now and then what share was read; or null.</param>
    /// <param name="cancellation">Asked now and then.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static ProposalResult Of(string logFile, Action<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(logFile);
        try
        {
            if (LogLayout.Find(logFile, LogTable.Open, [], out Diagnostic[] problems) is not { } layout)
            {
                return new ProposalResult(null, problems);
            }

            ColumnScan[] scans = ColumnScan.Of(logFile, layout, progress, cancellation, out long rows, out Diagnostic? problem);
            return problem is not null ? new ProposalResult(null, [problem])
                : rows < 2 ? new ProposalResult(null, [new WrittenPlace(logFile, 0, 0).Error("", rows == 1 ? "one row" : "no row at all", "a row for each instant", "look whether the logger's export came to its end")])
                : new ProposalResult(Of(logFile, layout, scans, rows), []);
        }
        catch (LogTextException exception)
        {
            return new ProposalResult(null, [exception.Finding]);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return new ProposalResult(null, [new WrittenPlace(logFile, 0, 0).Error("", "a file that could not be read to its end", "a file that may be read", exception.Message.TrimEnd('.'))]);
        }
    }

    private static LogProposal Of(string logFile, LogLayout layout, ColumnScan[] scans, long rows)
    {
        HeaderWords[] names = [.. layout.Names.Select((name, i) => HeaderWords.Of(name[0] == '#' && layout.HeaderLine == 0 ? "" : name, layout.Units.Count > i ? layout.Units[i] : ""))];
        ProposedColumn?[] columns = new ProposedColumn?[scans.Length];
        int time = TimeOf(names, scans, rows, layout, columns);
        for (int i = 0; i < scans.Length; i++)
        {
            columns[i] ??= Quantity(i, layout.Names[i], names[i], scans[i], rows);
            if (columns[i]!.Certainty == Certainty.Sure && columns[i]!.Quantity is not null && layout.HeaderLine > 0 && layout.Names.Count(name => name == layout.Names[i]) > 1)
            {
                columns[i] = columns[i]! with { Certainty = Certainty.Likely, Why = $"{columns[i]!.Why}; but its name stands twice: which one is it?" };
            }
        }

        string span = time < 0 ? "no column of times" : columns[time] is { Quantity: "time", Unit: { } unit }
            ? string.Create(CultureInfo.InvariantCulture, $"{(scans[time].Last - scans[time].First) * Seconds(unit):0.##} s, a row every {1e3 * (scans[time].Last - scans[time].First) * Seconds(unit) / Math.Max(1, rows - 1 - scans[time].Repeats):0.##} ms on the mean")
            : columns[time]!.Range;
        return new LogProposal
        {
            SourceFile = logFile,
            Layout = string.Create(CultureInfo.InvariantCulture, $"{scans.Length} columns parted by {Separator(layout.Separator)}, decimals behind a {(layout.DecimalComma ? "comma" : "point")}, {(layout.HeaderLine > 0 ? $"names in line {layout.HeaderLine}" : "no names")}{(layout.Units.Count > 0 ? ", units below them" : "")}"),
            Rows = string.Create(CultureInfo.InvariantCulture, $"{rows} rows, {span}"),
            Columns = [.. columns.Select(column => column!)],
            Table =
            [
                $"separator: {Separator(layout.Separator)}", $"decimal: {(layout.DecimalComma ? "comma" : "point")}",
                .. layout.HeaderLine > 0 ? [] : new[] { "header: none" },
            ],
        };
    }

    private static int TimeOf(HeaderWords[] names, ColumnScan[] scans, long rows, LogLayout layout, ProposedColumn?[] columns)
    {
        bool Rises(int i) => scans[i].Numbers >= 2 && scans[i].Falls == 0 && scans[i].High > scans[i].Low && scans[i].Repeats < 0.9 * rows;
        int named = Array.FindIndex(names, name => name.HasAny("time", "timestamp", "elapsed", "t") || (name.Words.Count == 0 && name.Unit is "s" or "ms"));
        int frame = Array.FindIndex(names, name => name.HasAny("frame", "frames"));
        if (named >= 0 && scans[named].IsClock)
        {
            columns[named] = Column(named, "time", "clock", Certainty.Sure, "named so, and written as h:mm:ss");
            return named;
        }

        if (named >= 0 && (Rises(named) || scans[named].Numbers > 0))
        {
            (string? unit, Certainty sure, string why) = TimeUnit(names[named], scans[named], rows);
            columns[named] = Column(named, "time", unit, Rises(named) ? sure : Certainty.Likely, Rises(named) ? why : $"named so, but it does not always rise; {why}");
            return named;
        }

        // Named in words that are not known here.
        int clock = Array.FindIndex(scans, scan => scan.IsClock && scan.Numbers == 0);
        if (clock >= 0)
        {
            columns[clock] = Column(clock, "time", "clock", Certainty.Sure, "written as h:mm:ss");
            return clock;
        }

        int seconds = Enumerable.Range(0, scans.Length).FirstOrDefault(i => names[i].Unit is "s" or "ms" or "us" && Rises(i), -1);
        if (seconds >= 0)
        {
            (string? unit, Certainty _, string why) = TimeUnit(names[seconds], scans[seconds], rows);
            columns[seconds] = Column(seconds, "time", unit, Certainty.Likely, $"it never falls, and its unit is one of time; {why}");
            return seconds;
        }

        if (frame >= 0 && Rises(frame))
        {
            columns[frame] = Column(frame, "frame", "frames", Certainty.Likely, "named so and rises; how many frames a second the video has is not in the log");
            return frame;
        }

        // Without a name: a column that rises in even steps from row to row.
        int first = Enumerable.Range(0, scans.Length).FirstOrDefault(Rises, -1);
        if (first >= 0 && (names[first].Words.Count == 0 || (first == 0 && names[first].Unit.Length == 0)))
        {
            (string? unit, Certainty _, string why) = TimeUnit(names[first], scans[first], rows);
            columns[first] = Column(first, "time", unit, Certainty.Likely, $"it never falls; {why}");
            return first;
        }

        return -1;

        ProposedColumn Column(int i, string quantity, string? unit, Certainty certainty, string why) => new(i + 1, layout.HeaderLine > 0 ? layout.Names[i] : "", scans[i].Range(), quantity, unit, certainty, why);
    }

    private static (string? Unit, Certainty Certainty, string Why) TimeUnit(HeaderWords name, ColumnScan scan, long rows)
    {
        double spacing = (scan.Last - scan.First) / Math.Max(1, rows - 1 - scan.Repeats);
        if (Schema(name.Unit))
        {
            double seconds = spacing * Seconds(name.Unit);
            return seconds is > Fastest and < Slowest
                ? (name.Unit, Certainty.Sure, $"named so, {name.Unit} in its name")
                : (name.Unit, Certainty.Likely, string.Create(CultureInfo.InvariantCulture, $"named so, {name.Unit} in its name, but that is a row every {1e3 * seconds:0.###} ms"));
        }

        string[] fit = [.. LoggedUnits.Where(unit => spacing * Seconds(unit) is > Fastest and < Slowest)];
        string told = string.Create(CultureInfo.InvariantCulture, $"a row every {spacing:0.######} of its unit");
        return fit.Length == 1 ? (fit[0], Certainty.Sure, $"{told}: only {fit[0]} is a rate that loggers have")
            : fit.Length > 1 ? (fit[0], Certainty.Likely, $"{told}: could be {string.Join(" or ", fit)}")
            : (null, Certainty.Open, $"{told}: no unit makes that a rate that loggers have");

        static bool Schema(string unit) => unit is "s" or "ms" or "us" or "min" or "h";
    }

    private static ProposedColumn Quantity(int i, string shown, HeaderWords name, ColumnScan scan, long rows)
    {
        string label = name.Words.Count == 0 && name.Unit.Length == 0 && shown.StartsWith('#') ? "" : shown;
        ProposedColumn Answer(string? quantity, string? unit, Certainty certainty, string why) => new(i + 1, label, scan.Range(), quantity, unit, certainty, why);
        if (scan.Numbers == 0)
        {
            return Answer(null, null, Certainty.Open, "no numbers");
        }

        NameRule? rule = NameRule.All.FirstOrDefault(one => one.IsMeant(name));
        if (rule is null)
        {
            string? missing = name.Words.Count == 0 ? null : NameRule.WhatIsMissing(name);
            (string? byUnit, string hint) = missing is null ? ByUnit(name, scan) : (null, "");
            return Answer(byUnit, byUnit is null ? null : name.Unit, Certainty.Open, missing is not null ? $"its name does not say {missing}" : $"{(name.Words.Count == 0 ? "no name to go by" : "nothing that the prediction has, by its name")}{hint}");
        }

        MeasuredQuantity quantity = MeasuredQuantities.Find(rule.Quantity)!;
        string gaps = scan.Gaps > 0 ? string.Create(CultureInfo.InvariantCulture, $"; {scan.Gaps} of {rows} without a value") : "";
        if (!(scan.High > scan.Low))
        {
            return Answer(quantity.Key, null, Certainty.Open, "named so, but it never changes" + gaps);
        }

        bool fits = name.IsOf(quantity.Kind) || (quantity.Rolls && name.IsOf(QuantityKind.Speed));
        if (fits)
        {
            string? odd = name.Words is ["rpm"] ? "whose turning it is does not stand there" : Odd(quantity, name.Unit, scan);
            return Answer(quantity.Key, name.Unit, odd is null && scan.Words == 0 ? Certainty.Sure : Certainty.Likely,
                $"named so, {name.Unit} in its name{(odd is null ? "" : $", but {odd}")}{(scan.Words > 0 ? ", but it also holds words: name them under missing:" : "")}{gaps}");
        }

        if (name.Unit.Length > 0)
        {
            return Answer(quantity.Key, null, Certainty.Open, name.Unit == "V"
                ? "named so, in volts: give scale: what one volt is, and unit: its unit" + gaps
                : $"named so, but its unit `{name.Unit}` is none of {quantity.Kind.Name}" + gaps);
        }

        (string? unit, string why) = UnitGuess.Of(quantity, scan.Low, scan.High);
        return Answer(quantity.Key, unit, unit is null ? Certainty.Open : Certainty.Likely, $"named so; no unit in its name: {why}{gaps}");
    }

    // What the unit still says where the name says nothing.
    private static (string? Quantity, string Hint) ByUnit(HeaderWords name, ColumnScan scan)
    {
        string? quantity = name.IsOf(QuantityKind.Speed) && scan.High > 3 ? "speed" : name.Unit == "rpm" && scan.Low > 300 ? "engine_speed" : null;
        return (quantity, quantity switch
        {
            "speed" => $"; by {name.Unit} a speed: of the car over the ground?",
            "engine_speed" => "; by rpm that never stand still an engine's speed?",
            _ => name.Unit == "rpm" ? "; by rpm from rest a shaft's or a wheel's speed: which?"
                : name.Unit == "deg/s" ? "; by deg/s a turning: the body's pitch, nose up?"
                : name.IsOf(QuantityKind.Length) && scan.High > scan.Low ? $"; by {name.Unit} a height, gap or travel: of which end?"
                : "",
        });
    }

    // What the numbers say against the unit in the name.
    private static string? Odd(MeasuredQuantity quantity, string unit, ColumnScan scan)
    {
        (string? likely, string why) = UnitGuess.Of(quantity, scan.Low, scan.High);
        if (likely is null || likely == unit || (quantity.Rolls && !Scenarios.Units.Quantity.TryParse($"1 {unit}", quantity.Kind, out _, out _)))
        {
            return null;
        }

        // Only a unit that would make a very different number of it.
        _ = Scenarios.Units.Quantity.TryParse($"1 {likely}", quantity.Kind, out Scenarios.Units.Quantity? one, out _);
        _ = Scenarios.Units.Quantity.TryParse($"1 {unit}", quantity.Kind, out Scenarios.Units.Quantity? other, out _);
        return one is not null && other is not null && one.Si() / other.Si() is > 3 or < 1 / 3.0 && quantity.Kind != QuantityKind.Length
            ? $"its numbers look like {likely} ({why})" : null;
    }

    private static double Seconds(string unit) => unit switch
    {
        "ms" => 1e-3,
        "us" => 1e-6,
        "min" => 60,
        "h" => 3600,
        _ => 1,
    };

    private static string Separator(char separator) => separator switch
    {
        ';' => "semicolon",
        '\t' => "tab",
        ' ' => "space",
        '|' => "bar",
        _ => "comma",
    };
}
