namespace LaunchSim.Passes.Seen;

/// <summary>
/// What would be seen of a predicted launch, in seconds since release; not a number for what does not happen as long as the
/// prediction runs. Located on the dense solution, so that a small change of the car moves them a little.
/// </summary>
public sealed record PredictedFacts
{
    /// <summary>First time at which the front has opened by what is visible.</summary>
    public required double FrontMoves { get; init; }

    /// <summary>The same of the rear.</summary>
    public required double RearMoves { get; init; }

    /// <summary>When the rear stops opening for the first time, by <see cref="SeenPrediction.OpenShare"/>.</summary>
    public required double RearOpen { get; init; }

    /// <summary>The separation then, m.</summary>
    public required double RearOpening { get; init; }

    /// <summary>When the front tyres first leave the ground.</summary>
    public required double FrontTiresLeave { get; init; }

    /// <summary>When they land after that.</summary>
    public required double FrontTiresLand { get; init; }

    /// <summary>When the rear slip first passes the tyre's peak.</summary>
    public required double SpinStarts { get; init; }

    /// <summary>Times on the beams' clock, for each mark that was asked for.</summary>
    public required IReadOnlyList<double> BeamTimes { get; init; }

    /// <summary>How long each end is open by what is visible, in all, s.</summary>
    public required (double Front, double Rear) TimeOpen { get; init; }

    /// <summary>How long the front tyres are off the ground, in all, s.</summary>
    public required double TimeOff { get; init; }

    /// <summary>How long the rear slip is past the tyre's peak, in all, s.</summary>
    public required double TimePastPeak { get; init; }

    /// <summary>Where the prediction ends, s.</summary>
    public required double End { get; init; }
}
