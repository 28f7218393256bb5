using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Cli.Terminal;

/// <summary>Errors and warnings of scenarios on the error stream, one a line.</summary>
internal static class Findings
{
    /// <summary>Writes all errors and warnings of a reading.</summary>
    /// <param name="result">What came of reading.</param>
    /// <param name="error">Where to.</param>
    public static void Write(ReadResult result, TextWriter error)
    {
        foreach (Diagnostic finding in result.Errors.Concat(result.Warnings))
        {
            error.WriteLine(finding.ToString());
        }
    }

    /// <summary>Reads a pass file and tells everything that is wrong in it or in its car.</summary>
    /// <param name="file">The file.</param>
    /// <param name="session">Takes the findings.</param>
    /// <returns>The pass; null when there is an error.</returns>
    public static PassFile? ReadPass(string file, Session session)
    {
        PassResult read = new PassReader(StandingCheck.Reader(ReadPurpose.Run)).Read(file);
        foreach (Diagnostic finding in read.Errors.Concat(read.Warnings))
        {
            session.Error.WriteLine(finding.ToString());
        }

        return read.Pass;
    }

    /// <summary>Reads files and tells everything that is wrong in any of them.</summary>
    /// <param name="reader">The reader.</param>
    /// <param name="files">The files.</param>
    /// <param name="overrides">Values in the place of the files'.</param>
    /// <param name="session">Takes the findings.</param>
    /// <returns>The scenarios; null when a file has an error.</returns>
    public static IReadOnlyList<Scenario>? ReadAll(ScenarioReader reader, IReadOnlyList<string> files, IReadOnlyList<(string Path, string Value)> overrides, Session session)
    {
        var scenarios = new List<Scenario>();
        foreach (string file in files)
        {
            session.Cancellation.ThrowIfCancellationRequested();
            ReadResult result = reader.Read(file, overrides);
            Write(result, session.Error);
            if (result.Scenario is { } scenario)
            {
                scenarios.Add(scenario);
            }
        }

        return scenarios.Count == files.Count ? scenarios : null;
    }
}
