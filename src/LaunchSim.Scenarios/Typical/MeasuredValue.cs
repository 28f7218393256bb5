namespace LaunchSim.Scenarios.Typical;

/// <summary>A value that has no typical one: the car's own has to be measured.</summary>
public sealed record MeasuredValue : RegisterEntry;
