using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Typical;

/// <summary>
/// One look at what is known, on behalf of one value: an entered number where there is one, else the typical one. Keeps
/// what was asked for, and which measured values were not there.
/// </summary>
internal sealed class KnownReading(KnownCar car)
{
    private const double Gravity = 9.80665;

    private readonly List<string> _read = [];
    private readonly List<string> _readInAll = [];
    private readonly List<string> _lacking = [];

    public IReadOnlyList<string> Read => _read;

    /// <summary>What was asked for, and what that was worked out from in turn.</summary>
    public IReadOnlyList<string> ReadInAll => _readInAll;

    public IReadOnlyList<string> Lacking => _lacking;

    public TypicalHints Hints => car.Hints;

    /// <summary>Wheelbase, m.</summary>
    public double Wheelbase => Number("car.wheelbase");

    /// <summary>The whole car's mass, kg.</summary>
    public double Mass => (Number("car.scales.front") + Number("car.scales.rear")) / Gravity;

    /// <summary>Distance of the whole car's centre of gravity ahead of the rear axle, m.</summary>
    public double CentreAhead => Wheelbase * Number("car.scales.front") / (Number("car.scales.front") + Number("car.scales.rear"));

    /// <summary>The sprung mass at one corner of an end, kg.</summary>
    public double SprungCorner(string end) => ((Number($"car.scales.{end}") / Gravity) - Number($"{end}.unsprung")) / 2;

    /// <summary>A number, or one of a point or row.</summary>
    public double Number(string path, int index = 0) => Values(path) is var values && index < values.Length ? values[index] : double.NaN;

    public Point Point(string path)
    {
        double[] values = Values(path);
        return values.Length == 2 ? new Point(values[0], values[1]) : new Point(double.NaN, double.NaN);
    }

    public double[] Row(string path) => Values(path);

    public string? Word(string path) => car.FindWord(path);

    /// <summary>What was entered, nothing in its place otherwise.</summary>
    public double[]? Entered(string path)
    {
        Note(path);
        return car.Find(path)?.AllSi();
    }

    private double[] Values(string path)
    {
        if (Entered(path) is { } entered)
        {
            return entered;
        }

        if (TypicalRegister.Find(path) is not TypicalValue typical)
        {
            if (!_lacking.Contains(path))
            {
                _lacking.Add(path);
            }

            return [double.NaN];
        }

        var inner = new KnownReading(car);
        double[] values = typical.Evaluate(inner);
        _readInAll.AddRange(inner._readInAll.Except(_readInAll));
        _lacking.AddRange(inner._lacking.Except(_lacking));
        return values;
    }

    private void Note(string path)
    {
        if (!_read.Contains(path))
        {
            _read.Add(path);
            _readInAll.Add(path);
        }
    }
}
