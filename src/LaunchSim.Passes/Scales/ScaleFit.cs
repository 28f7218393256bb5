using LaunchSim.Passes.Fitting;
using LaunchSim.Scenarios.Scales;
using MathNet.Numerics.Distributions;

namespace LaunchSim.Passes.Scales;

/// <summary>Place and height of the centre of gravity from a scale sheet, by least squares over all its readings at once.</summary>
public static class ScaleFit
{
    /// <summary>A doubt of the height beyond this is told with what would make it smaller: an inch, m.</summary>
    public const double WantedHalfWidth = 0.0254;

    // Steeper than this nobody should stand a car on blocks for the sake of a number; common practice, no source.
    private const double SteepestSlope = 20 * Math.PI / 180;

    private static readonly LeastSquaresOptions Options = new() { Tolerance = 1e-7 };

    /// <summary>Finds the centre of gravity.</summary>
    /// <param name="sheet">The readings.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="ScaleFitException">No car fits the readings.</exception>
    public static ScaleResult Solve(ScaleSheet sheet, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var equations = new ScaleEquations(sheet);
        LeastSquaresResult found = LeastSquares.Solve(equations.Residuals, equations.All.Count, equations.Start, Options, cancellation);
        if (!found.Converged || !double.IsFinite(found.Covariance[2, 2]))
        {
            throw new ScaleFitException($"no car fits these readings: {found.Reason}");
        }

        double[] p = found.Parameters;
        double[] shares = HeightShares(equations, found);
        LiftedCar car = ScaleEquations.Car(p);
        double[] slopes = [.. sheet.Lifts.Select(lift => Slope(car, lift))];
        DoubtedValue up = Doubted(found, 2);
        return new ScaleResult
        {
            Sheet = sheet,
            Weight = Doubted(found, 0),
            Ahead = Doubted(found, 1),
            Up = up,
            Left = Lateral(sheet),
            LeftShare = sheet.Front.LeftLessRight is { } front && sheet.Rear.LeftLessRight is { } rear ? 0.5 + ((front + rear) / (2 * sheet.Weight)) : null,
            Rows = [.. equations.All.Select((one, k) => new ScaleRow(one.Words, one.Cause, one.Lift, one.Reading.Place, one.Value, one.HalfWidth, one.IsEntered, one.Predict(p), shares[k]))],
            HeightShares = Enum.GetValues<ScaleCause>().ToDictionary(cause => cause, cause => equations.All.Select((one, k) => one.Cause == cause ? shares[k] : 0).Sum()),
            Slopes = slopes,
            SumOfSquares = found.SumOfSquares,
            DegreesOfFreedom = found.DegreesOfFreedom,
            Agreement = found.DegreesOfFreedom == 0 ? null : 1 - ChiSquared.CDF(found.DegreesOfFreedom, found.SumOfSquares),
            Better = up.HalfWidth > WantedHalfWidth ? Better(sheet, car, slopes, cancellation) : null,
        };
    }

    private static DoubtedValue Doubted(LeastSquaresResult found, int parameter) =>
        new(found.Parameters[parameter], 2 * Math.Sqrt(found.Covariance[parameter, parameter]));

    /// <summary>
    /// First order: the height moves by G = C·Jᵀ for each reading's standard deviation, and C = G·Gᵀ, so the readings' squares
    /// add up to the variance.
    /// </summary>
    private static double[] HeightShares(ScaleEquations equations, LeastSquaresResult found)
    {
        int count = equations.All.Count;
        double[] shares = new double[count], above = new double[count], below = new double[count];
        for (int i = 0; i < found.Parameters.Length; i++)
        {
            double step = 1e-3 * Math.Sqrt(found.Covariance[i, i]);
            double[] moved = [.. found.Parameters];
            moved[i] += step;
            _ = equations.Residuals(moved, above);
            moved[i] = found.Parameters[i] - step;
            _ = equations.Residuals(moved, below);
            for (int k = 0; k < count; k++)
            {
                shares[k] += found.Covariance[2, i] * (above[k] - below[k]) / (2 * step);
            }
        }

        double sum = shares.Sum(move => move * move);
        return [.. shares.Select(move => move * move / sum)];
    }

