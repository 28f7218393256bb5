using System.Collections.Concurrent;
using System.Net.WebSockets;
using System.Text;
using System.Text.Json;
using System.Threading.Channels;

namespace LaunchSim.Web.Tests.Desk;

/// <summary>A browser's end of the socket.</summary>
internal sealed class LiveClient : IAsyncDisposable
{
    private readonly ClientWebSocket _socket = new();
    private readonly Channel<JsonElement> _told = Channel.CreateUnbounded<JsonElement>();
    private Task _reading = Task.CompletedTask;
    private long _number;

    private LiveClient()
    {
    }

    public WebSocketCloseStatus? CloseStatus => _socket.CloseStatus;

    public string? CloseReason => _socket.CloseStatusDescription;

    /// <summary>Ends when the server has closed the socket.</summary>
    public Task Closed => _reading;

    public static async Task<LiveClient> OpenAsync(DeskHost host, string file)
    {
        var client = new LiveClient();
        client._socket.Options.SetRequestHeader("Origin", host.Origin);
        await client._socket.ConnectAsync(new Uri($"ws://127.0.0.1:{host.Server.Port}/live?file={Uri.EscapeDataString(file)}&token={host.Token}"), CancellationToken.None);
        client._reading = client.ReadAsync();
        return client;
    }

    public Task SendAsync(object message) => SendTextAsync(JsonSerializer.Serialize(message));

    public Task SendTextAsync(string text, WebSocketMessageType type = WebSocketMessageType.Text) =>
        _socket.SendAsync(Encoding.UTF8.GetBytes(text), type, true, CancellationToken.None);

    /// <summary>Asks for a launch.</summary>
    /// <returns>Its number.</returns>
    public Task<long> SolveAsync(params (string Path, string Value)[] edits) => AskAsync("solve", edits);

    public async Task<long> AskAsync(string ask, params (string Path, string Value)[] edits)
    {
        long number = ++_number;
        await SendAsync(new { ask, number, edits = edits.Select(edit => new { path = edit.Path, value = edit.Value }) });
        return number;
    }

    /// <summary>The next message of a kind; others are passed over.</summary>
    public async Task<JsonElement> NextAsync(params string[] kinds)
    {
        using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        while (true)
        {
            JsonElement told = await _told.Reader.ReadAsync(limit.Token);
            if (kinds.Length == 0 || kinds.Contains(Kind(told)))
            {
                return told;
            }
        }
    }

    /// <summary>Everything that was told so far.</summary>
    public IReadOnlyList<JsonElement> Drain()
    {
        var all = new List<JsonElement>();
        while (_told.Reader.TryRead(out JsonElement told))
        {
            all.Add(told);
        }

        return all;
    }

    public static string Kind(JsonElement told) => told.GetProperty("tell").GetString()!;

    public static long Number(JsonElement told) => told.GetProperty("number").GetInt64();

    public static string Error(JsonElement told) => told.GetProperty("errors")[0].GetProperty("text").GetString()!;

    /// <summary>As a browser that is closed: no word, the connection is gone.</summary>
    public void Vanish() => _socket.Abort();

    public async ValueTask DisposeAsync()
    {
        try
        {
            using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(5));
            if (_socket.State == WebSocketState.Open)
            {
                await _socket.CloseOutputAsync(WebSocketCloseStatus.NormalClosure, "", limit.Token);
            }

            await _reading.WaitAsync(limit.Token);
        }
        catch (Exception exception) when (exception is WebSocketException or OperationCanceledException or ObjectDisposedException)
        {
            // It was closed from the other end.
        }

        _socket.Dispose();
    }

    private async Task ReadAsync()
    {
        byte[] buffer = new byte[1 << 16];
        using var message = new MemoryStream();
        try
        {
            while (true)
            {
                ValueWebSocketReceiveResult got = await _socket.ReceiveAsync(buffer.AsMemory(), CancellationToken.None);
                if (got.MessageType == WebSocketMessageType.Close)
                {
                    if (_socket.State == WebSocketState.CloseReceived)
                    {
                        await _socket.CloseOutputAsync(WebSocketCloseStatus.NormalClosure, "", CancellationToken.None);
                    }

                    return;
                }

                message.Write(buffer, 0, got.Count);
                if (got.EndOfMessage)
                {
                    using JsonDocument document = JsonDocument.Parse(message.GetBuffer().AsMemory(0, (int)message.Length));
                    _told.Writer.TryWrite(document.RootElement.Clone());
                    message.SetLength(0);
                }
            }
        }
        catch (Exception exception) when (exception is WebSocketException or OperationCanceledException or ObjectDisposedException)
        {
            // Cut off.
        }
        finally
        {
            _told.Writer.TryComplete();
        }
    }
}
