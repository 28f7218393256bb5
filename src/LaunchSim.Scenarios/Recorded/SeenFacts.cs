namespace LaunchSim.Scenarios.Recorded;

/// <summary>What a person saw of a pass, in SI, time since release; null or empty where nothing was seen.</summary>
public sealed record SeenFacts
{
    /// <summary>Nothing seen.</summary>
    public static SeenFacts None { get; } = new();

    /// <summary>Frames a second of the video; null when no value is a frame.</summary>
    public double? FramesPerSecond { get; init; }

    /// <summary>The frame of the release, from which times of frames count; 0 when none was written.</summary>
    public double ReleaseFrame { get; init; }

    /// <summary>How far an end has to open before it is seen to move, m.</summary>
    public double Visible { get; init; } = SeenDoubt.UsualVisible;

    /// <summary>Which end moves first.</summary>
    public FirstUp? FirstUp { get; init; }

    /// <summary>How near in time both ends have to move to be seen together, s: a frame of the video, or a fiftieth of a second.</summary>
    public double Together => FramesPerSecond is { } rate ? 1 / rate : SeenDoubt.UsualTime;

    /// <summary>When the front is seen to move.</summary>
    public SeenMoment? FrontMoves { get; init; }

    /// <summary>When the rear is seen to move.</summary>
    public SeenMoment? RearMoves { get; init; }

    /// <summary>When the rear is fully open.</summary>
    public SeenMoment? RearOpen { get; init; }

    /// <summary>When the front tyres leave the ground.</summary>
    public SeenMoment? FrontTiresLeave { get; init; }

    /// <summary>When they land.</summary>
    public SeenMoment? FrontTiresLand { get; init; }

    /// <summary>When the rear tyres begin to spin.</summary>
    public SeenMoment? SpinStarts { get; init; }

    /// <summary>How the rear tyres shook.</summary>
    public Shake? Shake { get; init; }

    /// <summary>Times at the beams, rising.</summary>
    public IReadOnlyList<SeenMark> Marks { get; init; } = [];

    /// <summary>The moments with their keys, in the order of the file, those that were seen.</summary>
    public IEnumerable<(string Key, SeenMoment Moment)> Moments()
    {
        (string, SeenMoment?)[] all =
        [
            ("front_moves", FrontMoves), ("rear_moves", RearMoves), ("rear_open", RearOpen),
            ("front_tires_leave", FrontTiresLeave), ("front_tires_land", FrontTiresLand), ("spin_starts", SpinStarts),
        ];
        foreach ((string key, SeenMoment? moment) in all)
        {
            if (moment is not null)
            {
                yield return (key, moment);
            }
        }
    }

    /// <summary>Whether anything was seen, shake included.</summary>
    public bool IsEmpty => FirstUp is null && Shake is null && Marks.Count == 0 && !Moments().Any();
}
