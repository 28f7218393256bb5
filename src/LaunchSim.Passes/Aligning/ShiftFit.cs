namespace LaunchSim.Passes.Aligning;

/// <summary>
/// Lays measured channels over what was predicted by one shift in time. Each channel has a gain and, where its zero is not
/// known, an offset of its own, both held by what is believed of them beforehand; they are eliminated, the shift is found by
/// Gauss and Newton's method with Huber's weights. The prediction is a curve, not a row of samples: the shift is not bound to
/// the sample.
/// </summary>
/// <remarks>
/// The standard deviation is that of nonlinear least squares, the inverse of the information in the curve's slope, with the
/// scatter about the fit where that is larger than the stated noise, and with neighbouring residuals that hang together
/// counted for fewer (first-order correlation r: (1 + r)/(1 − r)).
/// </remarks>
internal static class ShiftFit
{
    private const double Huber = 2.5, Coarse = 2e-3;

    // Of a normal distribution.
    private const double MedianToSd = 1.4826;
    private const int MostIterations = 60, Rounds = 4;

    /// <summary>Finds the shift near one that is roughly known.</summary>
    /// <param name="signals">The channels.</param>
    /// <param name="start">A rough shift, s.</param>
    /// <param name="reach">How far from it to look, s.</param>
    /// <param name="window">Which times since release are looked at, s.</param>
    public static ShiftEstimate Find(IReadOnlyList<ShiftSignal> signals, double start, double reach, (double From, double To) window)
    {
        double best = start, least = double.PositiveInfinity;
        var rough = signals.Select(signal => new Work(signal)).ToArray();
        int steps = (int)Math.Ceiling(reach / Coarse);
        Select(rough, start, (window.From - reach, window.To + reach));
        for (int i = -steps; i <= steps; i++)
        {
            double shift = start + (i * Coarse);
            double cost = rough.Sum(work => work.Profile(shift, window));
            if (cost < least)
            {
                (best, least) = (shift, cost);
            }
        }

        return Refine(rough, best, window);
    }

    /// <summary>What the rest costs when all values are laid over the prediction at a shift: infinite when a value lies behind the prediction's end.</summary>
    /// <param name="signals">The channels.</param>
    /// <param name="shift">The shift, s.</param>
    public static double Cost(IReadOnlyList<ShiftSignal> signals, double shift) => signals.Sum(signal =>
    {
        var work = new Work(signal);
        work.Select(shift, double.NegativeInfinity, double.PositiveInfinity);
        return work.Profile(shift, (double.NegativeInfinity, double.PositiveInfinity), refusesBeyond: true);
    });

    private static void Select(Work[] all, double shift, (double From, double To) window)
    {
        foreach (Work work in all)
        {
            work.Select(shift, window.From, window.To);
        }
    }

    private static ShiftEstimate Refine(Work[] all, double shift, (double From, double To) window)
    {
        for (int round = 0; round < Rounds; round++)
        {
            Select(all, shift, window);
            shift = Solve(all, shift);
            foreach (Work work in all)
            {
                work.Scatter(shift);
            }
        }

        double information = 0;
        foreach (Work work in all)
        {
            information += work.Information(shift);
        }

        return new ShiftEstimate(
            shift, information > 0 ? 1 / Math.Sqrt(information) : double.PositiveInfinity,
            [.. all.Select(work => work.Gain)], [.. all.Select(work => work.Offset)], [.. all.Select(work => work.Residual)], [.. all.Select(work => work.Count)]);
    }

    private static double Solve(Work[] all, double shift)
    {
        double cost = Sum(shift);
        for (int i = 0; i < MostIterations; i++)
        {
            double curvature = 0, gradient = 0;
            foreach (Work work in all)
            {
                work.Accumulate(shift, out double h, out double b);
                curvature += h;
                gradient += b;
            }

            if (!(curvature > 0))
            {
                return shift;
            }

            // Halved until it helps: a curve with knees may send the step too far.
            double step = Math.Clamp(gradient / curvature, -0.02, 0.02), tried = cost;
            for (int half = 0; half < 20; half++, step /= 2)
            {
                tried = Sum(shift + step);
                if (tried <= cost)
                {
                    break;
                }
            }

            if (tried > cost)
            {
                return shift;
            }

            shift += step;
            cost = tried;
            if (Math.Abs(step) < 1e-9)
            {
                return shift;
            }
        }

        return shift;

        double Sum(double at) => all.Sum(work => work.Robust(at));
    }

