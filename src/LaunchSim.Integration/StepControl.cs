namespace LaunchSim.Integration;

/// <summary>
/// Proportional–integral step control: factor = 0.9·err^−0.17·errold^0.04, kept within 0.2 and 10, with errold at least
/// 1e-4 and no growth right after a rejection. Gustafsson's controller with the constants of Hairer, Nørsett, Wanner I,
/// II.4 (DOPRI5).
/// </summary>
public struct StepControl
{
    private const double Safety = 0.9;
    private const double Proportional = 0.17;
    private const double Integral = 0.04;
    private const double LeastErrorKept = 1e-4;

    private double _logErrorBefore;
    private bool _rejected;

    /// <summary>A controller that has seen no step yet.</summary>
    public static StepControl New() => new() { _logErrorBefore = Math.Log(LeastErrorKept) };

    /// <summary>Smallest factor by which a step shrinks.</summary>
    public const double Smallest = 0.2;

    /// <summary>Largest factor by which a step grows.</summary>
    public const double Largest = 10;

    /// <summary>The factor for the next step after an accepted one; remembers the error.</summary>
    /// <param name="error">The accepted step's error norm, 0 to 1.</param>
    public double Accept(double error)
    {
        double log = Math.Log(Math.Max(error, 1e-16));
        double factor = Math.Clamp(
            Safety * Math.Exp((Integral * _logErrorBefore) - (Proportional * log)), Smallest, _rejected ? 1 : Largest);
        _logErrorBefore = Math.Max(log, Math.Log(LeastErrorKept));
        _rejected = false;
        return factor;
    }

    /// <summary>The factor for another try after a rejected step.</summary>
    /// <param name="error">The rejected step's error norm, above 1 or not a number.</param>
    public double Reject(double error)
    {
        _rejected = true;
        return double.IsFinite(error) ? Math.Max(Smallest, Safety * Math.Exp(-Proportional * Math.Log(error))) : Smallest;
    }
}
