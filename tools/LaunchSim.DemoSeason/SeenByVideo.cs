using System.Globalization;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Passes.Seen;
using LaunchSim.Vehicle;

namespace LaunchSim.DemoSeason;

/// <summary>What a person with a telephone sees of a launch, as lines of a pass file: each in the frame after it happened.</summary>
internal static class SeenByVideo
{
    /// <summary>Frames a second.</summary>
    public const int Rate = 120;

    private const double Visible = 6.35e-3, SixtyFeet = 60 * 0.3048, BeamNoise = 1e-3;

    /// <summary>The section <c>seen</c> of a pass with a video.</summary>
    /// <param name="launch">The true launch.</param>
    /// <param name="settings">What it was solved with.</param>
    /// <param name="dice">Chance.</param>
    public static string Whole(LaunchSolution launch, RunSettings settings, Dice dice)
    {
        PredictedFacts facts = Read(launch, settings);
        double release = 200 + dice.Below(100), late = dice.Uniform();
        string Frame(double time) => double.IsNaN(time) ? "never" : string.Create(CultureInfo.InvariantCulture, $"frame {Math.Ceiling(release + (time * Rate) - late):0}");
        string first = Math.Abs(facts.FrontMoves - facts.RearMoves) < 1.0 / Rate ? "together" : facts.FrontMoves < facts.RearMoves ? "front" : "rear";
        return string.Create(CultureInfo.InvariantCulture, $"""
            seen:
              frames_per_second: {Rate}
              release_frame: {release}
              first_up: {first}
              front_moves: {Frame(facts.FrontMoves)}
              rear_moves: {Frame(facts.RearMoves)}
              rear_open: {Frame(facts.RearOpen)}
              front_tires_leave: {Frame(facts.FrontTiresLeave)}
              spin_starts: {Frame(facts.SpinStarts)}
              shake: none
              {Beams(facts, dice)}

            """);
    }

    /// <summary>The section of a pass with nothing but the time slip.</summary>
    /// <param name="launch">The true launch.</param>
    /// <param name="settings">What it was solved with.</param>
    /// <param name="dice">Chance.</param>
    public static string TimeSlip(LaunchSolution launch, RunSettings settings, Dice dice) => $"""
        seen:
          shake: none
          {Beams(Read(launch, settings), dice)}

        """;

    private static string Beams(PredictedFacts facts, Dice dice) =>
        string.Create(CultureInfo.InvariantCulture, $"marks: 60 ft\n  times: {facts.BeamTimes[0] + (BeamNoise * dice.Normal()):0.000} s");

    private static PredictedFacts Read(LaunchSolution launch, RunSettings settings)
    {
        using var reading = new LaunchReading(launch, settings);
        return SeenPrediction.Read(reading, Visible, [SixtyFeet]);
    }
}
