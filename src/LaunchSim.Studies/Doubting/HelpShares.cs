using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Chance;
using LaunchSim.Studies.Next;
using LaunchSim.Studies.Running;
using LaunchSim.Vehicle;

namespace LaunchSim.Studies.Doubting;

/// <summary>What a change does on plausible cars, against the present set-up on the same cars.</summary>
/// <param name="Better">On how many cars it is better by more than <see cref="NextResult.Noticeable"/>, or keeps limits better.</param>
/// <param name="Same">On how many one would notice nothing.</param>
/// <param name="Worse">On how many it is worse.</param>
/// <param name="Untold">On how many neither launch came to its end; they count nowhere else.</param>
/// <param name="Gain">
/// Points gained by the change (of present score less of changed; more is better) at the 5th percentile, the median and
/// the 95th, over the cars on which both launches came to their end; not numbers where there is none.
/// </param>
public sealed record HelpShare(int Better, int Same, int Worse, int Untold, Band Gain)
{
    /// <summary>Cars of which something can be told.</summary>
    public int Told => Better + Same + Worse;

    /// <summary>In what share of them the change helps, with limits that hold the true share in 95 draws of 100.</summary>
    public ShareInterval Helps => ShareInterval.Wilson(Better, Told, 0.95);

    /// <summary>In what share of them it hurts.</summary>
    public ShareInterval Hurts => ShareInterval.Wilson(Worse, Told, 0.95);
}

/// <summary>In what share of plausible cars changes help.</summary>
/// <param name="Changes">A change each, in the order of the set-ups without the present one.</param>
/// <param name="Cars">How many cars were drawn.</param>
/// <param name="Redrawn">How many draws were impossible and drawn again.</param>
/// <param name="GivenUp">How many cars could not be drawn at all.</param>
/// <param name="UsesTypical">Whether usual doubts are among those drawn.</param>
public sealed record HelpResult(IReadOnlyList<HelpShare> Changes, int Cars, long Redrawn, int GivenUp, bool UsesTypical);

/// <summary>
/// How sure it is that a change helps: all set-ups are launched with the same plausible cars, and each is compared with the
/// present one car by car, so that what is not known of the car does not hide what the change does.
/// </summary>
public static class HelpShares
{
    private const int BlockSize = 4;

    /// <summary>Compares set-ups.</summary>
    /// <param name="setUps">The set-ups, read for a run; the first is the present one.</param>
    /// <param name="aims">What is wanted.</param>
    /// <param name="settings">How cars are drawn and launched.</param>
    /// <param name="holdsGrip">
    /// Whether a changed pressure leaves grip as it is: what an entered slope of grip over pressure would add is left out, as
    /// it is where changes are ranked.
    /// </param>
    /// <param name="done">Told how many more cars are done; null when nobody wants to know.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <param name="runs">Duration, marks and rollout of all launches; those of the first set-up when null.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static HelpResult Of(IReadOnlyList<Scenario> setUps, AimSet aims, DoubtSettings settings, bool holdsGrip, Action<int>? done, CancellationToken cancellation, RunSettings? runs = null)
    {
        ArgumentNullException.ThrowIfNull(setUps);
        ArgumentNullException.ThrowIfNull(aims);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentOutOfRangeException.ThrowIfLessThan(setUps.Count, 2, nameof(setUps));
        var plausible = new PlausibleCars(setUps, settings.Seed, settings.WithTypical, settings.Correlations);
        RunSettings run = (runs ?? setUps[0].Run) with { Tolerance = settings.Tolerance };
        Tally[] tallies = [.. setUps.Skip(1).Select(_ => new Tally(settings.Cars))];
        long redrawn = 0;
        int givenUp = 0;
        OrderedBlocks.Run(0, settings.Cars, settings.Threads, BlockSize, () => new LaunchWorker(aims.Keys, run), (worker, car) => One(plausible, aims, worker, car, holdsGrip, cancellation), (_, cars) =>
        {
            foreach ((AimScore[]? scores, int again) in cars)
            {
                redrawn += again;
                givenUp += scores is null ? 1 : 0;
                for (int i = 0; scores is not null && i < tallies.Length; i++)
                {
                    tallies[i].Add(scores[0], scores[i + 1]);
                }
            }

            done?.Invoke(cars.Length);
        }, cancellation);
        return new HelpResult([.. tallies.Select(tally => tally.Close())], settings.Cars, redrawn, givenUp, plausible.UsesTypical);
    }

    private static (AimScore[]? Scores, int Redrawn) One(PlausibleCars plausible, AimSet aims, LaunchWorker worker, long number, bool holdsGrip, CancellationToken cancellation)
    {
        PlausibleCar drawn = plausible.Draw(number, new double[plausible.Numbers.Count]);
        if (drawn.Cars is not { } cars)
        {
            return (null, drawn.Redrawn);
        }

        double[] figures = new double[aims.Keys.Count];
        var scores = new AimScore[cars.Count];
        for (int i = 0; i < scores.Length; i++)
        {
            Car now = cars[0].Car, changed = cars[i].Car;
            string? trouble = holdsGrip && GripHeld.Matters(now, changed)
                ? worker.Run(GripHeld.Of(now, changed), figures, cancellation)
                : worker.Run(cars[i], figures, cancellation);
            scores[i] = trouble is null ? aims.Score(figures) : AimScore.None;
        }

        return (scores, drawn.Redrawn);
    }

    private sealed class Tally(int cars)
    {
        private readonly List<double> _gains = new(cars);
        private int _better, _same, _worse, _untold;

        public void Add(AimScore now, AimScore changed)
        {
            if (!now.Exists && !changed.Exists)
            {
                _untold++;
                return;
            }

            if (now.Exists && changed.Exists)
            {
                _gains.Add(now.Points - changed.Points);
            }

            _ = changed.IsNoticeablyBetterThan(now) ? _better++ : now.IsNoticeablyBetterThan(changed) ? _worse++ : _same++;
        }

        public HelpShare Close() => new(_better, _same, _worse, _untold, Band.Of([.. _gains]));
    }
}
