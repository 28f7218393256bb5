using System.Globalization;
using System.Net.WebSockets;
using System.Text.Json;

namespace LaunchSim.Web.Desk;

/// <summary>One open desk in a browser: what it asks, and what it is told, until either end has had enough.</summary>
internal sealed class LiveConnection : IDisposable
{
    // Work in hand when a newer set-up comes may still come to its end within this, or within the longer after one that was cancelled.
    private static readonly TimeSpan Grace = TimeSpan.FromMilliseconds(30), Turn = TimeSpan.FromMilliseconds(300);

    private static readonly TimeSpan Drain = TimeSpan.FromSeconds(1);

    private readonly WebSocket _socket;
    private readonly DeskFile _file;
    private readonly DeskWork _work;
    private readonly CancellationToken _stop;
    private readonly CancellationTokenSource _end = new();
    private readonly LiveLine _line;
    private readonly LiveSolver _solver;
    private readonly LiveStudies _study;
    private readonly NewestWins<SolveAsk> _solves;
    private readonly NewestWins<PinAsk> _pins;
    private readonly NewestWins<StudyAsk> _studies;
    private readonly NewestWins<DeskState> _states;
    private long _last;
    private int _malformed;

    /// <summary>A connection.</summary>
    /// <param name="socket">Its socket.</param>
    /// <param name="file">The file that it is about.</param>
    /// <param name="work">What all connections share.</param>
    /// <param name="stop">Ends the desk.</param>
    public LiveConnection(WebSocket socket, DeskFile file, DeskWork work, CancellationToken stop)
    {
        (_socket, _file, _work, _stop) = (socket, file, work, stop);
        _line = new LiveLine(socket, work.Settings.Patience);
        _solver = new LiveSolver(file, work, _line, _end.Token);
        _study = new LiveStudies(file, work, _line, _end.Token);
        _solves = new(_solver.SolveAsync, Grace, Turn);
        _pins = new(_solver.PinAsync, TimeSpan.Zero, Turn);
        _studies = new(_study.StudyAsync, TimeSpan.Zero, TimeSpan.Zero);
        _states = new((state, _) => _line.TellAsync("file", 0, json => Write(json, state), _end.Token), Turn, Turn);
    }

    /// <summary>Set-ups that were asked for and passed over, because a newer one came.</summary>
    public long Passed => _solves.Passed + _solves.Cancelled;

    /// <summary>Serves it until it ends.</summary>
    public async Task RunAsync()
    {
        void Told(DeskState state) => _ = _states.Put(state);

        _file.Listen(Told);
        try
        {
            Told(_file.Current);
            Task reading = ReadAsync();
            Task[] all = [reading, Guarded(_solves.RunAsync), Guarded(_pins.RunAsync), Guarded(_studies.RunAsync), Guarded(_states.RunAsync), StoppedAsync(reading)];

            // Whatever ends first ends all: the client left, or can no longer be told.
            await (await Task.WhenAny(all).ConfigureAwait(false)).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            await _end.CancelAsync().ConfigureAwait(false);
            await Task.WhenAll(all).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            if (_line.IsGivenUp)
            {
                _work.Log.Refused("to go on telling a client that does not take what is sent");
            }
        }
        finally
        {
            _file.Unlisten(Told);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _solves.Dispose();
        _pins.Dispose();
        _studies.Dispose();
        _states.Dispose();
        _solver.Dispose();
        _line.Dispose();
        _end.Dispose();
    }

    private void Write(Utf8JsonWriter json, DeskState state)
    {
        json.WriteNumber("version", state.Version);
        json.WriteString("file", _file.Name);
        json.WriteBoolean("present", state.IsPresent);
        json.Findings("errors", state.Errors, state.Lines);
        json.Findings("warnings", state.Warnings);
        if (state.Scenario is { } scenario)
        {
            json.WriteString("name", scenario.Name);
            json.WriteString("notes", scenario.Notes);
        }

        json.Controls(state.Controls);
    }

    /// <summary>Ends when the desk is stopped, and tells the client so before anything else ends.</summary>
    private async Task StoppedAsync(Task reading)
    {
        using var either = CancellationTokenSource.CreateLinkedTokenSource(_stop, _end.Token);
        await Task.Delay(Timeout.InfiniteTimeSpan, either.Token).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        if (_stop.IsCancellationRequested)
        {
            await _line.CloseAsync(WebSocketCloseStatus.EndpointUnavailable, "the desk was stopped").ConfigureAwait(false);

            // The client answers that; else the reason would be lost with the connection.
            await Task.WhenAny(reading, Task.Delay(Drain, CancellationToken.None)).ConfigureAwait(false);
        }
    }

    /// <summary>A loop whose end is no surprise to anybody: a client that is gone, or the desk that is closed.</summary>
    private async Task Guarded(Func<CancellationToken, Task> loop)
    {
        try
        {
            await loop(_end.Token).ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
        }
        catch (WebSocketException)
        {
        }
#pragma warning disable CA1031 // One connection's fault must not be the others'.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            _work.Log.Fault(exception);
            await _line.CloseAsync(WebSocketCloseStatus.InternalServerError, "a fault of the program itself; open the desk anew").ConfigureAwait(false);
        }
    }

