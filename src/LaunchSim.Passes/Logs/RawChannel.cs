using LaunchSim.Passes.Aligning;
using LaunchSim.Passes.Measured;

namespace LaunchSim.Passes.Logs;

/// <summary>A column's values about the launch, gaps taken out, in SI at the axle, on the log's own clock and from its own zero.</summary>
/// <param name="Column">The column.</param>
/// <param name="Times">Instants, s.</param>
/// <param name="Values">Values, SI.</param>
/// <param name="Noise">One standard deviation of one of them.</param>
internal sealed record RawChannel(PreparedColumn Column, double[] Times, double[] Values, double Noise)
{
    // Standing still: up to shortly before the release, which is not known to the last millisecond.
    private const double StandingFrom = -0.5, StandingTo = -0.02;
    private const int LeastStanding = 3;

    /// <summary>Reads one column of the rows about the launch.</summary>
    public static RawChannel Of(PreparedColumn column, LogSpan span, int index, bool hasValues)
    {
        int[] there = hasValues ? [.. Enumerable.Range(0, span.Times.Length).Where(i => double.IsFinite(span.Columns[index][i]))] : [];
        double[] values = [.. there.Select(i => span.Columns[index][i] * column.Factor)];

        // What is usual is only taken where the values do not scatter more than that themselves.
        double noise = column.Noise / Math.Sqrt(span.Together);
        return new RawChannel(column, [.. there.Select(i => span.Times[i])], values, column.Column.Noise is null ? Math.Max(noise, Measured.Scatter.Of(values)) : noise);
    }

    /// <summary>The channel as it is laid over the prediction: with a zero that is known taken off.</summary>
    public ShiftSignal Signal => new(
        Times, Column.Zero is { } zero and not 0 ? [.. Values.Select(value => value - zero)] : Values, Column.Predicted, Noise,
        Column.Zero is null ? double.PositiveInfinity : 0, ReleaseSearch.GainSd);

    /// <summary>The channel with time from the release, and from the standing car where its zero is of no account.</summary>
    /// <param name="shift">The release on the log's clock, s.</param>
    /// <param name="logFile">The log.</param>
    /// <param name="parallax">How far off all lengths of a camera may be, as a share, nineteen times in twenty.</param>
    /// <param name="remarks">Takes how the zero was found where nothing stands before the release.</param>
    public MeasuredSeries Laid(double shift, string logFile, double parallax, List<string> remarks)
    {
        double zero = Column.Zero ?? Standing(shift, remarks);
        bool isSeen = Column.Column.IsPixels || parallax > 0;
        double doubt = isSeen && Column.Quantity.Kind == Scenarios.Units.QuantityKind.Length ? Math.Sqrt((parallax * parallax) + (Column.Column.PixelDoubt * Column.Column.PixelDoubt)) / 2 : 0;
        return new MeasuredSeries(
            Column.Quantity, [.. Times.Select(time => time - shift)], [.. Values.Select(value => value - zero)], Noise, $"{Path.GetFileName(logFile)}, {Column.Column.Column}")
        {
            ScaleDoubt = doubt,
        };
    }

    private double Standing(double shift, List<string> remarks)
    {
        int[] standing = [.. Enumerable.Range(0, Times.Length).Where(i => Times[i] - shift >= StandingFrom && Times[i] - shift <= StandingTo)];
        if (standing.Length >= LeastStanding)
        {
            // The median: a spike before the release does not lift the car.
            double[] values = [.. standing.Select(i => Values[i]).Order()];
            return values.Length % 2 == 1 ? values[values.Length / 2] : (values[(values.Length / 2) - 1] + values[values.Length / 2]) / 2;
        }

        ShiftEstimate fit = ShiftFit.Find([Signal], shift, 0, (StandingFrom, 0.4));
        remarks.Add($"`{Column.Column.Column}`: nothing was recorded before the release; its zero was taken from laying it over the prediction. A zero: in the mapping, the standing car's reading, is better.");
        return fit.Offsets[0];
    }
}
