using System.Runtime.InteropServices;

namespace LaunchSim.Cli.Terminal;

/// <summary>
/// Ctrl-C and a polite request to end, turned into a cancellation. The second one ends the process at once, so that a
/// command that is stuck can still be left.
/// </summary>
internal sealed class Interrupt : IDisposable
{
    private readonly CancellationTokenSource _source = new();
    private readonly PosixSignalRegistration _interrupt;
    private readonly PosixSignalRegistration _terminate;

    public Interrupt()
    {
        _interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Ask);
        _terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Ask);
    }

    public CancellationToken Token => _source.Token;

    public void Dispose()
    {
        _interrupt.Dispose();
        _terminate.Dispose();
        _source.Dispose();
    }

    private void Ask(PosixSignalContext context)
    {
        context.Cancel = !_source.IsCancellationRequested;
        if (context.Cancel)
        {
            _source.Cancel();
        }
    }
}
