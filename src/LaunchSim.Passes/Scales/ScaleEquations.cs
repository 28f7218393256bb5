using LaunchSim.Scenarios.Scales;

namespace LaunchSim.Passes.Scales;

/// <summary>
/// All readings of a sheet as equations. Every length is off by its doubt too, so each is a parameter beside the three that are
/// asked for, and its reading one equation for it: nothing is taken for exact.
/// </summary>
internal sealed class ScaleEquations
{
    // Parameters: weight, ahead, up, wheelbase, front and rear radius, then heights of the lifts.
    private const int Fixed = 6;

    private readonly List<ScaleMeasurement> _all = [];
    private readonly List<double> _start;

    public ScaleEquations(ScaleSheet sheet)
    {
        double ahead = sheet.Front.Total * sheet.Wheelbase.Value / sheet.Weight;
        _start = [sheet.Weight, ahead, 0, sheet.Wheelbase.Value, sheet.FrontRadius.Value, sheet.RearRadius.Value];
        Load("front axle, level", sheet.Front, -1, p => p[0] * p[1] / p[3]);
        Load("rear axle, level", sheet.Rear, -1, p => p[0] * (1 - (p[1] / p[3])));
        Length("wheelbase", ScaleCause.Wheelbase, sheet.Wheelbase, ScaleDoubts.Tape, -1, 3);
        Length("front wheel centres, level", ScaleCause.Radius, sheet.FrontRadius, ScaleDoubts.Height, -1, 4);
        Length("rear wheel centres, level", ScaleCause.Radius, sheet.RearRadius, ScaleDoubts.Height, -1, 5);
        for (int i = 0; i < sheet.Lifts.Count; i++)
        {
            Lift(sheet.Lifts[i], i, sheet.Lifts.Count > 1 ? $"lift {i + 1}, " : "lifted, ");
        }

        // A line through the wheel centres' mean height and the first lift is near enough to start from.
        _start[2] = (sheet.FrontRadius.Value + sheet.RearRadius.Value) / 2;
        double[] level = [.. _start];
        double[] higher = [.. _start];
        higher[2] += 0.1;
        ScaleMeasurement first = _all.First(one => one.Lift == 0 && one.Cause == ScaleCause.Scales);
        double slope = first.Predict(higher) - first.Predict(level);
        _start[2] += slope == 0 ? 0 : 0.1 * (first.Value - first.Predict(level)) / slope;
    }

    public IReadOnlyList<ScaleMeasurement> All => _all;

    public double[] Start => [.. _start];

    public bool Residuals(ReadOnlySpan<double> parameters, Span<double> residuals)
    {
        double[] p = parameters.ToArray();
        for (int k = 0; k < _all.Count; k++)
        {
            residuals[k] = (_all[k].Predict(p) - _all[k].Value) / _all[k].Deviation;
        }

        return true;
    }

    public static LiftedCar Car(double[] p) => new(p[0], p[1], p[2], p[3], p[4], p[5]);

    private void Lift(ScaleLift lift, int number, string words)
    {
        int raised = _start.Count;
        _start.Add(lift.Height.Value);
        Length(words + "raised wheel centres", ScaleCause.Height, lift.Height, ScaleDoubts.Height, number, raised);
        int standing = lift.RaisesFront ? 5 : 4;
        if (lift.StandingHeight is { } height)
        {
            standing = _start.Count;
            _start.Add(height.Value);
            Length(words + "standing wheel centres", ScaleCause.Height, height, ScaleDoubts.Height, number, standing);
        }

        double Front(double[] p) => lift.RaisesFront ? Car(p).FrontLoad(p[raised], p[standing]) : Car(p).FrontLoad(p[standing], p[raised]);
        double Rear(double[] p) => p[0] - Front(p);
        Load(words + "standing axle", lift.Load, number, lift.RaisesFront ? Rear : Front);
        if (lift.RaisedLoad is { } load)
        {
            Load(words + "raised axle", new AxleLoad([load]), number, lift.RaisesFront ? Front : Rear);
        }
    }

    private void Load(string words, AxleLoad load, int lift, Func<double[], double> predict)
    {
        double usual = load.Pads.Count == 1 ? ScaleDoubts.Axle : ScaleDoubts.Pad;
        double half = Math.Sqrt(load.Pads.Sum(pad => (pad.HalfWidth ?? usual) * (pad.HalfWidth ?? usual)));
        _all.Add(new ScaleMeasurement(words, ScaleCause.Scales, load.Pads[0], load.Total, half, load.Pads.All(pad => pad.HalfWidth is not null), lift, predict));
    }

    private void Length(string words, ScaleCause cause, ScaleReading reading, double usual, int lift, int parameter) =>
        _all.Add(new ScaleMeasurement(words, cause, reading, reading.Value, reading.HalfWidth ?? usual, reading.HalfWidth is not null, lift, p => p[parameter]));
}
