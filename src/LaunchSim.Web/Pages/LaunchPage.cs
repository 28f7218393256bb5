using LaunchSim.Reports.Numbers;
using LaunchSim.Web.Documents;

namespace LaunchSim.Web.Pages;

/// <summary>The page of one to three launches, to send to a friend: one file, no network.</summary>
public static class LaunchPage
{
    /// <summary>Most launches on one page: more outlines are not told apart.</summary>
    public const int MostLaunches = 3;

    /// <summary>The page.</summary>
    /// <param name="launches">One to <see cref="MostLaunches"/> launches; the first is drawn in full, the others as outlines.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version.</param>
    /// <exception cref="ArgumentException">There is no launch, or there are too many.</exception>
    public static HtmlPage Of(IReadOnlyList<DocumentedLaunch> launches, Readout readout, string program)
    {
        ArgumentNullException.ThrowIfNull(launches);
        if (launches.Count is 0 or > MostLaunches)
        {
            throw new ArgumentException($"A page shows 1 to {MostLaunches} launches, not {launches.Count}.", nameof(launches));
        }

        string names = string.Join(" and ", launches.Select(launch => launch.Name));
        return new HtmlPage
        {
            Title = $"{names} · LaunchSim",
            Description = $"The first second off the line, moving: {names}.",
            Style = FrontBundle.Style("style/base.css", "style/scene.css", "style/charts.css", "style/page.css"),
            Script = FrontBundle.Script("page.js"),
            Body = """
                <noscript><p>This page draws a moving car; it needs its own script, which is in this file, to be allowed.</p></noscript>
                <main id="page"></main>
                """,
            Data = [("document", LaunchDocument.Text(launches, readout, program))],
        };
    }
}
