namespace LaunchSim.Integration;

/// <summary>How the sign of an event function has to change for the event to fire.</summary>
public enum EventDirection
{
    /// <summary>From positive to negative.</summary>
    Falling,

    /// <summary>From negative to positive.</summary>
    Rising,

    /// <summary>Either way.</summary>
    Either,

    /// <summary>
    /// A guard of the system's present mode: the mode holds while the function is not negative. Fires when it falls
    /// through zero, and at the start of a step already if it is violated there.
    /// </summary>
    Guard,
}

/// <summary>What the integrator does after an event or a break.</summary>
public enum EventAction
{
    /// <summary>Goes on from the state that the handler left, with the derivative evaluated anew.</summary>
    Restart,

    /// <summary>Ends the run here.</summary>
    Stop,
}

/// <summary>
/// A system with events: functions whose sign changes are located on the dense output, and declared instants that no
/// step crosses. Between two events the right-hand side is meant to be smooth: a system with kinks freezes its mode,
/// goes on smoothly beyond the mode's border, and switches in <see cref="OnEvent"/>.
/// </summary>
public interface IEventSystem : IOdeSystem
{
    /// <summary>Number of event functions; constant during a run.</summary>
    int EventCount { get; }

    /// <summary>The direction in which event <paramref name="index"/> fires.</summary>
    /// <param name="index">0 to <see cref="EventCount"/> less one.</param>
    EventDirection Direction(int index);

    /// <summary>
    /// Writes f(t, y) as <see cref="IOdeSystem.Derivative"/> does, to the bit, and all event functions there: asked for at
    /// the ends of steps, while inside them the derivative alone is wanted. An event that is not armed reads
    /// <see cref="double.PositiveInfinity"/>.
    /// </summary>
    /// <param name="t">The independent variable.</param>
    /// <param name="y">The states.</param>
    /// <param name="dy">Receives the derivatives.</param>
    /// <param name="values">Receives the event functions.</param>
    void DerivativeAndEvents(double t, ReadOnlySpan<double> y, Span<double> dy, Span<double> values);

    /// <summary>
    /// A quantity that the true solution keeps, such as the balance of an energy ledger; 0 where there is none. Asked for
    /// right after <see cref="DerivativeAndEvents"/> at the same point, so that what was computed there may be used again;
    /// not asked for unless <see cref="IntegratorOptions.InvariantTolerance"/> is set.
    /// </summary>
    /// <param name="y">The states.</param>
    double Invariant(ReadOnlySpan<double> y);

    /// <summary>
    /// One event function anywhere, without a call of the derivative before it; the same to the bit as in
    /// <see cref="DerivativeAndEvents"/>, so that a border that has been passed reads as passed.
    /// </summary>
    /// <param name="index">Which event.</param>
    /// <param name="t">The independent variable.</param>
    /// <param name="y">The states.</param>
    double EventValue(int index, double t, ReadOnlySpan<double> y);

    /// <summary>
    /// Acts on an event: may change the state and the system's mode. The derivative was last called somewhere else, so
    /// nothing computed there belongs to <paramref name="t"/> and <paramref name="y"/>.
    /// </summary>
    /// <param name="index">Which event.</param>
    /// <param name="t">When.</param>
    /// <param name="y">The states there; changes are kept.</param>
    EventAction OnEvent(int index, double t, Span<double> y);

    /// <summary>
    /// The next declared instant, later than <paramref name="t"/>, or <see cref="double.PositiveInfinity"/>. A step ends on
    /// it, and up to its end the right-hand side goes on as before the instant: what changes there changes in
    /// <see cref="OnBreak"/>.
    /// </summary>
    /// <param name="t">The present instant.</param>
    double NextBreak(double t);

    /// <summary>Acts on a declared instant that a step has just ended on, the run's end included.</summary>
    /// <param name="t">The instant.</param>
    /// <param name="y">The states there; changes are kept.</param>
    EventAction OnBreak(double t, Span<double> y);
}

/// <summary>A plain system dressed as one without events.</summary>
/// <typeparam name="TSystem">The plain system.</typeparam>
/// <param name="system">The plain system.</param>
public struct WithoutEvents<TSystem>(TSystem system) : IEventSystem
    where TSystem : struct, IOdeSystem
{
    private TSystem _system = system;

    /// <inheritdoc/>
    public readonly int Dimension => _system.Dimension;

    /// <inheritdoc/>
    public readonly int EventCount => 0;

    /// <inheritdoc/>
    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dy) => _system.Derivative(t, y, dy);

    /// <inheritdoc/>
    public readonly EventDirection Direction(int index) => EventDirection.Either;

    /// <inheritdoc/>
    public void DerivativeAndEvents(double t, ReadOnlySpan<double> y, Span<double> dy, Span<double> values) => _system.Derivative(t, y, dy);

    /// <inheritdoc/>
    public readonly double Invariant(ReadOnlySpan<double> y) => 0;

    /// <inheritdoc/>
    public readonly double EventValue(int index, double t, ReadOnlySpan<double> y) => double.PositiveInfinity;

    /// <inheritdoc/>
    public readonly EventAction OnEvent(int index, double t, Span<double> y) => EventAction.Restart;

    /// <inheritdoc/>
    public readonly double NextBreak(double t) => double.PositiveInfinity;

    /// <inheritdoc/>
    public readonly EventAction OnBreak(double t, Span<double> y) => EventAction.Restart;
}
