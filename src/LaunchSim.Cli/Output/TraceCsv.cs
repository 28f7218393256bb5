using System.Globalization;
using System.Text;
using LaunchSim.Dynamics;
using LaunchSim.Launch;

namespace LaunchSim.Cli.Output;

/// <summary>
/// A launch's trace as text: SI units, a decimal point, line feeds, the shortest numbers that read back the same, nothing
/// where a value has no meaning. Written row by row, so that a fine sample needs no memory.
/// </summary>
internal static class TraceCsv
{
    private const int LongestNumber = 32;
    private const int RowsBetweenQuestions = 64;

    /// <summary>Writes header and rows, as far as the launch came.</summary>
    /// <param name="solution">The launch.</param>
    /// <param name="sample">Time between rows, s.</param>
    /// <param name="stream">Where to.</param>
    /// <param name="cancellation">Asked now and then.</param>
    public static void Write(LaunchSolution solution, double sample, Stream stream, CancellationToken cancellation)
    {
        IReadOnlyList<TraceColumn> columns = TraceColumns.All;
        stream.Write(Encoding.UTF8.GetBytes(string.Join(',', columns.Select(column => column.Name)) + "\n"));
        int rows = solution.Steps == 0 ? 0 : SampleGrid.Rows(solution.Duration, sample);
        byte[] line = new byte[columns.Count * (LongestNumber + 1)];
        for (int row = 0; row < rows; row++)
        {
            if (row % RowsBetweenQuestions == 0)
            {
                cancellation.ThrowIfCancellationRequested();
            }

            double time = SampleGrid.Time(row, sample);
            solution.At(Math.Min(time, solution.Duration), out Observation seen);
            seen.Time = time;
            int at = 0;
            for (int column = 0; column < columns.Count; column++)
            {
                // Adding 0 takes the sign from a zero.
                double value = columns[column].Read(seen) + 0.0;
                if (double.IsFinite(value))
                {
                    _ = value.TryFormat(line.AsSpan(at), out int written, default, CultureInfo.InvariantCulture);
                    at += written;
                }

                line[at++] = (byte)(column == columns.Count - 1 ? '\n' : ',');
            }

            stream.Write(line, 0, at);
        }
    }
}