    /// <summary>One channel within its window, with its gain and offset at the shift looked at last.</summary>
    private sealed class Work(ShiftSignal signal)
    {
        private double _sd = signal.Noise;
        private int _from, _to;

        public double Gain { get; private set; } = 1;

        public double Offset { get; private set; }

        public double Residual { get; private set; } = double.NaN;

        public int Count => _to - _from;

        public void Select(double shift, double from, double to)
        {
            _from = LowerBound(shift + from);
            _to = LowerBound(shift + to);
        }

        // Gain and offset in closed form, then the cost that is left: per value, so that windows of different fill compare.
        public double Profile(double shift, (double From, double To) window, bool refusesBeyond = false)
        {
            (int from, int to) = (_from, _to);
            (_from, _to) = (Math.Max(from, LowerBound(shift + window.From)), Math.Min(to, LowerBound(shift + window.To)));
            Fit(shift);
            double sum = 0, lost = 0;
            for (int i = _from; i < _to; i++)
            {
                double predicted = signal.Predicted.At(signal.Times[i] - shift);
                if (double.IsNaN(predicted))
                {
                    lost++;
                    continue;
                }

                sum += Loss((signal.Values[i] - Offset - (Gain * predicted)) / _sd);
            }

            double count = _to - _from - lost;
            (_from, _to) = (from, to);
            if (refusesBeyond)
            {
                return lost > 0 ? double.PositiveInfinity : sum + Prior();
            }

            // Per value, and values that lie behind the prediction's end are dear.
            return count > 0 ? ((sum + Prior()) / count) + (10 * lost / (count + lost)) : 0;
        }

        public double Robust(double shift)
        {
            Fit(shift);
            double sum = Prior();
            for (int i = _from; i < _to; i++)
            {
                double predicted = signal.Predicted.At(signal.Times[i] - shift);
                sum += double.IsNaN(predicted) ? 0 : Loss((signal.Values[i] - Offset - (Gain * predicted)) / _sd);
            }

            return sum;
        }

        /// <summary>The shift's own row of the normal equations, gain and offset eliminated.</summary>
        public void Accumulate(double shift, out double curvature, out double gradient)
        {
            Fit(shift);
            double tt = 0, tg = 0, to = 0, gg = PriorWeight(signal.GainSd), go = 0, oo = PriorWeight(signal.OffsetSd), bt = 0;
            double bg = double.IsInfinity(gg) ? 0 : gg * (1 - Gain), bo = double.IsInfinity(oo) ? 0 : -oo * Offset;
            for (int i = _from; i < _to; i++)
            {
                double at = signal.Times[i] - shift, predicted = signal.Predicted.At(at);
                if (double.IsNaN(predicted))
                {
                    continue;
                }

                double t = -Gain * signal.Predicted.Slope(at), residual = (signal.Values[i] - Offset - (Gain * predicted)) / _sd;
                double weight = Weight(residual) / (_sd * _sd);
                residual *= _sd;
                tt += weight * t * t;
                tg += weight * t * predicted;
                to += weight * t;
                gg += weight * predicted * predicted;
                go += weight * predicted;
                oo += weight;
                bt += weight * t * residual;
                bg += weight * predicted * residual;
                bo += weight * residual;
            }

            (double ig, double io) = Solve(gg, go, oo, tg, to);
            curvature = tt - (tg * ig) - (to * io);
            (double jg, double jo) = Solve(gg, go, oo, bg, bo);
            gradient = bt - (tg * jg) - (to * jo);
        }

