using LaunchSim.Launch;
using LaunchSim.Passes.Seen;
using LaunchSim.Studies.Chance;

namespace LaunchSim.Passes.Fitting;

/// <summary>
/// Finds what passes say of a car: the numbers that suit them best with what the file knows beforehand, and how far off each
/// may still be.
/// </summary>
/// <remarks>
/// The file's doubts are the prior: with it the covariance of the numbers is that of the linearised problem, (JᵀWJ)⁻¹, at the
/// best point. How much a channel scatters is taken from how it scatters about the first fit, with what neighbouring spans have
/// in common counted once (the effective number of samples of a first-order autoregressive series, n·(1 − ρ)/(1 + ρ); from
/// memory of the textbooks of time series).
/// </remarks>
public static class Fit
{
    private const double Step = 0.05;
    private const double LeastStep = 2e-4;
    private const int MostIterations = 40;
    private const int MostFiner = 3;
    private const int DrawnEach = 12;

    // A fit whose data are worse off than this, in squared standard deviations each, may sit in a wrong valley: then it is looked further, about the best so far.
    private const double Poor = 1.25;

    // So near the minimum, in standard errors: a hundredth of what is not known anyway.
    private const double Near = 0.01;

    // An end that is this much worse is no explanation of the data: less than 1 in 100 likely beside the best. More than a few are never looked at.
    private const double Elsewhere = 10;
    private const int MostElsewhere = 4;

    // Told as another explanation: one that is this likely, of numbers that are this far apart in standard deviations of the file's doubt.
    private const double LeastShare = 0.05;
    private const double Apart = 0.25;

    // Of squares weighted by the loss of Huber at 1.345 a normal scatter of 1 leaves this on average: the share that lies within (Stein's identity).
    private const double WeightedSquare = 0.82138;
    private const double LeastInflation = 0.5;
    private const double MostAlike = 0.95;

    // Who is this far off what the file allows has probably something else in the wrong place.
    private const double FarOff = 3;

    /// <summary>Fits.</summary>
    /// <param name="model">The passes and the numbers.</param>
    /// <param name="settings">How.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    /// <exception cref="InvalidOperationException">The car of the file does not come to the end of one of the launches.</exception>
    public static FitResult Run(FitModel model, FitSettings settings, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(settings);
        double[] zero = new double[model.UnknownCount];
        if (!model.Residuals(zero, new double[model.ResidualCount]))
        {
            throw new InvalidOperationException("The car of the file does not come to the end of one of the launches.");
        }

        LeastSquaresResult first = Solve(model, model.Residuals, zero, Starts(model, settings, zero, 1, 0, cancellation), Steps(zero.Length), settings, cancellation);
        var sums = first.SumsOfStarts.ToList();
        var ends = first.EndsOfStarts.ToList();
        first = Finer(model, first, settings, cancellation);
        for (int round = 1; round <= settings.Rounds && settings.Starts > 1 && first.SumOfSquares > Poor * (model.ResidualCount - model.DataStart); round++)
        {
            LeastSquaresResult again = Solve(model, model.Residuals, first.Parameters, round % 2 == 1 ? Starts(model, settings, zero, 1, round * DrawnEach * settings.Starts, cancellation) : Starts(model, settings, first.Parameters, Math.Pow(0.5, round), round * DrawnEach * settings.Starts, cancellation), Steps(zero.Length), settings, cancellation);
            sums.AddRange(again.SumsOfStarts);
            ends.AddRange(again.EndsOfStarts);
            again = Finer(model, again, settings, cancellation);
            first = again.SumOfSquares < first.SumOfSquares ? again : first;
        }

        Scatter(model, first);
        LeastSquaresResult joint = Solve(model, model.Residuals, first.Parameters, [], Steps(first), settings, cancellation);

        List<Valley> valleys = Found(model, joint, [.. Enumerable.Range(0, ends.Count).Where(i => sums[i] < first.SumOfSquares + Elsewhere).OrderBy(i => sums[i]).Take(MostElsewhere).Select(i => ends[i])], settings, cancellation);
        joint = valleys[0].Bottom;
        double[,] covariance = Valleys.Covariance(valleys);

        double[] sds = [.. Enumerable.Range(0, model.UnknownCount).Select(i => Math.Sqrt(covariance[i, i]))];
        bool[] told = [.. sds.Select((sd, i) => i >= model.Parameters.Count || sd < settings.ToldBelow)];
        double[] best = Array.TrueForAll(told, one => one) ? joint.Parameters : Held(model, joint, told, settings, cancellation);
        return Result(model, sums, valleys, covariance, best, sds, told);
    }

