using LaunchSim.Reports.Numbers;

namespace LaunchSim.Charts.Measured;

/// <summary>One quantity as it was measured and as it was predicted.</summary>
/// <param name="Name">Plain name, for the file.</param>
/// <param name="Caption">What it is, without its unit.</param>
/// <param name="Title">What is seen, in one sentence without a full stop.</param>
/// <param name="Scale">Its unit.</param>
/// <param name="Least">The smallest extent worth drawing, SI.</param>
/// <param name="Predicted">The prediction: s since release, and SI.</param>
/// <param name="Measured">What was measured, a trace for each log; at most <see cref="MeasuredCharts.MostTraces"/> are told apart.</param>
public sealed record MeasuredPanel(string Name, string Caption, string Title, Scale Scale, double Least, IReadOnlyList<(double Time, double Value)> Predicted, IReadOnlyList<MeasuredTrace> Measured);

/// <summary>What one log has of a quantity.</summary>
/// <param name="Label">What stands at it when there are several.</param>
/// <param name="Times">Instants, s since release, rising.</param>
/// <param name="Values">Values, SI, as many.</param>
public sealed record MeasuredTrace(string Label, IReadOnlyList<double> Times, IReadOnlyList<double> Values);

/// <summary>What stands on a page around the plots.</summary>
/// <param name="Title">What is seen, in one sentence without a full stop.</param>
/// <param name="Explanation">How to read it.</param>
/// <param name="Imprint">What it was made of and by.</param>
public sealed record MeasuredPageText(string Title, string Explanation, string Imprint);
