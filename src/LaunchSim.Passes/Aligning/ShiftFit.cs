namespace LaunchSim.Passes.Aligning;

/// <summary>
/// Lays measured channels over what was predicted by one shift in time. Each channel has a gain and, where its zero is not
/// known, an offset of its own; all of them together may go by faster or slower than predicted, counted from the release,
/// since how fast the torque comes is not well known either. What is believed of these beforehand holds them. Gain and offset
/// are eliminated, shift and pace found by Gauss and Newton's method with Huber's weights. The prediction is a curve, not a
/// row of samples: the shift is not bound to the sample.
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
    private const double MostShift = 0.02, MostPace = 0.2;

    /// <summary>Finds the shift near one that is roughly known.</summary>
    /// <param name="signals">The channels.</param>
    /// <param name="start">A rough shift, s.</param>
    /// <param name="reach">How far from it to look, s.</param>
    /// <param name="window">Which times since release are looked at, s.</param>
    /// <param name="paceSd">How much faster or slower than predicted all may go by, as a share, one standard deviation; 0 when that is not to be doubted.</param>
    public static ShiftEstimate Find(IReadOnlyList<ShiftSignal> signals, double start, double reach, (double From, double To) window, double paceSd = 0)
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

        return Refine(rough, best, window, paceSd);
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

    private static ShiftEstimate Refine(Work[] all, double shift, (double From, double To) window, double paceSd)
    {
        double pace = 1;
        for (int round = 0; round < Rounds; round++)
        {
            Select(all, shift, window);
            (shift, pace) = Solve(all, shift, pace, paceSd);
            foreach (Work work in all)
            {
                work.Scatter(shift, pace);
            }
        }

        var normal = default(Normal);
        foreach (Work work in all)
        {
            normal += work.Information(shift, pace);
        }

        double information = paceSd > 0 ? normal.SS - (normal.SP * normal.SP / (normal.PP + (1 / (paceSd * paceSd)))) : normal.SS;
        return new ShiftEstimate(
            shift, information > 0 ? 1 / Math.Sqrt(information) : double.PositiveInfinity, pace,
            [.. all.Select(work => work.Gain)], [.. all.Select(work => work.Offset)], [.. all.Select(work => work.Residual)], [.. all.Select(work => work.Count)]);
    }

    private static (double Shift, double Pace) Solve(Work[] all, double shift, double pace, double paceSd)
    {
        double cost = Sum(shift, pace);
        for (int i = 0; i < MostIterations; i++)
        {
            var normal = default(Normal);
            foreach (Work work in all)
            {
                normal += work.Accumulate(shift, pace);
            }

            (double byShift, double byPace) = Step(normal, pace, paceSd);
            if (!double.IsFinite(byShift) || !double.IsFinite(byPace))
            {
                return (shift, pace);
            }

            // Halved until it helps: a curve with knees may send the step too far.
            double share = Math.Min(1, Math.Min(MostShift / Math.Max(Math.Abs(byShift), 1e-12), MostPace / Math.Max(Math.Abs(byPace), 1e-12))), tried = cost;
            for (int half = 0; half < 20; half++, share /= 2)
            {
                tried = Sum(shift + (share * byShift), pace + (share * byPace));
                if (tried <= cost)
                {
                    break;
                }
            }

            if (tried > cost)
            {
                return (shift, pace);
            }

            shift += share * byShift;
            pace += share * byPace;
            cost = tried;
            if (Math.Abs(share * byShift) < 1e-9 && Math.Abs(share * byPace) < 1e-7)
            {
                break;
            }
        }

        return (shift, pace);

        double Sum(double at, double fast)
        {
            double off = paceSd > 0 ? (fast - 1) / paceSd : 0;
            return all.Sum(work => work.Robust(at, fast)) + (0.5 * off * off);
        }
    }

    private static (double Shift, double Pace) Step(in Normal normal, double pace, double paceSd)
    {
        if (!(paceSd > 0))
        {
            return (normal.BS / normal.SS, 0);
        }

        double held = 1 / (paceSd * paceSd), pp = normal.PP + held, bp = normal.BP + (held * (1 - pace)), determinant = (normal.SS * pp) - (normal.SP * normal.SP);
        return (((normal.BS * pp) - (bp * normal.SP)) / determinant, ((bp * normal.SS) - (normal.BS * normal.SP)) / determinant);
    }

    /// <summary>Normal equations of shift and pace, gains and offsets eliminated.</summary>
    private readonly record struct Normal(double SS, double SP, double PP, double BS, double BP)
    {
        public static Normal operator +(in Normal a, in Normal b) => new(a.SS + b.SS, a.SP + b.SP, a.PP + b.PP, a.BS + b.BS, a.BP + b.BP);

        public static Normal operator *(double share, in Normal a) => new(share * a.SS, share * a.SP, share * a.PP, share * a.BS, share * a.BP);
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
            Fit(shift, 1);
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

        public double Robust(double shift, double pace)
        {
            Fit(shift, pace);
            double sum = Prior();
            for (int i = _from; i < _to; i++)
            {
                double predicted = signal.Predicted.At(pace * (signal.Times[i] - shift));
                sum += double.IsNaN(predicted) ? 0 : Loss((signal.Values[i] - Offset - (Gain * predicted)) / _sd);
            }

            return sum;
        }

        /// <summary>The normal equations of shift and pace, gain and offset eliminated.</summary>
        public Normal Accumulate(double shift, double pace)
        {
            Fit(shift, pace);
            double ss = 0, sp = 0, pp = 0, sg = 0, so = 0, pg = 0, po = 0, bs = 0, bp = 0;
            double gg = PriorWeight(signal.GainSd), go = 0, oo = PriorWeight(signal.OffsetSd);
            double bg = double.IsInfinity(gg) ? 0 : gg * (1 - Gain), bo = double.IsInfinity(oo) ? 0 : -oo * Offset;
            for (int i = _from; i < _to; i++)
            {
                double since = signal.Times[i] - shift, at = pace * since, predicted = signal.Predicted.At(at);
                if (double.IsNaN(predicted))
                {
                    continue;
                }

                double slope = Gain * signal.Predicted.Slope(at), s = -pace * slope, p = since * slope, residual = signal.Values[i] - Offset - (Gain * predicted);
                double weight = Weight(residual / _sd) / (_sd * _sd);
                ss += weight * s * s;
                sp += weight * s * p;
                pp += weight * p * p;
                sg += weight * s * predicted;
                so += weight * s;
                pg += weight * p * predicted;
                po += weight * p;
                gg += weight * predicted * predicted;
                go += weight * predicted;
                oo += weight;
                bs += weight * s * residual;
                bp += weight * p * residual;
                bg += weight * predicted * residual;
                bo += weight * residual;
            }

            (double sGain, double sOffset) = Solve(gg, go, oo, sg, so);
            (double pGain, double pOffset) = Solve(gg, go, oo, pg, po);
            (double bGain, double bOffset) = Solve(gg, go, oo, bg, bo);
            return new Normal(
                ss - (sg * sGain) - (so * sOffset), sp - (sg * pGain) - (so * pOffset), pp - (pg * pGain) - (po * pOffset),
                bs - (sg * bGain) - (so * bOffset), bp - (pg * bGain) - (po * bOffset));
        }

        /// <summary>Takes the scatter about the fit for the noise where it is larger.</summary>
        public void Scatter(double shift, double pace)
        {
            Fit(shift, pace);
            var rest = new List<double>(Count);
            for (int i = _from; i < _to; i++)
            {
                double residual = signal.Values[i] - Offset - (Gain * signal.Predicted.At(pace * (signal.Times[i] - shift)));
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

        /// <summary>What this channel tells of shift and pace.</summary>
        public Normal Information(double shift, double pace)
        {
            Normal normal = Accumulate(shift, pace);
            double before = double.NaN, product = 0, square = 0;
            for (int i = _from; i < _to; i++)
            {
                double predicted = signal.Predicted.At(pace * (signal.Times[i] - shift));
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
            return (1 - correlation) / (1 + correlation) * normal;
        }

        private void Fit(double shift, double pace)
        {
            double gg = PriorWeight(signal.GainSd), go = 0, oo = PriorWeight(signal.OffsetSd);
            double bg = double.IsInfinity(gg) ? 0 : gg, bo = 0;
            for (int i = _from; i < _to; i++)
            {
                double predicted = signal.Predicted.At(pace * (signal.Times[i] - shift));
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
