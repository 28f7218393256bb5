namespace LaunchSim.Scenarios.Recorded;

/// <summary>A time at a timing beam.</summary>
/// <param name="Distance">Where the beam is, m, by the rear axle.</param>
/// <param name="Time">Seconds on the beams' clock, which starts when the car has rolled the rollout.</param>
/// <param name="Sd">One standard deviation of it, s, above 0.</param>
/// <param name="Written">The time as it was written, such as <c>1.52 s</c>.</param>
public sealed record SeenMark(double Distance, double Time, double Sd, string Written);