    private static LeastSquaresResult Solve(
        FitModel model, ResidualFunction residuals, double[] start, IReadOnlyList<double[]> others, double[] steps, FitSettings settings, CancellationToken cancellation)
    {
        return LeastSquares.Solve(residuals, model.ResidualCount - model.UnknownCount + start.Length, start, new LeastSquaresOptions
        {
            Steps = steps,
            Loss = RobustLoss.Huber,
            LossFrom = start.Length,
            Starts = others,
            MostIterations = MostIterations,
            Tolerance = Near,
            Threads = settings.Threads,
        }, cancellation);
    }

    /// <summary>Goes on with finer differences where a valley is narrower than the first ones.</summary>
    private static LeastSquaresResult Finer(FitModel model, LeastSquaresResult from, FitSettings settings, CancellationToken cancellation)
    {
        for (int time = 0; time < MostFiner; time++)
        {
            LeastSquaresResult finer = Solve(model, model.Residuals, from.Parameters, [], Steps(from), settings, cancellation);
            bool isDone = finer.Converged && finer.SumOfSquares > from.SumOfSquares - 0.1;
            from = finer.SumOfSquares <= from.SumOfSquares ? finer : from;
            if (isDone)
            {
                break;
            }
        }

        return from;
    }

    /// <summary>The valley of the best point and those of other ends that suit the data about as well, the deepest first.</summary>
    private static List<Valley> Found(FitModel model, LeastSquaresResult best, IReadOnlyList<double[]> others, FitSettings settings, CancellationToken cancellation)
    {
        LeastSquaresResult Down(double[] from, LeastSquaresResult near) => Solve(model, model.Residuals, from, [], Steps(near), settings, cancellation);
        List<Valley> valleys = [Valleys.Of(point => model.Sum(point), best, Down, settings.Threads, cancellation)];
        if (!valleys[0].IsBounded)
        {
            return valleys;
        }

        foreach (double[] other in others.Where(other => !valleys.Exists(valley => Valleys.AreOne(valley, other))).ToArray())
        {
            LeastSquaresResult bottom = Down(other, valleys[0].Bottom);
            if (bottom.SumOfSquares < valleys[0].Bottom.SumOfSquares + Elsewhere && !valleys.Exists(valley => Valleys.AreOne(valley, bottom.Parameters)))
            {
                Valley valley = Valleys.Of(point => model.Sum(point), bottom, Down, settings.Threads, cancellation);
                if (valley.IsBounded && !valleys.Exists(known => Valleys.AreOne(known, valley.Bottom.Parameters)))
                {
                    valleys.Add(valley);
                }
            }
        }

        return [.. valleys.OrderBy(valley => valley.Bottom.SumOfSquares)];
    }

    private static double[] Steps(int count)
    {
        double[] steps = new double[count];
        Array.Fill(steps, Step);
        return steps;
    }

    // A third of what is still not known of each, so that a difference says what the valley is like; not so fine that the launches' own roughness shows.
    private static double[] Steps(LeastSquaresResult near) =>
        [.. near.Parameters.Select((_, i) => Math.Clamp(Math.Sqrt(near.Covariance[i, i]) / 3, LeastStep, Step))];

    /// <summary>The most likely of many cars drawn about a point: a tyre that spins or does not makes valleys of its own.</summary>
    private static List<double[]> Starts(FitModel model, FitSettings settings, double[] about, double width, int from, CancellationToken cancellation)
    {
        var sequence = new HaltonSequence(Math.Max(1, model.Parameters.Count), settings.Seed);
        double[] u = new double[sequence.Dimensions], residuals = new double[model.ResidualCount];
        var drawn = new List<(double[] Start, double Cost)>();
        for (int car = from; settings.Starts > 1 && car < from + (DrawnEach * settings.Starts); car++)
        {
            cancellation.ThrowIfCancellationRequested();
            sequence.Point(car, u);
            double[] start = [.. about];
            for (int i = 0; i < model.Parameters.Count; i++)
            {
                start[i] += width * NormalQuantile.Of(u[i]);
            }

            if (model.Residuals(start, residuals))
            {
                drawn.Add((start, residuals.Sum(RobustLoss.Huber.Cost)));
            }
        }

        return [.. drawn.OrderBy(one => one.Cost).Take(settings.Starts - 1).Select(one => one.Start)];
    }

