using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Vehicle;
using MathNet.Numerics.RootFinding;

namespace LaunchSim.Passes.Seen;

/// <summary>What a person would see of a predicted launch, and how it compares with what one did see.</summary>
public static class SeenPrediction
{
    /// <summary>
    /// The rear counts as fully open at the first instant after which the separation grows by less than this share of itself
    /// within <see cref="Standstill"/>: what a person takes for standing still from one frame to the next. The peak itself
    /// would not do: the hit is followed by a fall in one car and by slow further opening in the next, and a small change of
    /// a damper would move the largest opening from the hit to somewhere else.
    /// </summary>
    public const double OpenShare = 0.05;

    /// <summary>The time within which that is looked at, s: a frame of a 50 Hz video.</summary>
    public const double Standstill = 0.02;

    // How closely that instant is found, s.
    private const double Tolerance = 1e-10;

    /// <summary>Each seen fact beside what the prediction has in its place, in the order of the pass file.</summary>
    /// <param name="solution">The predicted launch; not read by another thread meanwhile.</param>
    /// <param name="settings">The settings that it was solved with: the rollout counts. See <see cref="PassFile.Run"/>.</param>
    /// <param name="seen">What was seen.</param>
    public static IReadOnlyList<SeenComparison> Of(LaunchSolution solution, RunSettings settings, SeenFacts seen)
    {
        ArgumentNullException.ThrowIfNull(solution);
        ArgumentNullException.ThrowIfNull(settings);
        using var launch = new LaunchReading(solution, settings);
        return Of(launch, seen);
    }

    /// <summary>The same off a launch that is laid out already.</summary>
    /// <param name="launch">The launch.</param>
    /// <param name="seen">What was seen.</param>
    public static IReadOnlyList<SeenComparison> Of(LaunchReading launch, SeenFacts seen)
    {
        ArgumentNullException.ThrowIfNull(launch);
        ArgumentNullException.ThrowIfNull(seen);
        return SeenComparing.Of(Read(launch, seen.Visible, [.. seen.Marks.Select(mark => mark.Distance)]), seen);
    }

    /// <summary>What would be seen of a launch.</summary>
    /// <param name="launch">The launch.</param>
    /// <param name="visible">How far an end has to open before it is seen to move, m.</param>
    /// <param name="marks">Places of the beams, m.</param>
    public static PredictedFacts Read(LaunchReading launch, double visible, IReadOnlyList<double> marks)
    {
        ArgumentNullException.ThrowIfNull(launch);
        ArgumentNullException.ThrowIfNull(marks);
        (double leave, double land, double off) = Front(launch.Solution);
        double moves = launch.FirstAt(Signal.Separation, visible);
        (double opening, double open) = RearOpen(launch, moves);
        double rollout = launch.Settings.Rollout, start = rollout > 0 ? launch.FirstAt(Signal.RearPlace, rollout) : 0;
        double peak = launch.Solution.Car.Model.RearTire.PeakSlip;
        int node = 0;
        return new PredictedFacts
        {
            FrontMoves = launch.FirstAt(Signal.FrontGap, visible),
            RearMoves = moves,
            RearOpen = open,
            RearOpening = opening,
            FrontTiresLeave = leave,
            FrontTiresLand = land,
            SpinStarts = launch.NextAbove(Signal.RearSlip, peak, ref node, out (double From, double To) spell) ? spell.From : double.NaN,
            BeamTimes = [.. marks.Select(mark => launch.FirstAt(Signal.RearPlace, mark) - start)],
            TimeOpen = (launch.TimeAbove(Signal.FrontGap, visible), launch.TimeAbove(Signal.Separation, visible)),
            TimeOff = off,
            TimePastPeak = launch.TimeAbove(Signal.RearSlip, peak),
            End = launch.Duration,
        };
    }

    /// <summary>When the front tyres are first without load, until when, and how long in all: changes of modes are located events.</summary>
    private static (double Leave, double Land, double Off) Front(LaunchSolution solution)
    {
        double leave = double.NaN, land = double.NaN, since = double.NaN, off = 0;
        for (int step = 0; step < solution.Steps; step++)
        {
            bool isOff = solution.Modes(step).FrontTire != ContactMode.Pressing;
            double start = solution.Step(step).Start;
            if (isOff && double.IsNaN(since))
            {
                since = start;
                leave = double.IsNaN(leave) ? start : leave;
            }
            else if (!isOff && !double.IsNaN(since))
            {
                off += start - since;
                since = double.NaN;
                land = double.IsNaN(land) ? start : land;
            }
        }

        return (leave, land, double.IsNaN(since) ? off : off + solution.Duration - since);
    }

    /// <summary>When the rear stops opening for the first time, and how far open it is then.</summary>
    private static (double Opening, double Time) RearOpen(LaunchReading launch, double moves)
    {
        const int Rows = (int)(Standstill / LaunchReading.Grid);
        double before = moves;
        for (int row = double.IsNaN(moves) ? int.MaxValue : (int)(moves / LaunchReading.Grid) + 1; row < launch.GridRows - Rows; row++)
        {
            double time = row * LaunchReading.Grid;
            if (Grows(launch, time) <= 0)
            {
                double found = Grows(launch, before) <= 0 ? before : Brent.FindRoot(at => Grows(launch, at), before, time, Tolerance);
                return (launch.At(Signal.Separation, found), found);
            }

            before = time;
        }

        return (double.NaN, double.NaN);
    }

    private static double Grows(LaunchReading launch, double time) =>
        launch.At(Signal.Separation, time + Standstill) - ((1 + OpenShare) * launch.At(Signal.Separation, time));
}
