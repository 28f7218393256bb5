using Microsoft.Extensions.Logging;

namespace LaunchSim.Web.Desk;

/// <summary>What the web server itself has to say, as lines of the desk's log: requests that it could not read, and faults.</summary>
/// <param name="log">The log.</param>
internal sealed class LogBridge(DeskLog log) : ILoggerProvider
{
    // Requests that are no HTTP are told at a level at which otherwise every packet is.
    private const string BadRequests = "Microsoft.AspNetCore.Server.Kestrel.BadRequests";

    private const string Kestrel = "Microsoft.AspNetCore.Server.Kestrel";

    /// <inheritdoc/>
    public ILogger CreateLogger(string categoryName) => new Lines(log, categoryName);

    /// <inheritdoc/>
    public void Dispose()
    {
    }

    private sealed class Lines(DeskLog log, string category) : ILogger
    {
        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => logLevel >= (category == BadRequests ? LogLevel.Debug : LogLevel.Warning) && logLevel < LogLevel.None;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
        {
            if (!IsEnabled(logLevel))
            {
                return;
            }

            string said = exception is null ? formatter(state, exception) : exception.Message;
            if (category == BadRequests)
            {
                log.Refused($"400: {DeskLog.Plain(said)}");
            }
            else if (category == Kestrel || category.StartsWith(Kestrel + ".", StringComparison.Ordinal))
            {
                // A busy machine, a connection too many, a client too slow: nothing of it is a fault.
                log.Refused($"a connection: {DeskLog.Plain(said)}");
            }
            else
            {
                log.Tell($"the web server says: {DeskLog.Plain(said)}");
            }
        }
    }
}
