namespace LaunchSim.Scenarios.Reading;

/// <summary>Where something was written: file (or <c>--set …</c>), line and column from 1, 0 for no line.</summary>
internal readonly record struct Place(string Origin, int Line, int Column);
