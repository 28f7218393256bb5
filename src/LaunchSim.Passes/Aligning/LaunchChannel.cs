namespace LaunchSim.Passes.Aligning;

/// <summary>A column of a log as the launch is looked for by it.</summary>
/// <param name="Factor">What one of the column's numbers is in SI, at the axle.</param>
/// <param name="HasFreeZero">Whether where its zero lies is of no account.</param>
/// <param name="Weight">How much it counts.</param>
/// <param name="Predicted">What was predicted.</param>
internal sealed record LaunchChannel(double Factor, bool HasFreeZero, double Weight, PredictedCourse Predicted);

/// <summary>The rows of a log about one launch.</summary>
/// <param name="Times">Instants on the log's clock, s, rising.</param>
/// <param name="Columns">The columns' numbers as written, as many in each; not a number for a gap.</param>
/// <param name="Together">How many rows were made one by their mean; 1 for none.</param>
internal sealed record LogSpan(double[] Times, double[][] Columns, int Together);

/// <summary>A launch that was found in a log.</summary>
/// <param name="Shift">Roughly the release on the log's clock, s.</param>
/// <param name="Score">How little it looks like the prediction: 0 is the same shape and size, 1 nothing alike.</param>
/// <param name="Span">The rows about it.</param>
/// <param name="Other">Where in the log another launch looks nearly as much like it, s; null for nowhere.</param>
internal sealed record FoundLaunch(double Shift, double Score, LogSpan Span, double? Other);
