using System.Diagnostics;
using LaunchSim.Cli;
using LaunchSim.Cli.Terminal;
using LaunchSim.Fuzz.Cases;
using LaunchSim.Fuzz.Checks;
using LaunchSim.Fuzz.Commands;

namespace LaunchSim.Fuzz;

/// <summary>Runs the program on a case, in this process, and gathers what came of it.</summary>
internal static class Trial
{
    /// <summary>Makes the case's folder, runs the command, and looks at what it left.</summary>
    /// <param name="one">The case.</param>
    /// <param name="folder">A folder that is not there yet; it stays, for the checks.</param>
    /// <param name="cancellation">Ends the command as the user's interruption would.</param>
    public static Outcome Of(FuzzCase one, string folder, CancellationToken cancellation)
    {
        one.Make(folder);
        string[] arguments = one.ArgumentsIn(folder);
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        int? code = null;
        Exception? thrown = null;
        var watch = Stopwatch.StartNew();
        try
        {
            code = App.Run(arguments, new Session(output, error, FuzzCommands.RunsUntilEnded(one.Command, arguments) ? new CancellationToken(true) : cancellation));
        }
#pragma warning disable CA1031 // Whatever comes out of the program is what is looked for.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            thrown = exception;
        }

        watch.Stop();
        return new Outcome
        {
            Case = one,
            Folder = folder,
            Arguments = arguments,
            Code = code,
            Thrown = thrown,
            Output = output.ToString(),
            Error = error.ToString(),
            Took = watch.Elapsed,
            Written = Written(one, folder),
        };
    }

    private static List<KeyValuePair<string, byte[]>> Written(FuzzCase one, string folder)
    {
        var written = new List<KeyValuePair<string, byte[]>>();
        foreach (string path in Directory.EnumerateFiles(folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None }).Order(StringComparer.Ordinal))
        {
            string name = Path.GetRelativePath(folder, path);
            CaseFile? before = one.Files.FirstOrDefault(file => file.Name == name);
            if (before is null || (before.IsEarlierResult && !File.ReadAllBytes(path).AsSpan().SequenceEqual(before.Content)))
            {
                written.Add(new(name, File.ReadAllBytes(path)));
            }
        }

        return written;
    }
}
