namespace LaunchSim.Figures;

/// <summary>
/// Largest values of the dense solution. The best node is only a first guess: every node that stands above its
/// neighbours within its step, and that a parabola says may hide a larger value, is refined by Brent's method
/// (Algorithms for Minimization without Derivatives, ch. 5, from memory). Steps are never looked across: there the
/// solution may jump or kink.
/// </summary>
internal static class ExtremumSearch
{
    // How closely a place is found, s: an extremum's value is flat there, and its error is far below rounding.
    private const double Tolerance = 1e-9;

    // A parabola through three nodes tells how much may be hidden to within a factor that this more than covers.
    private const double Caution = 4;

    // How far into the step, as a share of the way to the next node, a step's end is compared with.
    private const double Probe = 1e-3;

    private const double Golden = 0.381966011250105;

    /// <summary>The largest value of sign·signal in a window, given back with the signal's own sign.</summary>
    public static Extremum Find(LaunchReading launch, Signal signal, int sign, double from, double to)
    {
        ReadOnlySpan<double> times = launch.Times, values = launch.Column(signal);
        (int first, int last) = Window(times, from, to);
        double best = double.NegativeInfinity, bestTime = double.NaN;
        int bestStep = -1;
        void Take(double value, double time, int step)
        {
            if (value > best)
            {
                (best, bestTime, bestStep) = (value, time, step);
            }
        }

        // The ends of the window are nodes of their own where no node stands on them.
        if (first > 0 && first <= times.Length && times[first - 1] < from && from <= launch.Duration)
        {
            Take(sign * launch.At(signal, launch.StepOf(first - 1), from), from, launch.StepOf(first - 1));
        }

        for (int i = first; i <= last; i++)
        {
            Take(sign * values[i], times[i], launch.StepOf(i));
        }

        if (last >= 0 && last + 1 < times.Length && times[last] < to && to < times[last + 1])
        {
            Take(sign * launch.At(signal, launch.StepOf(last), to), to, launch.StepOf(last));
        }

        for (int i = Math.Max(first, 0); i <= last; i++)
        {
            int step = launch.StepOf(i);
            double here = sign * values[i];
            bool hasLeft = i > 0 && launch.StepOf(i - 1) == step, hasRight = i + 1 < times.Length && launch.StepOf(i + 1) == step;
            double left = hasLeft ? sign * values[i - 1] : double.NegativeInfinity;
            double right = hasRight ? sign * values[i + 1] : double.NegativeInfinity;
            if (!(here >= left && here >= right) || !double.IsFinite(here))
            {
                continue;
            }

            double least = hasLeft && hasRight ? Math.Min(here - left, here - right) : hasLeft ? here - left : here - right;
            if (here + (Caution * least) <= best)
            {
                continue;
            }

            double low = Math.Max(from, hasLeft ? times[i - 1] : times[i]);
            double high = Math.Min(to, hasRight ? times[i + 1] : times[i]);
            if (high - low <= Tolerance || !(hasLeft && hasRight || Rises(launch, signal, sign, step, times[i], low, high, here)))
            {
                continue;
            }

            (double value, double time) = Refine(launch, signal, sign, step, low, times[i], high, left, here, right);
            Take(value, time, step);
        }

        return new Extremum(sign * best, bestTime, bestStep);
    }

    /// <summary>First and last node within a window; the first above the last when there is none.</summary>
    private static (int First, int Last) Window(ReadOnlySpan<double> times, double from, double to)
    {
        int first = 0, last = times.Length - 1;
        while (first < times.Length && times[first] < from)
        {
            first++;
        }

        while (last >= 0 && times[last] > to)
        {
            last--;
        }

        return (first, last);
    }

    /// <summary>Whether values rise from a step's end into the step: mostly they fall, and there is nothing to refine.</summary>
    private static bool Rises(LaunchReading launch, Signal signal, int sign, int step, double end, double low, double high, double value)
    {
        double inwards = end <= low ? end + (Probe * (high - low)) : end - (Probe * (high - low));
        return sign * launch.At(signal, step, inwards) > value;
    }

    /// <summary>Brent's method for the largest value on [low, high], begun at a node that is the best of its neighbours.</summary>
    private static (double Value, double Time) Refine(
        LaunchReading launch, Signal signal, int sign, int step,
        double low, double start, double high, double lowValue, double startValue, double highValue)
    {
        double x = start, w = start, v = start, fx = startValue, fw = startValue, fv = startValue;
        double move = 0, before = 0;
        if (double.IsFinite(lowValue) && double.IsFinite(highValue))
        {
            // Three points are known already: the first move can be a parabola's.
            (w, fw, v, fv) = lowValue >= highValue ? (low, lowValue, high, highValue) : (high, highValue, low, lowValue);
            before = high - low;
        }

        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            if (Math.Abs(x - middle) <= (2 * Tolerance) - (0.5 * (high - low)))
            {
                break;
            }

            bool parabola = false;
            if (Math.Abs(before) > Tolerance)
            {
                double r = (x - w) * (fx - fv), q = (x - v) * (fx - fw), p = ((x - v) * q) - ((x - w) * r);
                q = 2 * (q - r);
                p = q > 0 ? -p : p;
                q = Math.Abs(q);
                if (Math.Abs(p) < Math.Abs(0.5 * q * before) && p > q * (low - x) && p < q * (high - x))
                {
                    (before, move) = (move, p / q);
                    parabola = true;
                    double reached = x + move;
                    if (reached - low < 2 * Tolerance || high - reached < 2 * Tolerance)
                    {
                        move = x < middle ? Tolerance : -Tolerance;
                    }
                }
            }

            if (!parabola)
            {
                before = x < middle ? high - x : low - x;
                move = Golden * before;
            }

            double u = Math.Abs(move) >= Tolerance ? x + move : x + (move > 0 ? Tolerance : -Tolerance);
            double fu = sign * launch.At(signal, step, u);
            if (fu >= fx)
            {
                if (u < x)
                {
                    high = x;
                }
                else
                {
                    low = x;
                }

                (v, fv, w, fw, x, fx) = (w, fw, x, fx, u, fu);
            }
            else
            {
                if (u < x)
                {
                    low = u;
                }
                else
                {
                    high = u;
                }

                if (fu >= fw || w == x)
                {
                    (v, fv, w, fw) = (w, fw, u, fu);
                }
                else if (fu >= fv || v == x || v == w)
                {
                    (v, fv) = (u, fu);
                }
            }
        }

        return (fx, x);
    }
}
