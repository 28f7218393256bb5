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

    /// <summary>Frames a second that a phone films in slow motion; common practice, no source.</summary>
    public const double PhoneFrames = 240;

    private static readonly Fact[] Facts =
    [
        new("rear_open", "rear gap fully open", facts => facts.RearOpen, seen => At(seen.RearOpen), false),
        new("lag", "front", facts => facts.FrontMoves - facts.RearMoves, seen => At(seen.FrontMoves) - At(seen.RearMoves), true),
        new("front_tires_leave", "front tyres leave", facts => facts.FrontTiresLeave, seen => At(seen.FrontTiresLeave), false),
        new("spin_starts", "tyres begin to spin", facts => facts.SpinStarts, seen => At(seen.SpinStarts), false),
    ];

    /// <summary>The signs, the surest first; none when a video would not show the change. Where no frame rate was told, and a fiftieth of a second shows nothing, those that a phone's slow motion would show.</summary>
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
        var plausible = new PlausibleCars([now, changed], settings.Seed, settings.WithTypical, settings.Correlations);
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

        VideoSign[] signs = Within(seen.Together);
        return signs.Length == 0 && seen.FramesPerSecond is null ? Within(1 / PhoneFrames) : signs;

        VideoSign[] Within(double visible) => facts.Count < Cars / 2 ? [] :
            [.. Facts.Select(fact => Sign(fact, [.. facts.Select(pair => (fact.Read(pair.Now), fact.Read(pair.Then)))], seen, visible)).OfType<VideoSign>().OrderByDescending(sign => sign.Share)];
    }

    private static VideoSign? Sign(Fact fact, (double Now, double Then)[] pairs, SeenFacts seen, double visible)
    {
        int stops = pairs.Count(pair => double.IsFinite(pair.Now) && double.IsNaN(pair.Then));
        double[] before = [.. pairs.Select(pair => pair.Now).Where(double.IsFinite).Order()];
        double now = before.Length > pairs.Length / 2 ? Quantiles.OfSorted(before, 0.5) : double.NaN;
        if (!fact.IsLag && stops >= MostCars * pairs.Length)
        {
            return new VideoSign(fact.Key, fact.Words, double.NaN, false, now, (double)stops / pairs.Length, false, visible);
        }

        double[] moved = [.. pairs.Select(pair => pair.Then - pair.Now)];
        int earlier = moved.Count(one => one <= -visible), later = moved.Count(one => one >= visible);
        double[] then = [.. pairs.Select(pair => pair.Then).Where(double.IsFinite).Order()];
        if (Math.Max(earlier, later) < MostCars * pairs.Length || then.Length < Kept * pairs.Length)
        {
            return null;
        }

        // What was seen of this pass is nearer to the car than any prediction: the change is counted from there.
        if (double.IsFinite(fact.Seen(seen)))
        {
            now = fact.Seen(seen);
            then = [.. moved.Where(double.IsFinite).Order().Select(one => now + one)];
        }

        // A bound within a frame of what is there now would be kept without the change as well.
        bool isEarlier = earlier > later;
        double bound = Quantiles.OfSorted(then, isEarlier ? Kept : 1 - Kept);
        return double.IsFinite(now) && (isEarlier ? now - bound : bound - now) < visible ? null
            : new VideoSign(fact.Key, fact.Words, bound, isEarlier, now, (double)Math.Max(earlier, later) / pairs.Length, fact.IsLag, visible);
    }

    private static double At(SeenMoment? moment) => moment is { Bound: SeenBound.At } ? moment.Time : double.NaN;

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

    /// <summary>A fact that a video shows.</summary>
    /// <param name="Key">Its key.</param>
    /// <param name="Words">What is looked at.</param>
    /// <param name="Read">Its time in a launch; not a number where it does not happen.</param>
    /// <param name="Seen">Its time as it was seen of the pass; not a number where it was not.</param>
    /// <param name="IsLag">Whether it is the front's time after the rear's.</param>
    private sealed record Fact(string Key, string Words, Func<PredictedFacts, double> Read, Func<SeenFacts, double> Seen, bool IsLag);
}
