namespace LaunchSim.Scenarios.Typical;

/// <summary>A value that has no typical one: the car's own has to be measured.</summary>
public sealed record MeasuredValue : RegisterEntry;

/// <summary>A value that is set and not measured: there is nothing typical about it, only what is usual.</summary>
public sealed record SetValue : RegisterEntry;