    private async Task ReadAsync()
    {
        // One byte more than is allowed tells that there is more.
        byte[] buffer = new byte[DeskLimits.Bytes + 1];
        int length = 0;
        try
        {
            while (true)
            {
                ValueWebSocketReceiveResult got = await _socket.ReceiveAsync(buffer.AsMemory(length), _end.Token).ConfigureAwait(false);
                length += got.Count;
                if (got.MessageType == WebSocketMessageType.Close)
                {
                    await _line.CloseAsync(WebSocketCloseStatus.NormalClosure, "").ConfigureAwait(false);
                    return;
                }

                if (length > DeskLimits.Bytes)
                {
                    await RefuseAllAsync(WebSocketCloseStatus.MessageTooBig, $"found a message of more than {DeskLimits.Bytes} bytes").ConfigureAwait(false);
                    return;
                }

                if (got.EndOfMessage)
                {
                    if (!await TakeAsync(buffer.AsMemory(0, length), got.MessageType).ConfigureAwait(false))
                    {
                        return;
                    }

                    length = 0;
                }
            }
        }
        catch (OperationCanceledException)
        {
            // The desk was stopped, or the client could no longer be told.
        }
        catch (WebSocketException)
        {
            // The browser was closed, or what it sent is no message at all.
        }
    }

    /// <summary>Takes a message.</summary>
    /// <returns>False when there were too many that are none.</returns>
    private async Task<bool> TakeAsync(ReadOnlyMemory<byte> text, WebSocketMessageType type)
    {
        try
        {
            if (type != WebSocketMessageType.Text)
            {
                throw new MalformedException("found a binary message; allowed: text");
            }

            LiveAsk ask = LiveAsk.Read(text);
            if (ask.Number > 0 && ask.Number <= _last)
            {
                throw new MalformedException(string.Create(CultureInfo.InvariantCulture, $"found the number {ask.Number} after {_last}; allowed: numbers that rise"));
            }

            _last = Math.Max(_last, ask.Number);
            await PutAsync(ask).ConfigureAwait(false);
            return true;
        }
        catch (MalformedException malformed)
        {
            _work.Log.Refused($"a message: {malformed.Message}");
            if (++_malformed >= DeskLimits.Malformed)
            {
                await RefuseAllAsync(WebSocketCloseStatus.PolicyViolation, $"found {_malformed} messages that are none; the last: {malformed.Message}").ConfigureAwait(false);
                return false;
            }

            await _line.TellAsync("refused", 0, json => Refused.Write(json, malformed.Message), _end.Token).ConfigureAwait(false);
            return true;
        }
    }

    private async Task PutAsync(LiveAsk ask)
    {
        switch (ask)
        {
            case SolveAsk solve:
                _ = _solves.Put(solve);
                break;
            case PinAsk pin:
                _ = _pins.Put(pin);
                break;
            case StudyAsk study:
                await CancelledAsync(_studies.Put(study)).ConfigureAwait(false);
                break;
            default:
                await CancelledAsync(_studies.Clear()).ConfigureAwait(false);
                break;
        }
    }

    private Task CancelledAsync(StudyAsk? passed) => passed is null ? Task.CompletedTask : _study.TellCancelledAsync(passed);

    private async Task RefuseAllAsync(WebSocketCloseStatus status, string reason)
    {
        _work.Log.Refused($"a client: {reason}");
        await _line.CloseAsync(status, reason).ConfigureAwait(false);

        // What is still on its way is taken and thrown away for a moment: else the reason would be lost with the connection.
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(_end.Token);
        limit.CancelAfter(Drain);
        byte[] thrownAway = new byte[4096];
        try
        {
            while ((await _socket.ReceiveAsync(thrownAway.AsMemory(), limit.Token).ConfigureAwait(false)).MessageType != WebSocketMessageType.Close)
            {
            }
        }
        catch (Exception exception) when (exception is OperationCanceledException or WebSocketException)
        {
        }
    }
}
