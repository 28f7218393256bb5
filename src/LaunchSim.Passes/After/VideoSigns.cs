using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Passes.Seen;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Studies.Chance;
using LaunchSim.Studies.Doubting;
using LaunchSim.Studies.Running;
using LaunchSim.Vehicle;

namespace LaunchSim.Passes.After;

/// <summary>
/// Looks on plausible cars for what a change moves by more than can be overlooked on a video: each fact with the bound that nine
/// cars in ten keep, so that a pass on which it is not kept says that something else is going on.
/// </summary>
public static class VideoSigns
{
    /// <summary>How many cars are drawn.</summary>
    public const int Cars = 120;

    // In so many of the cars it has to move the same way.
    private const double MostCars = 0.8;

    private const double Kept = 0.9;

    private static readonly (string Key, string Words, Func<PredictedFacts, double> Read, bool IsLag)[] Facts =
    [
        ("rear_open", "rear gap fully open", facts => facts.RearOpen, false),
        ("lag", "front", facts => facts.FrontMoves - facts.RearMoves, true),
        ("front_tires_leave", "front tyres leave", facts => facts.FrontTiresLeave, false),
        ("spin_starts", "tyres begin to spin", facts => facts.SpinStarts, false),
    ];

    /// <summary>The signs, the surest first; none when a video would not show the change.</summary>
    /// <param name="now">The set-up as it stands, with what is known of it.</param>
    /// <param name="changed">The set-up with the change.</param>
    /// <param name="run">How long to look.</param>
    /// <param name="seen">What the person's video can tell: its frame, and what is visible.</param>
    /// <param name="settings">How cars are drawn.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static IReadOnlyList<VideoSign> Of(Scenario now, Scenario changed, RunSettings run, SeenFacts seen, DoubtSettings settings, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(seen);
        ArgumentNullException.ThrowIfNull(settings);
        var plausible = new PlausibleCars([now, changed], settings.Seed, settings.WithTypical);
        double[] u = new double[plausible.Numbers.Count];
        var facts = new List<(PredictedFacts Now, PredictedFacts Then)>();
        for (int car = 0; car < Cars; car++)
        {
            cancellation.ThrowIfCancellationRequested();
            if (plausible.Draw(car, u).Cars is { } cars && Read(cars[0], run, seen, settings.Tolerance) is { } before
                && Read(Held(cars[0], cars[1]), run, seen, settings.Tolerance) is { } after)
            {
                facts.Add((before, after));
            }
        }

        return facts.Count < Cars / 2 ? [] : [.. Facts.Select(fact => Sign(fact.Key, fact.Words, fact.IsLag, [.. facts.Select(pair => (fact.Read(pair.Now), fact.Read(pair.Then)))], seen.Together)).OfType<VideoSign>().OrderByDescending(sign => sign.Share)];
    }

    private static VideoSign? Sign(string key, string words, bool isLag, (double Now, double Then)[] pairs, double visible)
    {
        int stops = pairs.Count(pair => double.IsFinite(pair.Now) && double.IsNaN(pair.Then));
        double[] before = [.. pairs.Select(pair => pair.Now).Where(double.IsFinite).Order()];
        double now = before.Length > pairs.Length / 2 ? Quantiles.OfSorted(before, 0.5) : double.NaN;
        if (!isLag && stops >= MostCars * pairs.Length)
        {
            return new VideoSign(key, words, double.NaN, false, now, (double)stops / pairs.Length, false);
        }

        double[] moved = [.. pairs.Select(pair => pair.Then - pair.Now)];
        int earlier = moved.Count(one => one <= -visible), later = moved.Count(one => one >= visible);
        double[] then = [.. pairs.Select(pair => pair.Then).Where(double.IsFinite).Order()];
        if (Math.Max(earlier, later) < MostCars * pairs.Length || then.Length < Kept * pairs.Length)
        {
            return null;
        }

        bool isEarlier = earlier > later;
        return new VideoSign(key, words, Quantiles.OfSorted(then, isEarlier ? Kept : 1 - Kept), isEarlier, now, (double)Math.Max(earlier, later) / pairs.Length, isLag);
    }

    private static PredictedFacts? Read(StandingCar? car, RunSettings run, SeenFacts seen, double tolerance)
    {
        if (car is null)
        {
            return null;
        }

        LaunchSolution launch = LaunchRunner.Create(car, tolerance, LaunchWorker.MostSteps(run)).Solve(run);
        if (LaunchFailure.Of(launch) is not null)
        {
            return null;
        }

        using var reading = new LaunchReading(launch, run);
        return SeenPrediction.Read(reading, seen.Visible, []);
    }

    // What a pressure's slope would add to the grip is left out, as it is where changes are ranked.
    private static StandingCar? Held(StandingCar now, StandingCar changed) =>
        !GripHeld.Matters(now.Car, changed.Car) ? changed : StandingCar.TryFind(GripHeld.Of(now.Car, changed.Car), out StandingCar? held, out _) ? held : null;
}
