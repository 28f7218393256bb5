using System.Globalization;
using LaunchSim.Passes.Aligning;
using LaunchSim.Passes.Measured;
using LaunchSim.Reports;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Logs;

/// <summary>Marks that were written down by hand, laid over the prediction.</summary>
internal static class MarksReading
{
    // A length that is read off a picture by eye, m; common practice, no source.
    private const double EyeSd = 3e-3;

    private const double Step = 2e-3, Behind = 1e-6, Worst = 25;
    private const int LeastToAlign = 3;

    /// <summary>Whether a file is one of marks, by its name.</summary>
    public static bool IsMarks(string path) => path.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || path.EndsWith(".yml", StringComparison.OrdinalIgnoreCase);

    /// <summary>Reads a file of marks and lays them over a launch.</summary>
    /// <param name="path">The file.</param>
    /// <param name="mappingFile">A mapping, which marks need none of.</param>
    /// <param name="prediction">The launch.</param>
    public static LogResult Read(string path, string? mappingFile, LaunchOutcome prediction)
    {
        HandMarksResult read = new HandMarksReader(MeasuredQuantities.Recorded).Read(path);
        if (read.Marks is not { } marks)
        {
            return new LogResult(null, read.Errors);
        }

        var remarks = new List<string>();
        if (mappingFile is not null)
        {
            remarks.Add($"{Path.GetFileName(path)}: marks that were written by hand need no mapping; {Path.GetFileName(mappingFile)} was not used for them.");
        }

        double duration = prediction.Solution.Duration;
        if (Outside(marks, duration) is { Count: > 0 } outside)
        {
            return new LogResult(null, outside);
        }

        MeasuredQuantity[] quantities = [.. MeasuredQuantities.All.Where(quantity => marks.Marks.Any(mark => mark.Values.Any(value => value.Quantity == quantity.Key)))];
        IReadOnlyList<PredictedCourse> courses = PredictedCourse.Of(prediction.Solution, quantities);
        var channels = new List<(MeasuredQuantity Quantity, ShiftSignal Signal)>();
        for (int i = 0; i < quantities.Length; i++)
        {
            if (!double.IsFinite(courses[i].At(duration / 2)))
            {
                remarks.Add($"The scenario's car has no {quantities[i].Words} to compare with; left aside.");
                continue;
            }

            channels.Add((quantities[i], Signal(marks, quantities[i], courses[i], remarks)));
        }

        if (channels.Count == 0)
        {
            return new LogResult(null, [new WrittenPlace(path, 0, 0).Error("marks", "marks of nothing that the prediction has", "a quantity of this car", "mark something else")]);
        }

        double spacing = 1 / (marks.FramesPerSecond ?? 100);
        if (marks.Release is { } release)
        {
            return Laid(channels, ReleaseSearch.Find(channels, release, (release, marks.ReleaseDoubt), spacing), marks, path, remarks);
        }

        if (channels.Sum(channel => channel.Signal.Times.Count) < LeastToAlign)
        {
            return new LogResult(null, [new WrittenPlace(path, 0, 0).Error("release", "too few marks to find the release by them", $"at least {LeastToAlign} values, or the release", marks.FramesPerSecond is null ? "add release: 0 s, if the marks' times count from it" : "add release_frame: the frame in which the lamp or the hand at the button shows it")]);
        }

        (double rough, double cost) = Rough([.. channels.Select(channel => channel.Signal)], duration);
        if (!(cost / channels.Sum(channel => channel.Signal.Times.Count) < Worst))
        {
            return new LogResult(null, [new WrittenPlace(path, 0, 0).Error("marks", "marks that look nowhere like the predicted launch", "marks of this pass, lengths from the standing car", "look at signs, units and frames_per_second; or give the release")]);
        }

        return Laid(channels, ReleaseSearch.Find(channels, rough, null, spacing), marks, path, remarks);
    }

    private static List<Diagnostic> Outside(HandMarks marks, double duration)
    {
        double[] times = [.. marks.Marks.Select(mark => mark.Time).Order()];
        double middle = times[times.Length / 2];
        var outside = new List<Diagnostic>();
        foreach (HandMark mark in marks.Marks)
        {
            if (marks.Release is { } release && mark.Time - release > duration + Behind)
            {
                Add(mark, Text(mark.Time - release), "after the release");
            }
            else if (marks.Release is null && Math.Abs(mark.Time - middle) > duration)
            {
                Add(mark, Text(Math.Abs(mark.Time - middle)), mark.Time > middle ? "after the middle one of the marks" : "before the middle one of the marks");
            }
        }

        return outside;

        void Add(HandMark mark, string off, string from) => outside.Add(mark.At.Error(
            mark.Path, $"a mark outside the pass, {off} s {from}", $"up to {Text(duration)} s after the release, where the prediction ends", "look at frame, time and frames_per_second; a longer prediction: --set run.duration=\"3 s\""));
    }

    private static ShiftSignal Signal(HandMarks marks, MeasuredQuantity quantity, PredictedCourse course, List<string> remarks)
    {
        var seen = new SortedDictionary<double, MarkedValue>();
        int doubled = 0;
        foreach (HandMark mark in marks.Marks)
        {
            foreach (MarkedValue value in mark.Values.Where(value => value.Quantity == quantity.Key))
            {
                doubled += seen.TryAdd(mark.Time, value) ? 0 : 1;
            }
        }

        if (doubled > 0)
        {
            remarks.Add(string.Create(CultureInfo.InvariantCulture, $"{quantity.Words}: {doubled} {(doubled == 1 ? "value" : "values")} at an instant that had one already; the first was kept."));
        }

        double[] doubts = [.. seen.Values.Select(value => value.Doubt / 2 ?? (quantity.Kind == QuantityKind.Length ? Math.Max(EyeSd, quantity.Noise) : quantity.Noise))];
        double noise = Math.Max(1e-9, Math.Sqrt(doubts.Average(doubt => doubt * doubt)));
        return new ShiftSignal([.. seen.Keys], [.. seen.Values.Select(value => value.Value)], course, noise, 0, ReleaseSearch.GainSd);
    }

    private static (double Shift, double Cost) Rough(ShiftSignal[] signals, double duration)
    {
        double first = signals.Min(signal => signal.Times[0]), last = signals.Max(signal => signal.Times[^1]), best = last - duration, least = double.PositiveInfinity;
        for (double shift = last - duration; shift <= last; shift += Step)
        {
            // The first mark may have been made of the standing car, not long before it went.
            if (shift - first > duration)
            {
                break;
            }

            double cost = ShiftFit.Cost(signals, shift);
            if (cost < least)
            {
                (best, least) = (shift, cost);
            }
        }

        return (best, least);
    }

    private static LogResult Laid(List<(MeasuredQuantity Quantity, ShiftSignal Signal)> channels, Alignment alignment, HandMarks marks, string path, List<string> remarks) => new(
        new AlignedLog([.. channels.Select(channel => new MeasuredSeries(
            channel.Quantity, [.. channel.Signal.Times.Select(time => time - alignment.Shift)], channel.Signal.Values, channel.Signal.Noise, $"{Path.GetFileName(path)}, marks")
        {
            ScaleDoubt = channel.Quantity.Kind == QuantityKind.Length ? marks.ParallaxDoubt / 2 : 0,
        })], alignment, remarks), []);

    private static string Text(double seconds) => seconds.ToString("0.###", CultureInfo.InvariantCulture);
}
