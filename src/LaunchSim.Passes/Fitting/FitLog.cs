using LaunchSim.Passes.Measured;

namespace LaunchSim.Passes.Fitting;

/// <summary>What one clock recorded of a pass: its channels, and how well its zero is known.</summary>
/// <param name="Name">What it is called, such as its file.</param>
/// <param name="Series">The channels, time from the release as far as that could be told.</param>
/// <param name="ShiftSd">One standard deviation of that zero, s; the fit moves it within this.</param>
public sealed record FitLog(string Name, IReadOnlyList<MeasuredSeries> Series, double ShiftSd);