    /// <summary>Takes from the first fit how much each channel scatters, and how alike neighbouring spans are.</summary>
    private static void Scatter(FitModel model, LeastSquaresResult first)
    {
        int at = model.DataStart;
        foreach (PassModel pass in model.Passes)
        {
            foreach (FitChannel channel in pass.Logs.SelectMany(log => log.Channels))
            {
                ReadOnlySpan<double> own = first.Residuals.AsSpan(at, channel.Count), weights = first.Weights.AsSpan(at, channel.Count);
                double square = 0, beside = 0;
                for (int i = 0; i < own.Length; i++)
                {
                    square += weights[i] * own[i] * own[i];
                    beside += i > 0 ? Math.Sqrt(weights[i] * weights[i - 1]) * own[i] * own[i - 1] : 0;
                }

                double alike = square > 0 ? beside / square : 0;
                alike = alike > 2 / Math.Sqrt(own.Length) ? Math.Min(alike, MostAlike) : 0;
                channel.Inflation = Math.Max(LeastInflation, Math.Sqrt(square / WeightedSquare / Math.Max(1, own.Length))) * Math.Sqrt((1 + alike) / (1 - alike));
                at += channel.Count;
            }

            // Few facts are rarely all as doubtful as they were written: they may be worse, they are never taken for better.
            ReadOnlySpan<double> facts = first.Residuals.AsSpan(at, pass.Seen.Count), weightsOfFacts = first.Weights.AsSpan(at, pass.Seen.Count);
            double worse = 0;
            for (int i = 0; i < facts.Length; i++)
            {
                worse += weightsOfFacts[i] * facts[i] * facts[i];
            }

            pass.Seen.Inflation = facts.Length > 0 ? Math.Max(1, Math.Sqrt(worse / WeightedSquare / facts.Length)) : 1;
            at += pass.Seen.Count;
        }
    }

    /// <summary>The best point with the numbers that the data do not tell where the file has them.</summary>
    private static double[] Held(FitModel model, LeastSquaresResult joint, bool[] told, FitSettings settings, CancellationToken cancellation)
    {
        int[] free = [.. Enumerable.Range(0, told.Length).Where(i => told[i])];
        if (free.Length == 0)
        {
            return new double[told.Length];
        }

        bool Residuals(ReadOnlySpan<double> unknowns, Span<double> residuals)
        {
            double[] all = Whole(unknowns, free, told.Length);
            double[] whole = new double[model.ResidualCount];
            if (!model.Residuals(all, whole))
            {
                return false;
            }

            for (int i = 0; i < free.Length; i++)
            {
                residuals[i] = whole[free[i]];
            }

            whole.AsSpan(model.UnknownCount).CopyTo(residuals[free.Length..]);
            return true;
        }

        double[] start = [.. free.Select(i => joint.Parameters[i])], steps = Steps(joint);
        double[] zero = new double[free.Length];
        if (!Residuals(start, new double[model.ResidualCount - model.UnknownCount + free.Length]))
        {
            start = zero;
        }

        return Whole(Solve(model, Residuals, start, [], [.. free.Select(i => steps[i])], settings, cancellation).Parameters, free, told.Length);
    }

    private static double[] Whole(ReadOnlySpan<double> free, int[] places, int count)
    {
        double[] all = new double[count];
        for (int i = 0; i < places.Length; i++)
        {
            all[places[i]] = free[i];
        }

        return all;
    }

