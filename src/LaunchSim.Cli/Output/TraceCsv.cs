using System.Globalization;
using System.Text;
using LaunchSim.Launch;

namespace LaunchSim.Cli.Output;

/// <summary>A trace as text: SI units, a decimal point, line feeds, the shortest numbers that read back the same, nothing where a value has no meaning.</summary>
internal static class TraceCsv
{
    private const int LongestNumber = 32;

    /// <summary>Writes header and rows.</summary>
    /// <param name="trace">The trace.</param>
    /// <param name="stream">Where to.</param>
    /// <param name="cancellation">Asked now and then.</param>
    public static void Write(Trace trace, Stream stream, CancellationToken cancellation)
    {
        int columns = TraceColumns.All.Count;
        stream.Write(Encoding.UTF8.GetBytes(string.Join(',', TraceColumns.All.Select(column => column.Name)) + "\n"));
        byte[] line = new byte[(columns * (LongestNumber + 1)) + 1];
        for (int row = 0; row < trace.Rows; row++)
        {
            if (row % 256 == 0)
            {
                cancellation.ThrowIfCancellationRequested();
            }

            int at = 0;
            for (int column = 0; column < columns; column++)
            {
                double value = trace.Column(column)[row];
                if (double.IsFinite(value))
                {
                    _ = value.TryFormat(line.AsSpan(at), out int written, default, CultureInfo.InvariantCulture);
                    at += written;
                }

                line[at++] = (byte)(column == columns - 1 ? '\n' : ',');
            }

            stream.Write(line, 0, at);
        }
    }
}
