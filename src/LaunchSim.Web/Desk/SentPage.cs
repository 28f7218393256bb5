using System.Text.Json;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Web.Documents;
using LaunchSim.Web.Pages;

namespace LaunchSim.Web.Desk;

/// <summary>The page to send to a friend, of what was moved and perhaps of the pinned set-up.</summary>
internal static class SentPage
{
    /// <summary>Makes it.</summary>
    /// <param name="sent">What was sent: <c>file</c>, <c>edits</c>, and perhaps <c>name</c>, <c>pinned</c> and <c>pinnedName</c>.</param>
    /// <param name="file">The file.</param>
    /// <param name="work">What all share.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="MalformedException">What was sent is not as it has to be.</exception>
    public static async Task<DeskAnswer> AnswerAsync(JsonElement sent, DeskFile file, DeskWork work, CancellationToken cancellation)
    {
        DeskState state = file.Current;
        var setUps = new List<(DeskSetUp SetUp, string? Name)> { (DeskSetUp.Of(state, Sent.Edits(sent)), Sent.OptionalText(sent, "name")) };
        if (Sent.OptionalEdits(sent, "pinned") is { } pinned)
        {
            setUps.Add((DeskSetUp.Of(state, pinned), Sent.OptionalText(sent, "pinnedName") ?? "Pinned"));
        }

        if (setUps.Find(one => one.SetUp.Scenario is null) is { SetUp: { } refused })
        {
            return DeskAnswer.Refused(400, refused.Errors);
        }

        Readout readout = state.Readout;
        HtmlPage page = await work.Threads.Run(token =>
        {
            DocumentedLaunch[] launches = [.. setUps.Select(one => new DocumentedLaunch(LaunchOutcome.Of(one.SetUp.Scenario!, token), one.Name ?? one.SetUp.Scenario!.Name))];
            return LaunchPage.Of(launches, readout, work.Settings.Program);
        }, cancellation).ConfigureAwait(false);
        return DeskAnswer.Of(page, Path.GetFileNameWithoutExtension(file.Name) + ".html");
    }
}
