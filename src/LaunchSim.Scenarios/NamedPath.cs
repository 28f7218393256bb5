namespace LaunchSim.Scenarios;

/// <summary>A path that a change, a choice or an override may name.</summary>
/// <param name="Path">Such as <c>rear.spring.rate</c>; the first item of a list stands for all, as in <c>car.ballast[0].mass</c>.</param>
/// <param name="What">What is there, in one sentence without the final stop.</param>
/// <param name="IsSection">Whether it is a section or a list, with paths of its own below it.</param>
public sealed record NamedPath(string Path, string What, bool IsSection);
