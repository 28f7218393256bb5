namespace LaunchSim.Scenarios.Scales;

/// <summary>One number that scales or a tape gave.</summary>
/// <param name="Value">In SI.</param>
/// <param name="HalfWidth">Nineteen times in twenty within this much, SI, above 0; null when none was written.</param>
/// <param name="Place">Where it was written, such as <c>sheet.yaml:12:14</c> or an option.</param>
/// <param name="Text">As it was written.</param>
public sealed record ScaleReading(double Value, double? HalfWidth, string Place, string Text);

/// <summary>The load of both tyres of an axle: read together or each by itself.</summary>
/// <param name="Pads">One reading, or the left and the right one, N.</param>
public sealed record AxleLoad(IReadOnlyList<ScaleReading> Pads)
{
    /// <summary>Both tyres together, N.</summary>
    public double Total => Pads.Sum(pad => pad.Value);

    /// <summary>Left tyre less right tyre, N; null when they were read together.</summary>
    public double? LeftLessRight => Pads.Count == 2 ? Pads[0].Value - Pads[1].Value : null;
}

/// <summary>One lift of an axle.</summary>
/// <param name="RaisesFront">Whether the front axle was raised; otherwise the rear.</param>
/// <param name="Height">Height of the raised wheel centres above the level of the other axle's pads, m.</param>
/// <param name="StandingHeight">Height of the standing wheel centres above their pads while lifted, m; null when it was not measured again.</param>
/// <param name="Load">What the standing axle's scales read.</param>
/// <param name="RaisedLoad">What the raised wheels press on their supports, N; null when that was not read.</param>
public sealed record ScaleLift(bool RaisesFront, ScaleReading Height, ScaleReading? StandingHeight, AxleLoad Load, ScaleReading? RaisedLoad);
