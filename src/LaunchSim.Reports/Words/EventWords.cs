using LaunchSim.Figures;

namespace LaunchSim.Reports.Words;

/// <summary>What happened in a launch, in a few words for a chart or a drawing.</summary>
public static class EventWords
{
    /// <summary>The words of a kind, without when: <c>front tyres up</c>.</summary>
    /// <param name="kind">The kind.</param>
    /// <exception cref="ArgumentOutOfRangeException">The kind has no words.</exception>
    public static string Of(LaunchEventKind kind) => kind switch
    {
        LaunchEventKind.RearTopStop => "rear dampers topped out",
        LaunchEventKind.RearBottomStop => "rear dampers bottomed",
        LaunchEventKind.FrontTopStop => "front dampers topped out",
        LaunchEventKind.FrontBottomStop => "front dampers bottomed",
        LaunchEventKind.FrontTireOff => "front tyres up",
        LaunchEventKind.RearTireOff => "rear tyres up",
        LaunchEventKind.RearSlipPastPeak => "rear tyres past their grip",
        LaunchEventKind.RearSpringLoose => "rear springs loose",
        LaunchEventKind.FrontSpringLoose => "front springs loose",
        LaunchEventKind.WheelieBar => "wheelie bar down",
        LaunchEventKind.ClutchLocked => "clutch locked",
        LaunchEventKind.Shift => "shift",
        LaunchEventKind.RearGripFloor => "rear tyres overloaded",
        LaunchEventKind.FrontGripFloor => "front tyres overloaded",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "This kind has no words."),
    };
}
