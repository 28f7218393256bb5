using LaunchSim.Figures;
using LaunchSim.Reports.Decisive;
using LaunchSim.Reports.Words;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Chance;

namespace LaunchSim.Studies.Doubting;

/// <summary>Gathers rows in the order of their cars and makes the result of them.</summary>
internal sealed class DoubtGatherer(DoubtPlan plan, long cars)
{
    /// <summary>Variance shares are of so many cars at the most: more would know them no better than anyone needs.</summary>
    public const int MostRankedCars = 50_000;

    private const double Confidence = 0.95;

    private readonly List<double>[] _figures = [.. plan.Figures.Select(_ => new List<double>((int)cars))];
    private readonly List<double> _points = new((int)cars), _u = [];
    private readonly Dictionary<string, int> _sentences = [], _refusals = [], _failures = [];
    private readonly List<double>[] _aims = [.. plan.Aims.Aims.Select(_ => new List<double>((int)cars))];
    private readonly int[] _keeps = new int[plan.Aims.Aims.Count];
    private readonly double[] _draw = new double[plan.Numbers.Count];
    private int _whole, _givenUp, _keepsLimits, _ranked;
    private long _redrawn;

    /// <summary>Takes a row.</summary>
    /// <param name="row">The row.</param>
    public void Add(DoubtRow row)
    {
        _redrawn += row.Redrawn;
        if (row.Refusal is not null)
        {
            Count(_refusals, row.Refusal);
        }

        if (row.Trouble is not null)
        {
            _givenUp += row.IsGivenUp ? 1 : 0;
            if (!row.IsGivenUp)
            {
                Count(_failures, row.Trouble);
            }

            return;
        }

        _whole++;
        for (int i = 0; i < _figures.Length; i++)
        {
            _figures[i].Add(row.Figures[i]);
        }

        _points.Add(row.Score.Points);
        _keepsLimits += row.Score.KeepsLimits ? 1 : 0;
        Span<double> aims = plan.ForAims(row.Figures, stackalloc double[plan.AimPlaces.Length]);
        for (int i = 0; i < _aims.Length; i++)
        {
            double value = plan.Aims.Value(i, aims);
            _aims[i].Add(value);
            _keeps[i] += AimShare.IsKept(plan.Aims.Aims[i], value) ? 1 : 0;
        }

        foreach (string key in row.Sentences)
        {
            Count(_sentences, key);
        }

        if (_ranked < MostRankedCars)
        {
            _ranked++;
            plan.Plausible.Uniform(row.Car, row.Redrawn, _draw);
            _u.AddRange(_draw);
        }
    }

    /// <summary>The result.</summary>
    /// <param name="own">The file's own car.</param>
    /// <param name="foremost">Its foremost sentence's key.</param>
    /// <param name="traces">The bands on traces.</param>
    /// <param name="traceCars">Of how many cars they are.</param>
    public DoubtResult Close(DoubtRow own, string foremost, IReadOnlyList<TraceBand> traces, int traceCars)
    {
        double[] ownAims = plan.ForAims(own.Figures, new double[plan.AimPlaces.Length]).ToArray();
        return new DoubtResult
        {
            Plan = plan,
            Cars = cars,
            Whole = _whole,
            Redrawn = _redrawn,
            Refusals = Most(_refusals),
            GivenUp = _givenUp,
            Failures = Most(_failures),
            Own = own,
            Foremost = foremost,
            Figures = [.. plan.Figures.Select((figure, i) => new FigureBand(figure, own.Figures[i], Band.Of([.. _figures[i]]), _figures[i].Count(double.IsNaN)))],
            Sentences =
            [
                .. SentenceStatements.All.Where(one => own.Sentences.Contains(one.Key) || _sentences.ContainsKey(one.Key))
                    .Select(one => new SentenceShare(one.Key, one.Statement, own.Sentences.Contains(one.Key), _sentences.GetValueOrDefault(one.Key), Share(_sentences.GetValueOrDefault(one.Key)))),
            ],
            Aims = [.. plan.Aims.Aims.Select((aim, i) => new AimShare(aim, plan.Aims.Value(i, ownAims), Band.Of([.. _aims[i]]), Share(_keeps[i])))],
            Points = Band.Of([.. _points]),
            KeepsLimits = Share(_keepsLimits),
            Ranking = Ranked(own),
            Traces = traces,
            TraceCars = traceCars,
        };
    }

