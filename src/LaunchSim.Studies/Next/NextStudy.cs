using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Running;
using LaunchSim.Vehicle;

namespace LaunchSim.Studies.Next;

/// <summary>Tries what can be changed next: every setting one and two values away from the present one, alone and in pairs.</summary>
public static class NextStudy
{
    private const int MostSteps = 2, ShownPairs = 5;

    /// <summary>Every single change that there is to try.</summary>
    /// <param name="settings">The settings.</param>
    /// <param name="scenario">The scenario as it stands.</param>
    public static IReadOnlyList<SingleChange> Changes(IReadOnlyList<Variation> settings, Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(scenario);
        return [.. settings.SelectMany(setting => Around(setting, scenario))];
    }

    /// <summary>Tries them.</summary>
    /// <param name="scenario">The scenario as it stands, read for a run.</param>
    /// <param name="settings">What can be changed.</param>
    /// <param name="isOffered">Whether these are usual settings, for want of choices.</param>
    /// <param name="aims">What is wanted.</param>
    /// <param name="tolerance">The tolerance of all launches.</param>
    /// <param name="threads">How many threads.</param>
    /// <param name="done">Told after each launch; null when nobody wants to know.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static NextResult Run(
        Scenario scenario, IReadOnlyList<Variation> settings, bool isOffered, AimSet aims, double tolerance, int threads, Action? done, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(aims);
        IReadOnlyList<SingleChange> changes = Changes(settings, scenario);
        IReadOnlyList<IReadOnlyList<SingleChange>> all = [[], .. changes.Select(change => (IReadOnlyList<SingleChange>)[change]), .. Pairs(changes)];
        RunSettings run = scenario.Run with { Tolerance = tolerance };
        var results = new List<NextChange>(all.Count);
        OrderedBlocks.Run(0, all.Count, threads, 1, () => new LaunchWorker(aims.Keys, run), (worker, i) => One(scenario, all[(int)i], aims, worker, cancellation), (_, rows) =>
        {
            results.AddRange(rows);
            done?.Invoke();
        }, cancellation);

        NextChange now = results[0];
        List<NextChange> singles = [.. results.Skip(1).Take(changes.Count).OrderBy(change => change.Score)];
        AimScore best = singles.Count > 0 && singles[0].Score < now.Score ? singles[0].Score : now.Score;
        return new NextResult
        {
            Aims = aims,
            Now = now.Figures,
            Score = now.Score,
            Trouble = now.Trouble,
            IsOffered = isOffered,
            Singles = singles,
            Pairs = [.. results.Skip(1 + changes.Count).Where(pair => pair.Trouble is null && pair.Score.IsNoticeablyBetterThan(best)).OrderBy(pair => pair.Score).Take(ShownPairs)],
            Launches = all.Count,
        };
    }

    /// <summary>How many launches that takes, those with the grip held not counted.</summary>
    /// <param name="settings">The settings.</param>
    /// <param name="scenario">The scenario as it stands.</param>
    public static int Launches(IReadOnlyList<Variation> settings, Scenario scenario)
    {
        IReadOnlyList<SingleChange> changes = Changes(settings, scenario);
        return 1 + changes.Count + Pairs(changes).Count();
    }

    private static IEnumerable<IReadOnlyList<SingleChange>> Pairs(IReadOnlyList<SingleChange> changes)
    {
        for (int i = 0; i < changes.Count; i++)
        {
            for (int j = i + 1; j < changes.Count; j++)
            {
                if (changes[i].Setting != changes[j].Setting)
                {
                    yield return [changes[i], changes[j]];
                }
            }
        }
    }

    private static IEnumerable<SingleChange> Around(Variation setting, Scenario scenario)
    {
        if (setting.Present >= 0)
        {
            for (int steps = -MostSteps; steps <= MostSteps; steps++)
            {
                int place = setting.Present + steps;
                if (steps != 0 && place >= 0 && place < setting.Values.Count)
                {
                    yield return new SingleChange(setting, place, steps);
                }
            }

            yield break;
        }

        // The present value is none of them: the nearest on either side are one step away.
        if (!setting.IsScale || scenario.Find(setting.Values[0].Path) is not { } now)
        {
            for (int place = 0; place < Math.Min(2 * MostSteps, setting.Values.Count); place++)
            {
                yield return new SingleChange(setting, place, 1);
            }

            yield break;
        }

        List<int> places = [.. Enumerable.Range(0, setting.Values.Count)];
        double Value(int place) => setting.Values[place].Quantity!.Si();
        List<int> below = [.. places.Where(place => Value(place) < now.Si()).OrderByDescending(Value)], above = [.. places.Where(place => Value(place) > now.Si()).OrderBy(Value)];
        for (int steps = Math.Min(MostSteps, below.Count); steps >= 1; steps--)
        {
            yield return new SingleChange(setting, below[steps - 1], -steps);
        }

        for (int steps = 1; steps <= Math.Min(MostSteps, above.Count); steps++)
        {
            yield return new SingleChange(setting, above[steps - 1], steps);
        }
    }

    private static NextChange One(Scenario scenario, IReadOnlyList<SingleChange> changes, AimSet aims, LaunchWorker worker, CancellationToken cancellation)
    {
        double[] figures = new double[aims.Keys.Count];
        ReadResult? read = changes.Count == 0 ? null : scenario.With([.. changes.Select(change => change.Edit)]);
        Scenario? changed = read is null ? scenario : read.Scenario;
        if (changed?.Car is not { } car)
        {
            Array.Fill(figures, double.NaN);
            return new NextChange { Changes = changes, Scenario = null, Figures = figures, Score = AimScore.None, WithSlope = AimScore.None, Trouble = $"refused: found {read!.Errors[0].Message}" };
        }

        string? trouble = worker.Run(car, figures, cancellation);
        AimScore score = trouble is null ? aims.Score(figures) : AimScore.None, held = score;
        if (trouble is null && scenario.Car is { } now && GripHeld.Matters(now, car))
        {
            trouble = worker.RunHeld(now, car, figures, cancellation);
            held = trouble is null ? aims.Score(figures) : AimScore.None;
        }

        return new NextChange { Changes = changes, Scenario = changed, Figures = figures, Score = held, WithSlope = score, Trouble = trouble };
    }
}
