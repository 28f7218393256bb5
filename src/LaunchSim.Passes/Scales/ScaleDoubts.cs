namespace LaunchSim.Passes.Scales;

/// <summary>How far off readings usually are that were written without ±: nineteen times in twenty, common practice, no source.</summary>
public static class ScaleDoubts
{
    private const double Inch = 0.0254, Pound = 4.4482216152605;

    /// <summary>One pad, read again after rolling off and on: 2 lb.</summary>
    public const double Pad = 2 * Pound;

    /// <summary>Two pads added up: 3 lb.</summary>
    public const double Axle = 3 * Pound;

    /// <summary>Height of a wheel centre by tape, lifted or on the level: 1/8 in.</summary>
    public const double Height = Inch / 8;

    /// <summary>Wheelbase or track by tape: 1/8 in.</summary>
    public const double Tape = Inch / 8;
}
