using System.CommandLine;
using System.CommandLine.Invocation;
using LaunchSim.Cli.Commands;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli;

/// <summary>From arguments to an exit code, with every failure told in a plain sentence.</summary>
internal static class App
{
    /// <summary>Runs one command.</summary>
    /// <param name="args">The arguments after the program's name.</param>
    /// <param name="session">Where it reads and writes.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static int Run(IReadOnlyList<string> args, Session session)
    {
        try
        {
            int code = Invoke(args, session);
            session.Output.Flush();
            return code;
        }
        catch (InputException exception)
        {
            return End(session, exception.Message, ExitCode.BadInput);
        }
        catch (InterruptedStudyException exception)
        {
            return End(session, exception.Message, ExitCode.Interrupted);
        }
        catch (OperationCanceledException)
        {
            return End(session, "interrupted; no unfinished file is left behind", ExitCode.Interrupted);
        }
        catch (OutputException exception)
        {
            return End(session, exception.Message, ExitCode.Failed);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return End(session, $"reading or writing failed: {exception.Message}", ExitCode.Failed);
        }
        catch (OutOfMemoryException)
        {
            return End(session, "the machine's memory is used up; run fewer files at once, or a coarser sample", ExitCode.Failed);
        }
#pragma warning disable CA1031 // The last line of defence: whatever it is, the user reads a sentence and gets an exit code.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            return End(session, $"a fault of the program itself, please report it with the scenario: {exception.GetType().Name}: {exception.Message}", ExitCode.Failed);
        }
    }

    private static int Invoke(IReadOnlyList<string> args, Session session)
    {
        RefuseControls(args);
        RootCommand root = CommandRegister.Create(session, args);

        // A name that begins with @ is a file like any other, not a list of further arguments.
        ParseResult parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        var configuration = new InvocationConfiguration
        {
            Output = session.Output,
            Error = session.Error,
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        };
        if (parsed.Action is ParseErrorAction complaint)
        {
            // What was meant instead belongs to the complaint, not to the results.
            complaint.ShowHelp = false;
            configuration.Output = session.Error;
            _ = parsed.Invoke(configuration);
            session.Error.WriteLine($"launchsim: `launchsim {parsed.CommandResult.Command.Name.Replace("launchsim", "", StringComparison.Ordinal)}".TrimEnd() + " --help` tells what there is");
            return ExitCode.BadInput;
        }

        RefuseOptionsForValues(args, parsed.CommandResult.Command);
        return parsed.Invoke(configuration);
    }

    /// <summary>
    /// The parser takes the next option for the value of one whose value was forgotten, and does not even hold it against the
    /// values that are allowed.
    /// </summary>
    private static void RefuseOptionsForValues(IReadOnlyList<string> args, Command command)
    {
        HashSet<string> names = [.. command.Options.SelectMany(option => option.Aliases.Append(option.Name))];
        for (int i = 1; i < args.Count && args[i - 1] != "--"; i++)
        {
            if (names.Contains(args[i]) && command.Options.FirstOrDefault(one => one.Name == args[i - 1]) is { Arity.MinimumNumberOfValues: > 0 } option)
            {
                throw new InputException($"{option.Name}: found the option {args[i]} in the place of a value; write {option.Name} \"{option.HelpName}\"; should {args[i]} be the value, write {option.Name}={args[i]}");
            }
        }
    }

    /// <summary>Arguments come back in messages, where a terminal would obey what is hidden in them; in files they are refused too.</summary>
    private static void RefuseControls(IReadOnlyList<string> args)
    {
        for (int i = 0; i < args.Count; i++)
        {
            foreach (char c in args[i])
            {
                if (char.IsControl(c) && c is not ('\n' or '\r' or '\t'))
                {
                    throw new InputException($"found the control character U+{(int)c:X4} in argument {i + 1}; allowed: plain text; take it away");
                }
            }
        }
    }

    private static int End(Session session, string sentence, int code)
    {
        try
        {
            session.Error.WriteLine($"launchsim: {sentence}");
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // Nobody listens any more; the exit code still tells.
        }

        return code;
    }
}
