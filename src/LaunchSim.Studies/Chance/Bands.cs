using static System.FormattableString;

namespace LaunchSim.Studies.Chance;

/// <summary>
/// One column of the traces of many cars, and the band that most of them stay within. Each car's column is set by its number,
/// from any thread, without locks: no two cars share memory, so the band does not depend on who came first.
/// </summary>
/// <remarks>
/// Runs end at different rows. A band is that of the cars that came so far: where cars drop out it may turn for that reason
/// alone, so say <see cref="BandRow.Cars"/> beside it. Values are kept as <see cref="float"/>, to seven digits: half the room,
/// and finer than any line.
/// </remarks>
public sealed class Bands
{
    private readonly float[] _values;

    /// <summary>Room for all cars, 4 bytes a value, all of it empty.</summary>
    /// <param name="cars">How many cars, 0 or more.</param>
    /// <param name="rows">How many rows the longest trace may have, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative, or both together are more than an array holds.</exception>
    public Bands(int cars, int rows)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(cars);
        ArgumentOutOfRangeException.ThrowIfNegative(rows);
        ArgumentOutOfRangeException.ThrowIfGreaterThan((long)cars * rows, Array.MaxLength, nameof(rows));
        Cars = cars;
        Rows = rows;
        _values = new float[cars * rows];
        _values.AsSpan().Fill(float.NaN);
    }

    /// <summary>How many cars there is room for.</summary>
    public int Cars { get; }

    /// <summary>How many rows there is room for.</summary>
    public int Rows { get; }

    /// <summary>Sets a car's column. Different cars may be set at the same time; a car that never is counts at no row.</summary>
    /// <param name="car">Its number, 0 to below <see cref="Cars"/>.</param>
    /// <param name="column">Its values from the first row on; not a number, or left away at the end, where its run did not come so far.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no room for such a car.</exception>
    /// <exception cref="ArgumentException">The column is too long, or a value is infinite or too large for a <see cref="float"/>.</exception>
    public void Set(int car, ReadOnlySpan<double> column)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(car);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(car, Cars);
        if (column.Length > Rows)
        {
            throw new ArgumentException($"The column has {column.Length} rows, there is room for {Rows}.", nameof(column));
        }

        // Looked through first: a column that is refused leaves nothing behind.
        for (int row = 0; row < column.Length; row++)
        {
            if (float.IsInfinity((float)column[row]))
            {
                throw new ArgumentException(
                    Invariant($"Car {car} has {column[row]} at row {row}, which is no value of a band."), nameof(column));
            }
        }

        Span<float> own = _values.AsSpan(car * Rows, Rows);
        for (int row = 0; row < column.Length; row++)
        {
            own[row] = (float)column[row];
        }

        own[column.Length..].Fill(float.NaN);
    }

    /// <summary>The band, row by row. To be asked for when no car is being set any more.</summary>
    /// <param name="low">The share of the cars below its lower line, 0 to 1.</param>
    /// <param name="high">The share of the cars below its upper line, <paramref name="low"/> to 1.</param>
    /// <returns>As many as there are rows; quantiles by <see cref="Quantiles.OfSorted"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share is out of range.</exception>
    public BandRow[] Read(double low = 0.05, double high = 0.95)
    {
        if (!(low >= 0 && low <= high && high <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(low), low, Invariant($"0 ≤ low ≤ high ≤ 1 must hold; high is {high}."));
        }

        var band = new BandRow[Rows];
        double[] seen = new double[Cars];
        for (int row = 0; row < Rows; row++)
        {
            int cars = 0;
            for (int car = 0; car < Cars; car++)
            {
                float value = _values[(car * Rows) + row];
                if (!float.IsNaN(value))
                {
                    seen[cars++] = value;
                }
            }

            Span<double> sorted = seen.AsSpan(0, cars);
            sorted.Sort();
            band[row] = new BandRow(Quantiles.OfSorted(sorted, low), Quantiles.OfSorted(sorted, 0.5), Quantiles.OfSorted(sorted, high), cars);
        }

        return band;
    }
}
