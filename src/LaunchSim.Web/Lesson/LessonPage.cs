using LaunchSim.Reports.Numbers;
using LaunchSim.Web.Documents;
using LaunchSim.Web.Pages;

namespace LaunchSim.Web.Lesson;

/// <summary>The educator's page: one file, no network, every number of its text from launches that are solved when it is made.</summary>
public static class LessonPage
{
    // Half the rows of a launch's page: there are more launches here, and none of them is looked at by the millisecond.
    private const double Step = 0.002;

    /// <summary>The page.</summary>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version.</param>
    /// <param name="cancellation">Asked once a step of each launch.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static HtmlPage Of(Readout readout, string program, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(readout);
        var numbers = new LessonNumbers(LessonRuns.Solve(cancellation), readout, cancellation);
        return new HtmlPage
        {
            Title = $"{LessonText.Title} · LaunchSim",
            Description = "From a free-body drawing to the running car: what the bars of a solid axle carry, what squat is, and what the damper hands back.",
            Style = FrontBundle.Style("style/base.css", "style/scene.css", "style/charts.css", "style/page.css", "style/lesson.css"),
            Script = FrontBundle.Script("lesson/lesson.js"),
            Body = """
                <noscript><p>This page draws what it speaks of; it needs its own script, which is in this file, to be allowed.</p></noscript>
                <div id="lesson"></div>
                """,
            Data =
            [
                ("document", LaunchDocument.Text([.. numbers.Moving.Select(one => new DocumentedLaunch(one.Case.Run, Name(one)))], readout, program, Step)),
                ("lesson-text", LessonDocument.Text(numbers)),
            ],
        };
    }

    private static string Name(CaseNumbers one) => $"{one.Percent.Text}, click {one.Click.Text}";
}
