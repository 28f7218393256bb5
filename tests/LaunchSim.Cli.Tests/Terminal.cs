using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests;

/// <summary>What a command printed and returned.</summary>
internal sealed record Printed(int Code, string Output, string Error)
{
    /// <summary>Runs a command in this process.</summary>
    public static Printed By(params string[] args) => By(CancellationToken.None, args);

    public static Printed By(CancellationToken cancellation, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        int code = App.Run(args, new Session(output, error, cancellation));
        return new Printed(code, output.ToString(), error.ToString());
    }

    /// <summary>Bad input: exit 2, a sentence, no stack trace, no result.</summary>
    public void IsRefused()
    {
        Assert.True(Code == ExitCode.BadInput, $"exit {Code}: {Error}");
        Assert.NotEmpty(Error);
        Assert.Empty(Output);
        HasNoStackTrace();
    }

    public void HasNoStackTrace()
    {
        Assert.DoesNotMatch(new Regex(@"^\s+at .*\(|Exception", RegexOptions.Multiline), Error);
        Assert.DoesNotContain("fault of the program", Error, StringComparison.Ordinal);
    }
}

/// <summary>Scenarios of the repository and of these tests.</summary>
internal static class Files
{
    public static string Root { get; } = FindRoot();

    public static string DoorCar { get; } = Path.Combine(Root, "scenarios", "door-car.yaml");

    public static string Tests { get; } = Path.Combine(Root, "tests", "LaunchSim.Cli.Tests", "Scenarios");

    public static string Test(string name) => Path.Combine(Tests, name + ".yaml");

    public static string DoorCarWith(string part, string replacement)
    {
        string text = File.ReadAllText(DoorCar);
        Assert.Contains(part, text, StringComparison.Ordinal);
        return text.Replace(part, replacement, StringComparison.Ordinal);
    }

    private static string FindRoot([CallerFilePath] string here = "")
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "LaunchSim.sln")))
            {
                return folder.FullName;
            }
        }

        return Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
    }
}

/// <summary>A folder that is gone after the test.</summary>
internal sealed class Folder : IDisposable
{
    public string At { get; } = Directory.CreateTempSubdirectory("launchsim").FullName;

    public string Path(string name) => System.IO.Path.Combine(At, name);

    public string Write(string name, string text)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(Path(name))!);
        File.WriteAllText(Path(name), text);
        return Path(name);
    }

    public string Write(string name, byte[] bytes)
    {
        File.WriteAllBytes(Path(name), bytes);
        return Path(name);
    }

    public string[] Names() => [.. Directory.EnumerateFileSystemEntries(At, "*", SearchOption.AllDirectories).Select(path => System.IO.Path.GetRelativePath(At, path)).Order(StringComparer.Ordinal)];

    public void Dispose()
    {
        try
        {
            Directory.Delete(At, true);
        }
        catch (IOException)
        {
            // A left-over folder in the temporary one does no harm.
        }
    }
}