    private static FitResult Result(FitModel model, List<double> sums, List<Valley> valleys, double[,] covariance, double[] best, double[] sds, bool[] told)
    {
        int count = model.Parameters.Count;
        FittedValue[] values = [.. model.Parameters.Select((parameter, i) => new FittedValue(parameter, told[i] ? best[i] : 0, told[i] ? sds[i] : 1, told[i]))];
        double[,] correlations = new double[count, count];
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j < count; j++)
            {
                correlations[i, j] = covariance[i, j] / (sds[i] * sds[j]);
            }
        }

        double[] residuals = new double[model.ResidualCount];
        _ = model.Residuals(best, residuals);
        int data = model.ResidualCount - model.DataStart;
        double misfit = data > 0 ? Math.Sqrt(residuals.AsSpan(model.DataStart).ToArray().Sum(one => one * one) / data) : double.NaN;
        (List<ChannelFit> channels, List<SeenFit> seen) = Courses(model, best);
        return new FitResult
        {
            Values = values,
            Correlations = correlations,
            Clocks = [.. model.Clocks.Select((clock, i) => new ClockFit(clock, best[count + i] * clock.Sd, sds[count + i] * clock.Sd))],
            Channels = channels,
            Seen = seen,
            DataCount = data,
            Misfit = misfit,
            SumsOfStarts = [.. sums.Order()],
            Converged = valleys[0].Bottom.Converged,
            Reason = valleys[0].Bottom.Reason,
            Launches = model.Launches,
            Remarks = [.. Remarks(values, channels), .. OtherExplanations(values, valleys)],
        };
    }

    private static (List<ChannelFit> Channels, List<SeenFit> Seen) Courses(FitModel model, double[] best)
    {
        var channels = new List<ChannelFit>();
        var seen = new List<SeenFit>();
        FitWorkspace file = model.Workspace(), fit = model.Workspace();
        int clock = model.Parameters.Count;
        for (int i = 0; i < model.Passes.Count; i++)
        {
            PassModel pass = model.Passes[i];
            LaunchSolution before = file.Launch(i, pass, new double[model.Parameters.Count])!, after = fit.Launch(i, pass, best.AsSpan(0, model.Parameters.Count))!;
            foreach (LogModel log in pass.Logs)
            {
                double shift = best[clock++] * log.Log.ShiftSd;
                channels.AddRange(log.Channels.Select(channel => channel.Laid(pass.Pass.Name, log.Log.Name, before, after, shift)));
            }

            clock += pass.Seen.HasClock ? 1 : 0;
            if (pass.Seen.Any)
            {
                seen.Add(new SeenFit(pass.Pass.Name, SeenPrediction.Of(before, pass.Settings, pass.Pass.Seen), SeenPrediction.Of(after, pass.Settings, pass.Pass.Seen)));
            }
        }

        return (channels, seen);
    }

    /// <summary>What else suits the passes about as well.</summary>
    private static IEnumerable<string> OtherExplanations(FittedValue[] values, List<Valley> valleys)
    {
        double[] shares = Valleys.Shares(valleys);
        for (int other = 1; other < valleys.Count; other++)
        {
            double[] there = valleys[other].Bottom.Parameters;
            FittedValue[] moved = [.. values.Select((value, i) => value with { Deviations = there[i], Sd = Math.Sqrt(valleys[other].Covariance[i, i]) })
                .Where((value, i) => Math.Abs(value.Deviations - values[i].Deviations) > Math.Max(value.Sd, Apart))
                .OrderByDescending(value => Math.Abs(value.Deviations - values.First(one => one.Parameter == value.Parameter).Deviations)).Take(3)];
            if (shares[other] >= LeastShare && moved.Length > 0)
            {
                yield return FormattableString.Invariant($"Something else suits these passes too, about {100 * shares[other]:0} in 100 likely: {string.Join(", ", moved.Select(value => $"{value.Parameter.Path} {value.After}"))}. The ± above span both.");
            }
        }
    }

    private static List<string> Remarks(FittedValue[] values, List<ChannelFit> channels)
    {
        var remarks = new List<string>();
        foreach (FittedValue value in values.Where(value => value.IsTold && Math.Abs(value.Deviations) > FarOff))
        {
            remarks.Add(FormattableString.Invariant($"{value.Parameter.Path} went {Math.Abs(value.Deviations):0.0} standard deviations off what the file knows of it: look whether something else is in the wrong place, or its ± is too small."));
        }

        foreach (ChannelFit channel in channels.Where(channel => channel.After > 2 * channel.Series.Noise))
        {
            remarks.Add(FormattableString.Invariant($"{channel.Pass}: {channel.Series.Quantity.Words} still differs by {channel.After / channel.Series.Noise:0.0} times its noise: the model or the channel has something that the other has not, and the intervals take it for scatter."));
        }

        return remarks;
    }
}
