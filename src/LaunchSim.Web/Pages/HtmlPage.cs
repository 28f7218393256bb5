using System.Globalization;
using System.Net;
using System.Security.Cryptography;
using System.Text;

namespace LaunchSim.Web.Pages;

/// <summary>
/// One HTML file that needs nothing else: style, script and data within it, and a content security policy that lets these
/// run and nothing more. Script and style are allowed by their hash.
/// </summary>
public sealed record HtmlPage
{
    /// <summary>Its title, as plain text.</summary>
    public required string Title { get; init; }

    /// <summary>What it is about, for those who find it; plain text.</summary>
    public required string Description { get; init; }

    /// <summary>The style, as CSS.</summary>
    public required string Style { get; init; }

    /// <summary>The script, as JavaScript; empty for a page without one, which then allows none.</summary>
    public required string Script { get; init; }

    /// <summary>What stands between the body's tags, as HTML without script and style.</summary>
    public required string Body { get; init; }

    /// <summary>Data for the script by the id of their element: JSON.</summary>
    public IReadOnlyList<(string Id, string Json)> Data { get; init; } = [];

    /// <summary>Whether the page may speak to the server that it came from.</summary>
    public bool Connects { get; init; }

    /// <summary>The policy, as for a header.</summary>
    public string Policy =>
        $"default-src 'none'; script-src {(Script.Length > 0 ? Hash(Script) : "'none'")}; style-src {Hash(Style)}; img-src data:; connect-src {(Connects ? "'self'" : "'none'")}; base-uri 'none'; form-action 'none'";

    /// <summary>The file's text.</summary>
    public string Text
    {
        get
        {
            var text = new StringBuilder();
            text.Append(CultureInfo.InvariantCulture, $"""
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8">
                <meta http-equiv="Content-Security-Policy" content="{Policy}">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <meta name="color-scheme" content="light dark">
                <meta name="description" content="{WebUtility.HtmlEncode(Description)}">
                <title>{WebUtility.HtmlEncode(Title)}</title>
                <link rel="icon" href="data:,">
                <style>{Style}</style>
                </head>
                <body>
                {Body}

                """);
            foreach ((string id, string json) in Data)
            {
                // Within a script element only `</script` and `<!--` could end it early.
                text.Append("<script type=\"application/json\" id=\"").Append(id).Append("\">").Append(json.Replace("<", "\\u003c", StringComparison.Ordinal)).Append("</script>\n");
            }

            if (Script.Length > 0)
            {
                text.Append("<script type=\"module\">").Append(Script).Append("</script>\n");
            }

            return text.Append("</body>\n</html>\n").ToString();
        }
    }

    // A browser reads every line end as a line feed before it takes the hash.
    private static string Hash(string text)
    {
        string read = text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
        return $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(read)))}'";
    }
}
