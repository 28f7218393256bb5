using System.Runtime.CompilerServices;

namespace LaunchSim.Dynamics;

/// <summary>A contact that can push and not pull. Implement it as a read-only struct.</summary>
public interface IContact
{
    /// <summary>Force, N, pushing out of the penetration.</summary>
    /// <param name="mode">The contact's mode.</param>
    /// <param name="depth">Penetration d, m.</param>
    /// <param name="rate">Its rate d', m/s.</param>
    double Force(ContactMode mode, double depth, double rate);

    /// <summary>Energy stored, J.</summary>
    /// <param name="mode">The contact's mode.</param>
    /// <param name="depth">Penetration d, m.</param>
    double Stored(ContactMode mode, double depth);

    /// <summary>Power lost, W: what goes in less the growth of what is stored.</summary>
    /// <param name="mode">The contact's mode.</param>
    /// <param name="depth">Penetration d, m.</param>
    /// <param name="rate">Its rate d', m/s.</param>
    double Lost(ContactMode mode, double depth, double rate);

    /// <summary>Not negative while the mode holds, N.</summary>
    /// <param name="mode">The contact's mode.</param>
    /// <param name="depth">Penetration d, m.</param>
    /// <param name="rate">Its rate d', m/s.</param>
    double Guard(ContactMode mode, double depth, double rate);

    /// <summary>The mode that follows when the guard has fired.</summary>
    /// <param name="mode">The mode that ended.</param>
    /// <param name="depth">Penetration d, m.</param>
    /// <param name="rate">Its rate d', m/s.</param>
    ContactMode Next(ContactMode mode, double depth, double rate);
}

/// <summary>
/// F = max(0, k·d + c·d') while penetrated, else 0: tyres on the ground, damper stops, the wheelie bar. At touch the
/// damping force may jump; a clipped contact loses what it still holds.
/// </summary>
/// <param name="rate">Rate k, N/m, of all units together.</param>
/// <param name="damping">Damping c, N·s/m, of all units together.</param>
public readonly struct OneSidedContact(double rate, double damping) : IContact
{
    private readonly double _rate = rate, _damping = damping;

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Force(ContactMode mode, double depth, double rate) =>
        mode == ContactMode.Pressing ? (_rate * depth) + (_damping * rate) : 0;

    /// <inheritdoc/>
    public double Stored(ContactMode mode, double depth) => mode == ContactMode.Apart ? 0 : 0.5 * _rate * depth * depth;

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Lost(ContactMode mode, double depth, double rate) => mode switch
    {
        ContactMode.Apart => 0,
        ContactMode.Pressing => _damping * rate * rate,
        _ => -_rate * depth * rate,
    };

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Guard(ContactMode mode, double depth, double rate)
    {
        double spring = _rate * depth, force = spring + (_damping * rate);
        return mode switch
        {
            ContactMode.Apart => -spring,
            ContactMode.Pressing => force,
            _ => Math.Min(spring, -force),
        };
    }

    /// <inheritdoc/>
    public ContactMode Next(ContactMode mode, double depth, double rate)
    {
        double spring = _rate * depth, force = spring + (_damping * rate);
        return mode switch
        {
            ContactMode.Apart => force >= 0 ? ContactMode.Pressing : ContactMode.Clipped,
            ContactMode.Pressing => depth <= 0 ? ContactMode.Apart : ContactMode.Clipped,
            _ => force >= 0 ? ContactMode.Pressing : ContactMode.Apart,
        };
    }
}