    private static DoubtedValue? Lateral(ScaleSheet sheet)
    {
        if (sheet is not { FrontTrack: { } frontTrack, RearTrack: { } rearTrack, Front.LeftLessRight: { } front, Rear.LeftLessRight: { } rear })
        {
            return null;
        }

        double weight = sheet.Weight;
        double left = ((front * frontTrack.Value) + (rear * rearTrack.Value)) / (2 * weight);
        double square = 0;
        foreach ((AxleLoad load, ScaleReading track) in new[] { (sheet.Front, frontTrack), (sheet.Rear, rearTrack) })
        {
            double tape = (track.HalfWidth ?? ScaleDoubts.Tape) * load.LeftLessRight!.Value / (2 * weight);
            square += tape * tape;
            for (int side = 0; side < 2; side++)
            {
                double slope = (((side == 0 ? 1 : -1) * track.Value / 2) - left) / weight;
                double pad = (load.Pads[side].HalfWidth ?? ScaleDoubts.Pad) * slope;
                square += pad * pad;
            }
        }

        return new DoubtedValue(left, Math.Sqrt(square));
    }

    private static double Slope(LiftedCar car, ScaleLift lift)
    {
        double standing = lift.StandingHeight?.Value ?? (lift.RaisesFront ? car.RearRadius : car.FrontRadius);
        return lift.RaisesFront ? car.Turned(lift.Height.Value, standing) : car.Turned(standing, lift.Height.Value);
    }

    /// <summary>The steepest lift again, but higher: as high as the wanted doubt takes, or as high as anybody should go.</summary>
    private static BetterLift? Better(ScaleSheet sheet, LiftedCar car, double[] slopes, CancellationToken cancellation)
    {
        int steepest = 0;
        for (int i = 1; i < slopes.Length; i++)
        {
            steepest = Math.Abs(slopes[i]) > Math.Abs(slopes[steepest]) ? i : steepest;
        }

        double low = Math.Abs(slopes[steepest]), high = SteepestSlope;
        if (low >= high)
        {
            return null;
        }

        BetterLift best = At(high);
        if (best.HalfWidth > WantedHalfWidth)
        {
            return best;
        }

        // Half a degree is finer than anybody stacks blocks.
        while (high - low > 0.25 * Math.PI / 180)
        {
            double middle = (low + high) / 2;
            BetterLift tried = At(middle);
            (low, high, best) = tried.HalfWidth <= WantedHalfWidth ? (low, middle, tried) : (middle, high, best);
        }

        return best;

        BetterLift At(double slope)
        {
            ScaleLift lift = sheet.Lifts[steepest];
            double rise = car.FrontRadius - car.RearRadius;
            double centres = Math.Sqrt((car.Wheelbase * car.Wheelbase) + (rise * rise));
            double line = Math.Sin((lift.RaisesFront ? slope : -slope) + Math.Atan2(rise, car.Wheelbase)) * centres;
            double height = lift.RaisesFront ? car.RearRadius + line : car.FrontRadius - line;
            double front = lift.RaisesFront ? car.FrontLoad(height, car.RearRadius) : car.FrontLoad(car.FrontRadius, height);
            double load = lift.RaisesFront ? car.Weight - front : front;

            // The readings as they would be, with the doubts that the present ones have.
            var pads = new AxleLoad([.. lift.Load.Pads.Select(pad => pad with { Value = pad.Value * load / lift.Load.Total })]);
            var higher = lift with { Height = lift.Height with { Value = height }, StandingHeight = null, Load = pads, RaisedLoad = null };
            var equations = new ScaleEquations(sheet with { Lifts = [.. sheet.Lifts.Select((one, i) => i == steepest ? higher : one)] });
            LeastSquaresResult found = LeastSquares.Solve(equations.Residuals, equations.All.Count, equations.Start, Options, cancellation);
            double half = 2 * Math.Sqrt(found.Covariance[2, 2]);
            return new BetterLift(lift.RaisesFront, height, slope, half, half <= WantedHalfWidth);
        }
    }
}

/// <summary>No car fits the readings; the message says why.</summary>
public sealed class ScaleFitException(string message) : Exception(message);
