using System.Buffers;
using System.Net.WebSockets;
using System.Text;
using System.Text.Json;

namespace LaunchSim.Web.Desk;

/// <summary>The sending side of a socket: one message at a time, and none that the client does not take in good time.</summary>
/// <param name="socket">The socket.</param>
/// <param name="patience">How long a client may take for a message.</param>
internal sealed class LiveLine(WebSocket socket, TimeSpan patience) : IDisposable
{
    // What the protocol leaves room for.
    private const int LongestReason = 120;

    private readonly SemaphoreSlim _one = new(1);

    /// <summary>Whether the client did not take something in good time, which ended the socket.</summary>
    public bool IsGivenUp { get; private set; }

    /// <summary>Tells something.</summary>
    /// <param name="tell">What kind of message it is.</param>
    /// <param name="number">The number of what was asked; 0 for none.</param>
    /// <param name="write">Writes its other members.</param>
    /// <param name="stop">Ends it, and the socket with it.</param>
    /// <exception cref="WebSocketException">The client is gone or too slow.</exception>
    public async Task TellAsync(string tell, long number, Action<Utf8JsonWriter>? write, CancellationToken stop)
    {
        var buffer = new ArrayBufferWriter<byte>(256);
        using (Utf8JsonWriter json = DeskJson.Writer(buffer))
        {
            Begin(json, tell, number);
            write?.Invoke(json);
            json.WriteEndObject();
        }

        await SendAsync(buffer.WrittenMemory, stop).ConfigureAwait(false);
    }

    /// <summary>Begins a message.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="tell">What kind of message it is.</param>
    /// <param name="number">The number of what was asked; 0 for none.</param>
    public static void Begin(Utf8JsonWriter json, string tell, long number)
    {
        json.WriteStartObject();
        json.WriteString("tell", tell);
        if (number > 0)
        {
            json.WriteNumber("number", number);
        }
    }

    /// <summary>Sends a message that is written already.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="stop">Ends it, and the socket with it.</param>
    /// <exception cref="WebSocketException">The client is gone or too slow.</exception>
    public async Task SendAsync(ReadOnlyMemory<byte> text, CancellationToken stop)
    {
        await _one.WaitAsync(stop).ConfigureAwait(false);
        using var slow = new CancellationTokenSource(patience);
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(stop, slow.Token);
        try
        {
            await socket.SendAsync(text, WebSocketMessageType.Text, WebSocketMessageFlags.EndOfMessage, limit.Token).ConfigureAwait(false);
        }
        catch (Exception exception) when (slow.IsCancellationRequested && exception is OperationCanceledException or WebSocketException)
        {
            IsGivenUp = true;
            throw new WebSocketException(WebSocketError.ConnectionClosedPrematurely, "the client did not take what was sent");
        }
        finally
        {
            _ = _one.Release();
        }
    }

    /// <summary>Says why the socket ends, as far as the client still listens.</summary>
    /// <param name="status">The kind of end.</param>
    /// <param name="reason">A sentence.</param>
    public async Task CloseAsync(WebSocketCloseStatus status, string reason)
    {
        // A message that is being sent has the time that it has left.
        using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(2));
        try
        {
            await _one.WaitAsync(limit.Token).ConfigureAwait(false);
            try
            {
                if (socket.State is WebSocketState.Open or WebSocketState.CloseReceived)
                {
                    await socket.CloseOutputAsync(status, Short(reason), limit.Token).ConfigureAwait(false);
                }
            }
            finally
            {
                _ = _one.Release();
            }
        }
        catch (Exception exception) when (exception is OperationCanceledException or WebSocketException or ObjectDisposedException)
        {
            socket.Abort();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _one.Dispose();

    private static string Short(string reason)
    {
        while (Encoding.UTF8.GetByteCount(reason) > LongestReason)
        {
            reason = reason[..^1];
        }

        return reason;
    }
}
