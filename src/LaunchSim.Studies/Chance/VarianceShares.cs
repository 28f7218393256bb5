using System.Collections.Concurrent;

namespace LaunchSim.Studies.Chance;

/// <summary>
/// How much of an output's variance each of many inputs decides by itself, from draws of all of them together: no draws are
/// made for it, and any number of outputs can be asked about. Read-only once made: many threads may share one.
/// </summary>
/// <remarks>
/// <para>
/// E. Plischke, "An effective algorithm for computing global sensitivity indices (EASI)", Reliability Engineering and System
/// Safety 95, 2010 (from memory): sort the draws by an input and see how much of the output is then smooth. Here smooth means
/// least squares on few functions of the rank: the first M cosines, M the third root of the number of draws (2 to 16), after
/// the normal score of the rank and its square. Those two because an input that is normal in the doubt often acts on a
/// straight line or a parabola; these are then met exactly, where cosines alone would leave some per cent unseen at the
/// steep ends. What is left unseen falls as 1/M³ for other smooth effects; a saw finer than M/2 teeth is not seen at all.
/// </para>
/// <para>
/// Noise, too, is partly smooth, and what it adds to the K = M + 2 squared coefficients is taken off. Independent draws would
/// add Σ h e²/(1 − h − 1/n), with e what the input leaves unexplained of a draw and h the sum of the squared functions at
/// its rank (the leverage of least squares). Even draws add much less: the effects of the other inputs cancel between
/// neighbours in rank. How much is seen at the 2M next cosines, which no smooth effect reaches, as the ratio of their
/// squared coefficients to what independent draws would have there. Noise of even draws is greater the finer the cosine, so
/// a little too much is taken off: inputs of no share come out below 0, in the mean by up to one and a half standard errors
/// in the cases tried.
/// </para>
/// <para>
/// The standard error is that of the bootstrap in the limit of many repetitions, in closed form: the influence of a draw on
/// Var(E[y|u])/Var(y) is ((1 − S)d² − e²)/Var(y), with d its distance from the mean; their variance over n is the error's
/// square. Where the share is about zero the next term counts, 2N²/K with N the share taken off for noise: it is in the first
/// one twice, taken off once, and never undercut. What N itself may be off by, N²/M, is added. All that holds for independent
/// draws; from a <see cref="HaltonSequence"/> large shares of smooth outputs are known some times more closely than is said.
/// Below some 200 draws an error is known but roughly, and 1.96 of them hold 80 to 95 cases of 100.
/// </para>
/// </remarks>
public sealed class VarianceShares
{
    /// <summary>With fewer draws than this nothing is said of shares.</summary>
    public const int FewestDraws = 10;

    // Input by input the draws in rising order; null for an input that does not vary.
    private readonly int[]?[] _orders;

    private readonly int _draws;

    // By how many draws have a value; outputs are often missing together.
    private readonly ConcurrentDictionary<int, RankBasis> _bases = new();

    /// <summary>Takes the draws.</summary>
    /// <param name="draws">
    /// Draw by draw the value of every input. Inputs are independent of each other and continuous. Their order alone counts: it
    /// does not matter whether they are given as uniform numbers or as what became of them.
    /// </param>
    /// <param name="inputs">How many inputs, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no input.</exception>
    /// <exception cref="ArgumentException">The draws are no whole number of rows, or a value is not a number.</exception>
    public VarianceShares(ReadOnlySpan<double> draws, int inputs)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(inputs, 1);
        if (draws.Length % inputs != 0)
        {
            throw new ArgumentException($"{draws.Length} values are no whole number of draws of {inputs} inputs.", nameof(draws));
        }

        _draws = draws.Length / inputs;
        _orders = new int[inputs][];
        double[] column = new double[_draws];
        for (int j = 0; j < inputs; j++)
        {
            for (int i = 0; i < _draws; i++)
            {
                column[i] = draws[(i * inputs) + j];
                if (double.IsNaN(column[i]))
                {
                    throw new ArgumentException($"Input {j} of draw {i} is not a number.", nameof(draws));
                }
            }

            _orders[j] = Order(column);
        }
    }

    /// <summary>The shares in the variance of an output.</summary>
    /// <param name="output">
    /// Draw by draw its value; not a number where it has none. Those draws are left out and the others ranked anew. Where
    /// values are missing for a reason the inputs are no longer independent among the others, and shares may overlap.
    /// </param>
    /// <returns>
    /// Shares are not numbers for fewer than <see cref="FewestDraws"/> values and for a constant output; 0, with no error, for
    /// an input that does not vary.
    /// </returns>
    /// <exception cref="ArgumentException">There are not as many values as draws, or one is infinite.</exception>
    public OutputShares Of(ReadOnlySpan<double> output)
    {
        if (output.Length != _draws)
        {
            throw new ArgumentException($"There are {_draws} draws, but {output.Length} values.", nameof(output));
        }

        CentredOutput centred = new(output);
        var shares = new VarianceShare[_orders.Length];
        if (centred.Count < FewestDraws || centred.Scale == 0)
        {
            Array.Fill(shares, new VarianceShare(double.NaN, double.NaN));
        }
        else
        {
            RankBasis basis = _bases.GetOrAdd(centred.Count, count => new RankBasis(count));
            double[] sorted = new double[basis.Stride], effect = new double[basis.Stride];
            for (int j = 0; j < shares.Length; j++)
            {
                if (_orders[j] is int[] order)
                {
                    centred.InOrder(order, sorted);
                    shares[j] = Share(basis, sorted, effect);
                }
            }
        }

        return new OutputShares(centred.Count, _draws - centred.Count, centred.Mean, centred.Variance, shares);
    }

    private static VarianceShare Share(RankBasis basis, ReadOnlySpan<double> sorted, Span<double> effect)
    {
        Span<double> coefficients = stackalloc double[basis.Smooth + basis.Fine];
        basis.Project(sorted, coefficients);
        basis.Combine(coefficients, effect);
        double explained = SumOfSquares(coefficients[..basis.Smooth]), fine = SumOfSquares(coefficients[basis.Smooth..]);
        double total = SumOfSquares(sorted), left = Math.Max(0, 1 - (explained / total));

        ReadOnlySpan<double> smoothWeights = basis.SmoothWeights, fineWeights = basis.FineWeights;
        double influences = 0, smoothNoise = 0, fineNoise = 0;
        for (int i = 0; i < sorted.Length; i++)
        {
            double d = sorted[i], e = d - effect[i], influence = (left * d * d) - (e * e);
            influences += influence * influence;
            smoothNoise += smoothWeights[i] * e * e;
            fineNoise += fineWeights[i] * e * e;
        }

        double noise = fineNoise == 0 ? 0 : fine / fineNoise * smoothNoise / total;
        double next = 2 * noise * noise / basis.Smooth, ofNoise = 2 * noise * noise / basis.Fine;
        double squared = Math.Max((influences / (total * total)) - next, next) + ofNoise;
        return new VarianceShare((explained / total) - noise, Math.Sqrt(squared));
    }

    private static double SumOfSquares(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value * value;
        }

        return sum;
    }

    private static int[]? Order(double[] column)
    {
        double[] keys = [.. column];
        int[] order = [.. Enumerable.Range(0, keys.Length)];
        Array.Sort(keys, order);
        if (keys.Length == 0 || keys[0] == keys[^1])
        {
            return null;
        }

        // The library leaves open in what order equals come.
        for (int from = 0, to; from < keys.Length; from = to)
        {
            for (to = from + 1; to < keys.Length && keys[to] == keys[from];)
            {
                to++;
            }

            Array.Sort(order, from, to - from);
        }

        return order;
    }
}
