namespace LaunchSim.Passes.Aligning;

/// <summary>One channel to be laid over its prediction.</summary>
/// <param name="Times">Its instants on the log's clock, s, rising.</param>
/// <param name="Values">Its values, SI, as many, all finite.</param>
/// <param name="Predicted">What was predicted.</param>
/// <param name="Noise">One standard deviation of a value, SI; above 0.</param>
/// <param name="OffsetSd">How far off its zero may be, SI, one standard deviation: 0 for a zero that is known, infinite for one that is of no account.</param>
/// <param name="GainSd">How far off the prediction's size may be, as a share, one standard deviation; 0 when it is not to be doubted.</param>
internal sealed record ShiftSignal(IReadOnlyList<double> Times, IReadOnlyList<double> Values, PredictedCourse Predicted, double Noise, double OffsetSd, double GainSd);

/// <summary>A shift that was found.</summary>
/// <param name="Shift">The release on the log's clock, s.</param>
/// <param name="Sd">One standard deviation of it, s, by the scatter of the data about the shifted prediction; infinite when they cannot tell.</param>
/// <param name="Pace">How much faster than predicted all went by.</param>
/// <param name="Gains">For each signal, by how much the prediction had to be made larger.</param>
/// <param name="Offsets">For each signal, what had to be added to the prediction, SI.</param>
/// <param name="Residuals">For each signal, what is left, as a standard deviation told by the median, SI; not a number when it has no value in the window.</param>
/// <param name="Counts">For each signal, how many values were used.</param>
internal sealed record ShiftEstimate(double Shift, double Sd, double Pace, double[] Gains, double[] Offsets, double[] Residuals, int[] Counts);
