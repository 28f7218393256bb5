using System.CommandLine;
using System.Globalization;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Seasons;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Cli.Commands.Seasons;

/// <summary>What the commands of a season share: their arguments, and how a season or a pass is read and told.</summary>
internal static class SeasonInput
{
    public static Argument<string> Folder() => new("FOLDER") { HelpName = "FOLDER", CompletionSources = { FileOffers.Folders }, Description = "The season's folder" };

    public static Argument<string> Pass() => new("PASS") { HelpName = "PASS", CompletionSources = { FileOffers.Scenarios }, Description = "A pass file" };

    public static Option<string> Fitted() => new("--fitted") { HelpName = "file", CompletionSources = { FileOffers.Scenarios }, Description = "A scenario of the fitted car to set beside the prediction; the one that season.yaml names when left out" };

    public static Option<string> Day() => new("--when") { HelpName = "date", Description = "The day, as in 2026-09-13; today when left out" };

    /// <summary>Reads a season and tells what is wrong with it.</summary>
    /// <exception cref="InputException">There is no such folder, or no pass in it.</exception>
    public static Season? Read(string folder, string? fitted, Session session)
    {
        RequireFolder(folder);
        SeasonResult read = new SeasonReader(StandingCheck.Reader(ReadPurpose.Run)).Read(folder, fitted);
        Tell(read.Errors.Concat(read.Warnings), session);
        return read.Season is not { Passes.Count: 0 } ? read.Season
            : throw new InputException($"the folder `{folder}` holds no pass; `launchsim season add {folder} --car FILE` writes the first one");
    }

    /// <summary>Predicts all passes of a season.</summary>
    public static SeasonCourse Predict(Season season, bool readsLogs, Session session)
    {
        SeasonCourse? course = null;
        session.WithProgress("passes", season.Passes.Count, done => course = SeasonCourse.Of(season, readsLogs, done, session.Cancellation));
        Tell(course!.Warnings, session);
        return course;
    }

    /// <summary>The units to print in: those of the cars' files when they were not asked for.</summary>
    public static UnitSystem Units(string? given, Season season) => Settings.System(given, season.Passes[^1].Scenario.UnitSystem);

    /// <summary>The files of a season, none of which a result may take the place of.</summary>
    public static IEnumerable<string> Inputs(Season season) =>
        season.Passes.SelectMany(pass => pass.Logs.Select(log => log.File).Append(pass.SourceFile).Append(pass.CarFile)).Append(season.File.FittedFile ?? season.Folder);

    public static void Tell(IEnumerable<Diagnostic> findings, Session session)
    {
        foreach (Diagnostic finding in findings)
        {
            session.Error.WriteLine(finding.ToString());
        }
    }

    /// <exception cref="InputException">There is no such folder.</exception>
    public static void RequireFolder(string folder)
    {
        if (!Directory.Exists(folder))
        {
            throw new InputException(File.Exists(folder) ? $"`{folder}` is a file; allowed: the folder of a season" : $"found no folder `{folder}`; allowed: the folder of a season");
        }
    }

    /// <summary>The day that was given; today when none was.</summary>
    /// <exception cref="InputException">It is none.</exception>
    public static DateOnly Day(string? given) => given is null ? DateOnly.FromDateTime(DateTime.Now)
        : DateOnly.TryParseExact(given.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day
        : throw new InputException($"--when: found `{given}`; allowed: year, month and day with hyphens, as in 2026-09-13");

    /// <summary>Does something that writes into a season, and tells in one sentence when somebody else does.</summary>
    /// <exception cref="InputException">Somebody else writes.</exception>
    public static SeasonWritten Write(Func<SeasonBook, SeasonWritten> work, Session session)
    {
        try
        {
            SeasonWritten written = work(new SeasonBook(StandingCheck.Reader(ReadPurpose.Run)));
            if (written.TakenOver is { } left)
            {
                session.Error.WriteLine($"launchsim: took over the lock that {left.Words} left behind: that process is gone, and every file is whole");
            }

            return written;
        }
        catch (SeasonHeldException exception)
        {
            throw new InputException(exception.Message);
        }
    }
}
