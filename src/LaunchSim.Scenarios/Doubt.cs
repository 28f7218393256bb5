namespace LaunchSim.Scenarios;

/// <summary>How far off a value may be: nineteen times in twenty within this much, normal, σ half of it.</summary>
/// <param name="HalfWidth">In SI of the value; for a row in percent of it (10 is ten percent); 0 or more.</param>
/// <param name="IsPercent">True for a row, which is scaled as a whole.</param>
public readonly record struct Doubt(double HalfWidth, bool IsPercent);