        /// <summary>Takes the scatter about the fit for the noise where it is larger.</summary>
        public void Scatter(double shift)
        {
            Fit(shift);
            var rest = new List<double>(Count);
            for (int i = _from; i < _to; i++)
            {
                double residual = signal.Values[i] - Offset - (Gain * signal.Predicted.At(signal.Times[i] - shift));
                if (!double.IsNaN(residual))
                {
                    rest.Add(Math.Abs(residual));
                }
            }

            if (rest.Count == 0)
            {
                Residual = double.NaN;
                return;
            }

            // The median: spikes are no scatter.
            rest.Sort();
            Residual = MedianToSd * (rest.Count % 2 == 1 ? rest[rest.Count / 2] : (rest[(rest.Count / 2) - 1] + rest[rest.Count / 2]) / 2);
            int known = 1 + (signal.GainSd > 0 ? 1 : 0) + (signal.OffsetSd > 0 ? 1 : 0);
            _sd = rest.Count > known ? Math.Max(signal.Noise, Residual * Math.Sqrt((double)rest.Count / (rest.Count - known))) : signal.Noise;
        }

        /// <summary>What this channel tells of the shift, per s².</summary>
        public double Information(double shift)
        {
            Accumulate(shift, out double curvature, out double _);
            double before = double.NaN, product = 0, square = 0;
            for (int i = _from; i < _to; i++)
            {
                double predicted = signal.Predicted.At(signal.Times[i] - shift);
                double residual = signal.Values[i] - Offset - (Gain * predicted);
                if (double.IsNaN(residual))
                {
                    continue;
                }

                square += residual * residual;
                product += double.IsNaN(before) ? 0 : before * residual;
                before = residual;
            }

            // Few residuals seem to hang together by chance: what chance allows is taken off.
            double correlation = square > 0 && Count > 3 ? Math.Clamp((product / square) - (2 / Math.Sqrt(Count)), 0, 0.95) : 0;
            return curvature * (1 - correlation) / (1 + correlation);
        }

        private void Fit(double shift)
        {
            double gg = PriorWeight(signal.GainSd), go = 0, oo = PriorWeight(signal.OffsetSd);
            double bg = double.IsInfinity(gg) ? 0 : gg, bo = 0;
            for (int i = _from; i < _to; i++)
            {
                double predicted = signal.Predicted.At(signal.Times[i] - shift);
                if (double.IsNaN(predicted))
                {
                    continue;
                }

                // Weights by the fit before: they settle over the iterations.
                double weight = Weight((signal.Values[i] - Offset - (Gain * predicted)) / _sd) / (_sd * _sd);
                gg += weight * predicted * predicted;
                go += weight * predicted;
                oo += weight;
                bg += weight * predicted * signal.Values[i];
                bo += weight * signal.Values[i];
            }

            if (double.IsInfinity(gg))
            {
                Gain = 1;
                Offset = double.IsInfinity(oo) || !(oo > 0) ? 0 : (bo - go) / oo;
            }
            else
            {
                (Gain, Offset) = Solve(gg, go, oo, bg, bo);
            }
        }

        // A weight that is infinite holds its unknown where it is.
        private static (double Gain, double Offset) Solve(double gg, double go, double oo, double bg, double bo)
        {
            if (double.IsInfinity(gg))
            {
                return (0, double.IsInfinity(oo) || !(oo > 0) ? 0 : bo / oo);
            }

            if (double.IsInfinity(oo) || !(oo > 0))
            {
                return (gg > 0 ? bg / gg : 0, 0);
            }

            double determinant = (gg * oo) - (go * go);
            return determinant > 1e-14 * gg * oo ? (((bg * oo) - (bo * go)) / determinant, ((bo * gg) - (bg * go)) / determinant) : (gg > 0 ? bg / gg : 0, 0);
        }

        private double Prior()
        {
            double gain = signal.GainSd > 0 ? (Gain - 1) / signal.GainSd : 0, offset = signal.OffsetSd > 0 ? Offset / signal.OffsetSd : 0;
            return 0.5 * ((gain * gain) + (offset * offset));
        }

        private static double PriorWeight(double sd) => 1 / (sd * sd);

        private static double Weight(double z) => Math.Abs(z) <= Huber ? 1 : Huber / Math.Abs(z);

        private static double Loss(double z) => Math.Abs(z) <= Huber ? 0.5 * z * z : Huber * (Math.Abs(z) - (0.5 * Huber));

        private int LowerBound(double time)
        {
            int low = 0, high = signal.Times.Count;
            while (low < high)
            {
                int middle = (low + high) / 2;
                (low, high) = signal.Times[middle] < time ? (middle + 1, high) : (low, middle);
            }

            return low;
        }
    }
}
