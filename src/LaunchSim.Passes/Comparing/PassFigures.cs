using LaunchSim.Figures;

namespace LaunchSim.Passes.Comparing;

/// <summary>The figures that data can tell, by the keys of the predicted ones: a line each.</summary>
internal static class PassFigures
{
    private const double QuarterInch = 6.35e-3, RiseWindow = 0.4, LeastRise = 2e-3;

    private static readonly (double Time, string Key)[] Instants = [(0.1, "100ms"), (0.2, "200ms"), (0.3, "300ms")];

    /// <summary>Reads all figures off a pass's channels.</summary>
    /// <param name="channels">Finds the channel of a quantity; null when it was not measured.</param>
    /// <param name="predicted">The predicted figures.</param>
    /// <param name="catalog">Their definitions.</param>
    /// <param name="marks">The marks that are timed, m.</param>
    /// <param name="duration">Where the prediction ends, s.</param>
    public static IReadOnlyList<PassFigure> Read(Func<string, (PassChannel Channel, string Source)?> channels, FigureSet predicted, FigureCatalog catalog, IReadOnlyList<double> marks, double duration)
    {
        var figures = new List<PassFigure>();
        (Reading At, PassChannel Channel, string Source)? front = First("front_gap"), rear = First("rear_gap");
        Lag("gap_lag_s", front, rear);
        Time("front_gap_6_35mm_s", front);
        Time("rear_gap_6_35mm_s", rear);
        (Reading At, PassChannel Channel, string Source)? frontHalf = Rise("front", 0.5), rearHalf = Rise("rear", 0.5);
        Lag("rise_lag_s", frontHalf, rearHalf);
        Time("front_rise_t50_s", frontHalf);
        Time("rear_rise_t50_s", rearHalf);
        Largest("front_ride_height", "front_rise_peak_m", null, RiseWindow);
        Largest("rear_ride_height", "rear_rise_peak_m", null, RiseWindow);
        Largest("rear_gap", "separation_peak_m", "separation_peak_time_s", duration);
        foreach ((string quantity, string figure) in new[] { ("front_gap", "front_gap"), ("rear_gap", "rear_gap"), ("front_ride_height", "front_rise"), ("rear_ride_height", "rear_rise") })
        {
            foreach ((double time, string key) in Instants)
            {
                if (channels(quantity) is { } one && one.Channel.At(time) is { } reading)
                {
                    Add($"{figure}_at_{key}_m", reading.Value, reading.ValueSd, one.Source);
                }
            }
        }

        Largest("pitch", "pitch_nose_up_largest_rad", "pitch_nose_up_largest_time_s", duration);
        Largest("acceleration", "acceleration_largest_mps2", "acceleration_largest_time_s", duration);
        Marks();
        return figures;

        void Add(string key, double value, double sd, string source)
        {
            if (catalog.TryFind(key, out int index))
            {
                figures.Add(new PassFigure(catalog.Definitions[index], value, sd, predicted[key], source));
            }
        }

        (Reading, PassChannel, string)? First(string quantity) =>
            channels(quantity) is { } one && one.Channel.FirstAt(QuarterInch) is { } at ? (at, one.Channel, one.Source) : null;

        (Reading, PassChannel, string)? Rise(string end, double share) =>
            channels($"{end}_ride_height") is { } one && one.Channel.Largest(0, RiseWindow) is { } peak && peak.Value >= LeastRise && one.Channel.FirstAt(share * peak.Value, share * peak.ValueSd) is { } at
                ? (at, one.Channel, one.Source) : null;

        void Time(string key, (Reading At, PassChannel Channel, string Source)? one)
        {
            if (one is { } read)
            {
                Add(key, read.At.Time, Root(read.At.TimeSd, read.Channel.ClockSd), read.Source);
            }
        }

        // Two channels of one clock share its doubt: it falls out of their lag.
        void Lag(string key, (Reading At, PassChannel Channel, string Source)? front, (Reading At, PassChannel Channel, string Source)? rear)
        {
            if (front is { } f && rear is { } r)
            {
                double clocks = f.Channel.Clock == r.Channel.Clock ? 0 : Root(f.Channel.ClockSd, r.Channel.ClockSd);
                Add(key, f.At.Time - r.At.Time, Root(Root(f.At.TimeSd, r.At.TimeSd), clocks), f.Source == r.Source ? f.Source : $"{f.Source}; {r.Source}");
            }
        }

        void Largest(string quantity, string key, string? timeKey, double until)
        {
            if (channels(quantity) is { } one && one.Channel.Largest(0, until) is { } peak)
            {
                Add(key, peak.Value, peak.ValueSd, one.Source);
                if (timeKey is not null)
                {
                    Add(timeKey, peak.Time, Root(peak.TimeSd, one.Channel.ClockSd), one.Source);
                }
            }
        }

        void Marks()
        {
            if (channels("speed") is not { } one)
            {
                return;
            }

            for (int i = 0; i < marks.Count; i++)
            {
                if (one.Channel.FirstSum(marks[i]) is { } at)
                {
                    Add(FormattableString.Invariant($"mark_{i + 1}_time_s"), at.Time, Root(at.TimeSd, one.Channel.ClockSd), $"{one.Source}, summed up");
                    if (one.Channel.At(at.Time) is { } speed)
                    {
                        Add(FormattableString.Invariant($"mark_{i + 1}_speed_mps"), speed.Value, speed.ValueSd, one.Source);
                    }
                }
            }
        }
    }

    private static double Root(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