    private ShareInterval Share(int count) => ShareInterval.Wilson(count, _whole, Confidence);

    private static void Count(Dictionary<string, int> counts, string what) => counts[what] = counts.GetValueOrDefault(what) + 1;

    private static IReadOnlyList<(string, int)> Most(Dictionary<string, int> counts) =>
        [.. counts.OrderByDescending(one => one.Value).ThenBy(one => one.Key, StringComparer.Ordinal).Select(one => (one.Key, one.Value))];

    /// <summary>
    /// The figures of the answer are taken as one: a number's share is the mean of its shares in them, weighed by their
    /// variances over the square of what of each matters, at most 1: a figure that spreads by less than matters counts less,
    /// and none drowns the others by a few cars that run away. The error is the same mean of the errors, which is the most
    /// that it can be: the figures come off the same draws.
    /// </summary>
    private Ranking Ranked(DoubtRow own)
    {
        int inputs = plan.Numbers.Count;
        if (inputs == 0 || _ranked < VarianceShares.FewestDraws)
        {
            return new Ranking([], double.NaN, double.NaN, _ranked, []);
        }

        var shares = new VarianceShares(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_u), inputs);
        IReadOnlyList<AnswerFigure> answer = AnswerFigures.All;
        var outputs = new OutputShares[answer.Count];
        double[] weights = new double[answer.Count];
        _ = Parallel.For(0, outputs.Length, i => outputs[i] = shares.Of([.. _figures[Place(answer[i].Key)].Take(_ranked)]));
        double standing = own.Figures[Place("rear_tire_load_static_n")];
        for (int i = 0; i < weights.Length; i++)
        {
            double scale = answer[i].ScaleOf(standing);
            bool varies = outputs[i].Variance > 0 && outputs[i].Inputs.All(share => double.IsFinite(share.Share));
            weights[i] = varies ? Math.Min(1, outputs[i].Variance / (scale * scale)) : 0;
        }

        double sum = weights.Sum();
        if (!(sum > 0))
        {
            return new Ranking([], double.NaN, double.NaN, _ranked, []);
        }

        var numbers = new List<NumberShare>();
        double together = 1, squares = 0;
        for (int j = 0; j < inputs; j++)
        {
            double share = 0, error = 0;
            int most = -1;
            for (int i = 0; i < weights.Length; i++)
            {
                if (weights[i] > 0)
                {
                    VarianceShare one = outputs[i].Inputs[j];
                    share += weights[i] / sum * one.Share;
                    error += weights[i] / sum * one.StandardError;
                    most = most < 0 || weights[i] * one.Share > weights[most] * outputs[most].Inputs[j].Share ? i : most;
                }
            }

            together -= share;
            squares += error * error;
            numbers.Add(new NumberShare(plan.Numbers[j], new VarianceShare(share, error), answer[most], outputs[most].Inputs[j]));
        }

        return new Ranking([.. numbers.OrderByDescending(number => number.Share.Share)], together, Math.Sqrt(squares), _ranked, [.. answer.Select((figure, i) => (figure, weights[i] / sum))]);
    }

    private int Place(string key)
    {
        for (int i = 0; i < plan.Figures.Count; i++)
        {
            if (plan.Figures[i].Key == key)
            {
                return i;
            }
        }

        throw new ArgumentException($"There is no figure '{key}' in the plan.", nameof(key));
    }
}
