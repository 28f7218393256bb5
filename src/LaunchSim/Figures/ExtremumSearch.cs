namespace LaunchSim.Figures;

/// <summary>
/// Largest values of the dense solution. The best node is only a first guess: every node that stands above its
/// neighbours, and that a parabola says may hide a larger value, is refined by Brent's method (Algorithms for
/// Minimization without Derivatives, ch. 5, from memory). A change of modes is never looked across: there the solution
/// may jump or kink.
/// </summary>
internal static class ExtremumSearch
{
    // How closely a place is found, s. The signal is flat there: at 10 Hz the value is right to 2e-13 of its swing.
    private const double Tolerance = 1e-8;

    // A parabola through three nodes tells how much may be hidden to within a factor that this more than covers.
    private const double Caution = 4;

    // As a share of the way to the next node: where the end of a mode is compared with the mode's inside.
    private const double Probe = 1e-3;

    private const double Golden = 0.381966011250105;

    /// <summary>The largest value of sign·signal in a window, given back with the signal's own sign.</summary>
    public static Extremum Find(LaunchReading launch, Signal signal, int sign, double from, double to, int fromStep = 0) =>
        FindIn(launch, launch.Column(signal), signal, sign, from, to, fromStep);

    /// <summary>The same from values at the nodes that are right where it matters.</summary>
    public static Extremum FindIn(
        LaunchReading launch, ReadOnlySpan<double> values, Signal signal, int sign, double from, double to, int fromStep = 0)
    {
        ReadOnlySpan<double> times = launch.Times;
        ReadOnlySpan<int> segments = launch.Segments;
        (int first, int last) = Window(launch, from, to, fromStep);
        double best = double.NegativeInfinity, bestTime = double.NaN;
        int bestStep = -1, bestNode = -1;

        // The ends of the window count where no node stands on them.
        if (first > 0 && first < times.Length && times[first - 1] < from && times[first] > from)
        {
            (best, bestTime, bestStep) = (sign * launch.At(signal, segments[first - 1], from), from, segments[first - 1]);
        }

        if (last >= 0 && last + 1 < times.Length && times[last] < to && sign * launch.At(signal, segments[last], to) is double atEnd && atEnd > best)
        {
            (best, bestTime, bestStep) = (atEnd, to, segments[last]);
        }

        for (int i = first; i <= last; i++)
        {
            if (sign * values[i] > best)
            {
                best = sign * values[i];
                bestNode = i;
            }
        }

        if (bestNode >= 0)
        {
            (bestTime, bestStep) = (times[bestNode], launch.StepOf(bestNode));
        }

        double here = first <= last ? sign * values[first] : double.NaN, left = first > 0 && first <= last ? sign * values[first - 1] : 0;
        for (int i = first; i <= last; i++, left = here, here = i <= last ? sign * values[i] : 0)
        {
            // Most nodes lie on a slope and are passed by at once.
            double right = i + 1 < values.Length ? sign * values[i + 1] : 0;
            if ((here < right && segments[i] >= 0) || (here < left && i > 0 && segments[i - 1] >= 0) || !double.IsFinite(here))
            {
                continue;
            }

            bool hasLeft = i > 0 && segments[i - 1] >= 0, hasRight = segments[i] >= 0;
            double before = hasLeft ? left : double.NegativeInfinity, after = hasRight ? right : double.NegativeInfinity;
            if (!(here + (Caution * Math.Min(here - before, here - after)) > best))
            {
                continue;
            }

            int leftStep = hasLeft ? segments[i - 1] : segments[i], rightStep = hasRight ? segments[i] : segments[i - 1];
            var bracket = new Bracket(launch, signal, sign, leftStep, rightStep, times[i]);
            double low = Math.Max(from, hasLeft ? times[i - 1] : times[i]), high = Math.Min(to, hasRight ? times[i + 1] : times[i]);
            if (high - low <= Tolerance || !(hasLeft && hasRight || bracket.Rises(low, high, here)))
            {
                continue;
            }

            (double value, double time) = bracket.Largest(low, high, before, here, after);
            if (value > best)
            {
                (best, bestTime, bestStep) = (value, time, bracket.Step(time));
            }
        }

        return new Extremum(sign * best, bestTime, bestStep);
    }

    /// <summary>The most that a node's surroundings may hold: its own value, or what a parabola says may be hidden beside it.</summary>
    public static double Possible(ReadOnlySpan<int> segments, ReadOnlySpan<double> values, int node)
    {
        double here = values[node];
        double before = node > 0 && segments[node - 1] >= 0 ? values[node - 1] : double.NegativeInfinity;
        double after = segments[node] >= 0 ? values[node + 1] : double.NegativeInfinity;
        double above = Math.Min(here - before, here - after);
        return above > 0 ? here + (Caution * above) : here;
    }

    /// <summary>First and last node within a window; the first above the last when there is none.</summary>
    private static (int First, int Last) Window(LaunchReading launch, double from, double to, int fromStep)
    {
        ReadOnlySpan<double> times = launch.Times;
        int first = 0, last = times.Length - 1;
        if (from > 0)
        {
            first = times.BinarySearch(from);
            first = first < 0 ? ~first : first;
            while (first > 0 && times[first - 1] == from)
            {
                first--;
            }

            while (first < times.Length && times[first] == from && launch.StepOf(first) < fromStep)
            {
                first++;
            }
        }

        while (last >= 0 && times[last] > to)
        {
            last--;
        }

        return (first, last);
    }

    /// <summary>The signal from the node before a node to the one after it, on the dense output of one or two steps.</summary>
    private readonly struct Bracket(LaunchReading launch, Signal signal, int sign, int leftStep, int rightStep, double node)
    {
        public int Step(double time) => time < node ? leftStep : rightStep;

        /// <summary>Whether values rise from the end of a mode into it: mostly they fall, and there is nothing to refine.</summary>
        public bool Rises(double low, double high, double value) =>
            At(node <= low ? low + (Probe * (high - low)) : high - (Probe * (high - low))) > value;

        private double At(double time) => sign * launch.At(signal, Step(time), time);

        /// <summary>Brent's method for the largest value on [low, high], begun at the node.</summary>
        public (double Value, double Time) Largest(double low, double high, double lowValue, double startValue, double highValue)
        {
            double x = node, w = node, v = node, fx = startValue, fw = startValue, fv = startValue;
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
                double fu = At(u);
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
}
