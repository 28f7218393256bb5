using System.Runtime.CompilerServices;
using LaunchSim.Vehicle;

namespace LaunchSim.Dynamics;

/// <summary>
/// A damper's force against its shaft speed, smooth while its piece holds. Implement it as a read-only struct, and
/// register it in <c>Launch/LaunchRunner.cs</c>.
/// </summary>
public interface IDamperForce
{
    /// <summary>Resisting force T per unit, N: the damper pushes its ends apart with −T. Extension speed positive.</summary>
    /// <param name="piece">The piece that holds.</param>
    /// <param name="speed">Shaft speed ℓ', m/s, positive when the unit gets longer.</param>
    double Resistance(int piece, double speed);

    /// <summary>Not negative while the piece holds.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="speed">Shaft speed ℓ', m/s.</param>
    double Guard(int piece, double speed);

    /// <summary>The piece on the other side of the border that the speed has reached.</summary>
    /// <param name="piece">The piece left.</param>
    /// <param name="speed">Shaft speed ℓ', m/s.</param>
    int Next(int piece, double speed);

    /// <summary>The piece that holds at a speed.</summary>
    /// <param name="speed">Shaft speed ℓ', m/s.</param>
    int Find(double speed);
}

/// <summary>A damper by its dyno tables.</summary>
/// <param name="tables">The tables.</param>
public readonly struct TableDamper(DamperTables tables) : IDamperForce
{
    // A standing car's damper rests on the border between extension and compression: without some slack, m/s, rounding
    // would hand it from one to the other for ever. Far below what any tolerance sees.
    private const double Slack = 1e-10;

    private readonly PiecewiseLinear _table = PiecewiseLinear.Damper(tables);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Resistance(int piece, double speed) => _table.At(piece, speed);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Guard(int piece, double speed) => _table.Guard(piece, speed) + Slack;

    /// <inheritdoc/>
    public int Next(int piece, double speed) => _table.Neighbour(piece, speed);

    /// <inheritdoc/>
    public int Find(double speed) => _table.Find(speed);
}
