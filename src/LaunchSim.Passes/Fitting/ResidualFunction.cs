namespace LaunchSim.Passes.Fitting;

/// <summary>What is left between measurements and a model, over its parameters.</summary>
/// <param name="parameters">Where to look; to be read only during the call.</param>
/// <param name="residuals">To be filled whole: each (model − measured) over the measurement's standard deviation, or with the sign the other way round, but always the same.</param>
/// <returns>False when the model is impossible there, such as a linkage that cannot be put together; the residuals are then not looked at.</returns>
/// <remarks>With more than one thread it is called from several at the same time.</remarks>
public delegate bool ResidualFunction(ReadOnlySpan<double> parameters, Span<double> residuals);
