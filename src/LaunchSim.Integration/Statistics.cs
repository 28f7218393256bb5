namespace LaunchSim.Integration;

/// <summary>What a run cost.</summary>
public struct Statistics
{
    /// <summary>Evaluations of the right-hand side.</summary>
    public int Evaluations;

    /// <summary>Steps accepted, those cut short by an event included.</summary>
    public int Steps;

    /// <summary>Steps rejected for their error.</summary>
    public int Rejected;

    /// <summary>Events that fired, declared breaks not counted.</summary>
    public int Events;

    /// <summary>Evaluations of single event functions while locating.</summary>
    public int EventEvaluations;

    /// <summary>Shares of steps cut off at events, summed: what location threw away, in steps.</summary>
    public double StepsDiscarded;
}

/// <summary>How a run ended.</summary>
public enum RunStatus
{
    /// <summary>Reached the end that was asked for.</summary>
    Completed,

    /// <summary>An event's handler stopped it.</summary>
    StoppedByEvent,

    /// <summary>The step fell below its floor: the right-hand side is not finite or not smooth here.</summary>
    StepBelowFloor,

    /// <summary>Too many events without progress: two modes hand over to each other at one instant.</summary>
    Chattering,

    /// <summary>The step limit was reached, or would be exceeded by far at the pace so far.</summary>
    TooManySteps,

    /// <summary>Cancellation was asked for.</summary>
    Cancelled,
}
