using Spectre.Console;

namespace LaunchSim.Cli.Terminal;

/// <summary>
/// Where results are read: a terminal of some width, or a pipe or file, which gets plain lines as long as they are.
/// </summary>
/// <param name="IsTerminal">Whether somebody reads it on a terminal.</param>
/// <param name="Width">Columns of the terminal; without meaning elsewhere.</param>
/// <param name="HasColours">Whether the terminal may be sent colours.</param>
internal sealed record Screen(bool IsTerminal, int Width, bool HasColours)
{
    // Below this a table is a heap of syllables; the terminal wraps it instead.
    private const int Narrowest = 60;

    // Beyond this the eye loses the line on its way back.
    private const int Widest = 160;

    /// <summary>A pipe or a file.</summary>
    public static Screen Plain { get; } = new(false, int.MaxValue, false);

    /// <summary>What this process writes to.</summary>
    /// <param name="isRedirected">Whether the stream leads elsewhere than to a terminal.</param>
    /// <param name="environment">Reads an environment variable.</param>
    /// <param name="width">Asks the terminal for its columns.</param>
    public static Screen Of(bool isRedirected, Func<string, string?> environment, Func<int> width)
    {
        if (isRedirected || environment("TERM") == "dumb")
        {
            return Plain;
        }

        int columns;
        try
        {
            columns = width();
        }
        catch (Exception exception) when (exception is IOException or PlatformNotSupportedException)
        {
            columns = 0;
        }

        // A terminal that does not tell its width is taken for the usual one.
        return new Screen(true, Math.Clamp(columns > 0 ? columns : 80, Narrowest, Widest), string.IsNullOrEmpty(environment("NO_COLOR")));
    }

    /// <summary>The terminal itself, to ask a person who sits there.</summary>
    public static IAnsiConsole Asker() => AnsiConsole.Create(new AnsiConsoleSettings { Interactive = InteractionSupport.Yes });

    /// <summary>A console of the table library that writes to a text in this screen's manner.</summary>
    /// <param name="output">Where to.</param>
    public IAnsiConsole Console(TextWriter output)
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = IsTerminal ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = HasColours ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(output),

            // Nothing is to be guessed from the build server or shell it runs under.
            Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
        });
        console.Profile.Width = IsTerminal ? Width : 1 << 14;
        console.Profile.Capabilities.Unicode = true;
        return console;
    }
}
