using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace LaunchSim.Web.Desk;

/// <summary>
/// The sockets that a desk listens on: 127.0.0.1 and ::1 at one port, and nothing else. They are bound before the web server
/// begins, so that a free port is still free then. A machine without ::1 is no error.
/// </summary>
internal sealed class LoopbackSockets : IDisposable
{
    // A port that is free on one address may be taken on the other.
    private const int MostTries = 20;

    private readonly List<Socket> _sockets;

    private LoopbackSockets(List<Socket> sockets) => _sockets = sockets;

    /// <summary>The port.</summary>
    public int Port => ((IPEndPoint)_sockets[0].LocalEndPoint!).Port;

    /// <summary>Where they listen.</summary>
    public IReadOnlyList<IPEndPoint> EndPoints => [.. _sockets.Select(socket => (IPEndPoint)socket.LocalEndPoint!)];

    /// <summary>Binds them.</summary>
    /// <param name="port">The port; null for a free one.</param>
    /// <exception cref="DeskException">The port is taken, or may not be had.</exception>
    public static LoopbackSockets Bind(int? port)
    {
        for (int tries = 1; ; tries++)
        {
            Socket first = Bound(IPAddress.Loopback, port ?? 0);
            try
            {
                Socket? second = Socket.OSSupportsIPv6 ? BoundIfThere(IPAddress.IPv6Loopback, ((IPEndPoint)first.LocalEndPoint!).Port) : null;
                return new LoopbackSockets(second is null ? [first] : [first, second]);
            }
            catch (DeskException) when (port is null && tries < MostTries)
            {
                first.Dispose();
            }
            catch
            {
                first.Dispose();
                throw;
            }
        }
    }

    /// <summary>The socket of an address; from then on it is the web server's.</summary>
    /// <param name="endPoint">One of <see cref="EndPoints"/>.</param>
    public Socket Hand(EndPoint endPoint)
    {
        Socket socket = _sockets.Find(one => Equals(one.LocalEndPoint, endPoint)) ?? throw new InvalidOperationException($"The desk does not listen on {endPoint}.");
        _ = _sockets.Remove(socket);
        return socket;
    }

    /// <inheritdoc/>
    public void Dispose() => _sockets.ForEach(socket => socket.Dispose());

    private static Socket? BoundIfThere(IPAddress address, int port)
    {
        try
        {
            return Bound(address, port);
        }
        catch (SocketException exception) when (exception.SocketErrorCode is SocketError.AddressNotAvailable or SocketError.AddressFamilyNotSupported or SocketError.ProtocolFamilyNotSupported or SocketError.NetworkUnreachable)
        {
            return null;
        }
    }

    private static Socket Bound(IPAddress address, int port)
    {
        var socket = new Socket(address.AddressFamily, SocketType.Stream, ProtocolType.Tcp);
        try
        {
            if (OperatingSystem.IsWindows())
            {
                // Else another program could listen at the same port.
                socket.ExclusiveAddressUse = true;
            }

            socket.Bind(new IPEndPoint(address, port));
            return socket;
        }
        catch (SocketException exception) when (exception.SocketErrorCode is SocketError.AddressAlreadyInUse or SocketError.AccessDenied)
        {
            socket.Dispose();
            string found = exception.SocketErrorCode == SocketError.AddressAlreadyInUse ? "is taken by another program" : "may not be used by this user";
            throw new DeskException(string.Create(CultureInfo.InvariantCulture, $"port {port} {found}; leave --port out for a free one, or name another"));
        }
        catch
        {
            socket.Dispose();
            throw;
        }
    }
}
