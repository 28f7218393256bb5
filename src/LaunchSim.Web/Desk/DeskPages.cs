using System.Buffers;
using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Json;
using LaunchSim.Launch;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Web.Documents;
using LaunchSim.Web.Pages;

namespace LaunchSim.Web.Desk;

/// <summary>The pages of the desk: the list of a folder, and the desk of a file.</summary>
/// <param name="work">What all share.</param>
/// <param name="reading">How files are read.</param>
/// <param name="token">What its own pages are known by.</param>
internal sealed class DeskPages(DeskWork work, DeskReading reading, DeskToken token)
{
    private const string Description = "The live desk of LaunchSim, on this machine only.";
    private const int LongestNotes = 200;

    /// <summary>The list of the folder's scenarios: what each is called, what its notes begin with, its static line or what is wrong with it.</summary>
    public HtmlPage List()
    {
        IReadOnlyList<string> names = work.Folder.Names();
        var body = new StringBuilder("<main>\n<h1>Scenarios</h1>\n");
        if (names.Count == 0)
        {
            body.Append("<p>There is no .yaml file in this folder. <code>launchsim new my-car.yaml</code> begins one.</p>\n");
        }

        body.Append("<ul class=\"scenarios\">\n");
        foreach (string name in names.Take(DeskLimits.Listed))
        {
            Entry(body, name);
        }

        body.Append("</ul>\n");
        if (names.Count > DeskLimits.Listed)
        {
            body.Append(CultureInfo.InvariantCulture, $"<p>And {names.Count - DeskLimits.Listed} more, which are not listed; open one by its name: <code>launchsim serve FILE</code>.</p>\n");
        }

        return Page("Scenarios", body.Append("</main>").ToString(), "", []);
    }

    /// <summary>The desk of a file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="cancellation">Ends it.</param>
    public HtmlPage Desk(DeskFile file, CancellationToken cancellation)
    {
        DeskState state = file.Current;
        var body = new StringBuilder();
        if (state.Errors.Count > 0)
        {
            body.Append("<section class=\"errors\" aria-label=\"What is wrong with the file\">\n<h2>").Append(Text(file.Name)).Append(" cannot be used as it stands</h2>\n<ul>\n");
            foreach (Diagnostic error in state.Errors)
            {
                body.Append("<li>").Append(Text(error.ToString())).Append("</li>\n");
            }

            body.Append("</ul>\n</section>\n");
        }

        List<(string, string)> data = [("desk", Data(file))];
        string script = FrontBundle.Script("desk/desk.js");
        if (state.Scenario is { } scenario)
        {
            LaunchOutcome run = LaunchOutcome.Of(scenario, cancellation);
            data.Add(("document", LaunchDocument.Text([new DocumentedLaunch(run, scenario.Name)], state.Readout, work.Settings.Program)));
        }

        body.Append("<noscript><p>The desk draws a moving car; it needs its own script, which comes from this machine, to be allowed.</p></noscript>\n<main id=\"page\"></main>");
        return Page(state.Scenario?.Name ?? file.Name, body.ToString(), script, data);
    }

    private string Data(DeskFile file)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (Utf8JsonWriter json = DeskJson.Writer(buffer))
        {
            json.WriteStartObject();
            json.WriteString("file", file.Name);
            json.WriteString("token", token.Text);
            json.WriteString("program", work.Settings.Program);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static HtmlPage Page(string title, string body, string script, IReadOnlyList<(string, string)> data) => new()
    {
        Title = $"{title} · LaunchSim desk",
        Description = Description,
        Style = FrontBundle.Style("style/base.css", "style/scene.css", "style/charts.css", "style/page.css", "style/desk.css"),
        Script = script,
        Body = body,
        Data = data,
        Connects = true,
    };

    private void Entry(StringBuilder body, string name)
    {
        ReadResult read = reading.Reader.Read(name);
        string address = $"/desk?file={Uri.EscapeDataString(name)}&token={token.Text}";
        body.Append("<li><h2><a href=\"").Append(Text(address)).Append("\">").Append(Text(read.Scenario?.Name ?? name)).Append("</a></h2>\n<p class=\"quiet\">").Append(Text(name)).Append("</p>\n");
        if (read.Scenario is { Car: { } car } scenario)
        {
            if (FirstSentence(scenario.Notes) is { Length: > 0 } notes)
            {
                body.Append("<p>").Append(Text(notes)).Append("</p>\n");
            }

            if (StandingCar.TryFind(car, out StandingCar? standing, out _))
            {
                body.Append("<p>").Append(Text(StaticLineWords.Of(standing!.Line, standing.Standing.Wheelbase, new Readout(scenario.UnitSystem)))).Append("</p>\n");
            }
        }
        else
        {
            body.Append("<p>").Append(Text(read.Errors.Count > 0 ? read.Errors[0].ToString() : "a part file; a run needs more")).Append("</p>\n");
        }

        body.Append("</li>\n");
    }

    private static string FirstSentence(string notes)
    {
        string line = string.Join(' ', notes.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        int end = line.IndexOf(". ", StringComparison.Ordinal);
        string first = end < 0 ? line : line[..(end + 1)];
        return first.Length <= LongestNotes ? first : first[..LongestNotes] + "…";
    }

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
