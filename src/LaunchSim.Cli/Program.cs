using System.Text;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli;

/// <summary>The process: streams and signals; everything else is in <see cref="App"/>.</summary>
internal static class Program
{
    public static int Main(string[] args)
    {
        using var interrupt = new Interrupt();

        // Not disposed: the command flushes what it wrote, and a stream that took nothing then must not fail once more here.
        StreamWriter output = Writer(Console.OpenStandardOutput()), error = Writer(Console.OpenStandardError());
        error.AutoFlush = true;
        var session = new Session(output, error, interrupt.Token)
        {
            Screen = Screen.Of(Console.IsOutputRedirected, Environment.GetEnvironmentVariable, () => Console.WindowWidth),
            Asker = Console.IsInputRedirected || Console.IsOutputRedirected ? null : Screen.Asker,
            ErrorScreen = Screen.Of(Console.IsErrorRedirected, Environment.GetEnvironmentVariable, () => Console.WindowWidth),
        };
        return App.Run(args, session);
    }

    // UTF-8 without a mark, line feeds only: the same bytes on every machine.
    private static StreamWriter Writer(Stream stream) => new(stream, new UTF8Encoding(false), 1 << 14) { NewLine = "\n" };
}
