using System.Buffers.Binary;
using System.Text.Json;
using LaunchSim.Dynamics;
using LaunchSim.Launch;

namespace LaunchSim.Web.Documents;

/// <summary>
/// Columns of numbers for the front end: single-precision floats, little-endian, in base 64. Seven digits are more than any
/// read-out shows, take half the room of decimals, and are there without parsing.
/// </summary>
internal static class ColumnJson
{
    /// <summary>Most rows of a launch: a finer picture is neither seen nor sent.</summary>
    public const int MostRows = 2001;

    /// <summary>Least time between two rows, s: what a frame of slow motion can show.</summary>
    public const double Finest = 0.001;

    /// <summary>Time between rows of a launch, s: whole milliseconds.</summary>
    /// <param name="duration">The launch's length, s.</param>
    /// <param name="finest">The least of it, s.</param>
    public static double Step(double duration, double finest = Finest) => finest * Math.Max(1, Math.Ceiling((duration / finest / (MostRows - 1)) - 1e-9));

    /// <summary>Writes a launch's columns with their time between rows.</summary>
    /// <param name="json">The writer, within the launch's object.</param>
    /// <param name="solution">The launch.</param>
    /// <param name="finest">Least time between two rows, s.</param>
    public static void Write(Utf8JsonWriter json, LaunchSolution solution, double finest = Finest)
    {
        double step = Step(solution.Duration, finest);
        int rows = solution.Steps == 0 ? 0 : SampleGrid.Rows(solution.Duration, step);
        IReadOnlyList<TraceColumn> columns = FrontColumns.Of(solution.Car);
        var values = new float[columns.Count][];
        for (int column = 0; column < values.Length; column++)
        {
            values[column] = new float[rows];
        }

        for (int row = 0; row < rows; row++)
        {
            solution.At(Math.Min(SampleGrid.Time(row, step), solution.Duration), out Observation seen);
            for (int column = 0; column < values.Length; column++)
            {
                values[column][row] = (float)columns[column].Read(seen);
            }
        }

        json.WriteNumber("step", step);
        json.WriteNumber("rows", rows);
        json.WriteStartObject("columns");
        for (int column = 0; column < values.Length; column++)
        {
            if (Array.Exists(values[column], float.IsFinite))
            {
                Write(json, columns[column].Name, values[column]);
            }
        }

        json.WriteEndObject();
    }

    /// <summary>Writes one column.</summary>
    /// <param name="json">The writer, within an object.</param>
    /// <param name="name">The column's name.</param>
    /// <param name="values">Its values; not finite where there is none.</param>
    public static void Write(Utf8JsonWriter json, string name, ReadOnlySpan<float> values)
    {
        byte[] bytes = new byte[values.Length * sizeof(float)];
        for (int i = 0; i < values.Length; i++)
        {
            BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(i * sizeof(float)), float.IsFinite(values[i]) ? values[i] : float.NaN);
        }

        json.WriteBase64String(name, bytes);
    }
}
