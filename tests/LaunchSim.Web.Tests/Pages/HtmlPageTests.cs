using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using LaunchSim.Web.Pages;

namespace LaunchSim.Web.Tests.Pages;

public class HtmlPageTests
{
    private static readonly HtmlPage Page = new()
    {
        Title = "A launch",
        Description = "One launch of the car.",
        Style = "body { color: #222 }",
        Script = "document.title = '141 %';",
        Body = "<main></main>",
    };

    private static string Between(string text, string before, string after)
    {
        int start = text.IndexOf(before, StringComparison.Ordinal) + before.Length;
        return text[start..text.IndexOf(after, start, StringComparison.Ordinal)];
    }

    private static string Hash(string text) => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}'";

    [Fact]
    public void Policy_OfAPage_AllowsWhatStandsInItByHashAndNothingElse()
    {
        string text = Page.Text;
        string script = Between(text, "<script type=\"module\">", "</script>");
        string style = Between(text, "<style>", "</style>");
        Assert.Equal(Page.Script, script);
        Assert.Equal(Page.Style, style);
        Assert.Equal(
            $"default-src 'none'; script-src {Hash(script)}; style-src {Hash(style)}; img-src data:; connect-src 'none'; base-uri 'none'; form-action 'none'",
            Between(text, "Content-Security-Policy\" content=\"", "\""));
        Assert.DoesNotContain("unsafe", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Policy_OfAPageThatConnects_AllowsItsServerOnly() =>
        Assert.Contains("connect-src 'self';", (Page with { Connects = true }).Policy, StringComparison.Ordinal);

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Policy_OfTextsWithOtherLineEnds_IsThatOfLineFeeds(string end)
    {
        HtmlPage Ends(string end) => Page with { Script = $"'°';{end}{end}'é';", Style = $"a {{}}{end}b {{}}" };
        Assert.Equal(Ends("\n").Policy, Ends(end).Policy);
    }

    [Fact]
    public void Style_WithRareSeparators_StandsInTheTextAsItWasHashed()
    {
        HtmlPage page = Page with { Style = "a::after { content: '\u2028\u0085' }\fb {}" };
        Assert.Contains(Hash(Between(page.Text, "<style>", "</style>")), page.Policy, StringComparison.Ordinal);
    }

    [Fact]
    public void Data_WithTheEndOfAScript_CannotEndIt()
    {
        const string Json = "{\"name\":\"</script><script>alert(1)</script><!--\"}";
        string text = (Page with { Data = [("launch", Json)] }).Text;
        string told = Between(text, "<script type=\"application/json\" id=\"launch\">", "</script>");
        Assert.Equal("</script><script>alert(1)</script><!--", JsonDocument.Parse(told).RootElement.GetProperty("name").GetString());
        Assert.Equal(2, Regex.Count(text, "<script"));
        Assert.DoesNotContain("<!--", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Data_OfSeveralElements_EachHasItsOwn()
    {
        string text = (Page with { Data = [("launch", "1"), ("bands", "2")] }).Text;
        Assert.Equal("1", Between(text, "<script type=\"application/json\" id=\"launch\">", "</script>"));
        Assert.Equal("2", Between(text, "<script type=\"application/json\" id=\"bands\">", "</script>"));
    }

    [Fact]
    public void TitleAndDescription_WithMarkup_AreEscaped()
    {
        const string Odd = "Bars <1.5 in> & \"hole 2\" </title>";
        string text = (Page with { Title = Odd, Description = Odd }).Text;
        Assert.Equal(Odd, WebUtility.HtmlDecode(Between(text, "<title>", "</title>")));
        Assert.Equal(Odd, WebUtility.HtmlDecode(Between(text, "name=\"description\" content=\"", "\">")));
        Assert.DoesNotContain("<1.5", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_OfAPage_AsksForNothing()
    {
        string text = Page.Text;
        Assert.StartsWith("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n", text, StringComparison.Ordinal);
        Assert.Equal(["data:,"], Regex.Matches(text, "(?:href|src)=\"([^\"]*)\"").Select(match => match.Groups[1].Value));
        Assert.DoesNotContain('\r', text);
    }
}
