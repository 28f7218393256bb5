namespace LaunchSim.Integration;

/// <summary>
/// A first-order system y' = f(t, y). Implement it as a struct: the integrator is closed over the type,
/// so that the call is direct and inlined.
/// </summary>
public interface IOdeSystem
{
    /// <summary>Number of states.</summary>
    int Dimension { get; }

    /// <summary>Writes f(t, y). A value that is not finite makes the integrator take a smaller step.</summary>
    /// <param name="t">The independent variable.</param>
    /// <param name="y">The states; at least <see cref="Dimension"/> long, what follows is padding.</param>
    /// <param name="dy">Receives the derivatives; every one of the first <see cref="Dimension"/> entries is written.</param>
    void Derivative(double t, ReadOnlySpan<double> y, Span<double> dy);
}
