using System.Net;
using System.Text.RegularExpressions;

namespace LaunchSim.Web.Tests.Desk;

public partial class DeskPageTests
{
    [Fact]
    public async Task List_OfAFolder_TellsNameNotesAndStaticLineOrFirstError()
    {
        await using DeskHost host = await DeskHost.OpenAsync("door-car", "ladder-bar");
        host.Write("bad.yaml", "name: Bad <b>car</b>\ncar:\n  wheelbase: 105.5 furlongs\n");
        host.Write("part.yaml", "car: {wheelbase: 105.5 in}\n");
        host.Write("odd & <name>.yaml", File.ReadAllText(host.PathOf("door-car.yaml")).Replace("Door car, as measured", "\"<script>alert(1)</script>\"", StringComparison.Ordinal));
        using HttpResponseMessage response = await host.GetAsync($"/?token={host.Token}");
        string html = await response.Content.ReadAsStringAsync();
        string text = WebUtility.HtmlDecode(html);
        Assert.Contains("An invented car that shows every key.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Flat floor, driver aboard", text, StringComparison.Ordinal);
        Assert.Contains("141 %, instant centre 35.9 in ahead and 10.0 in up, lower bar climbs 4.0°, upper falls 11.8°", text, StringComparison.Ordinal);
        Assert.Matches(@"bad\.yaml:\d+:\d+: error: ", text);
        Assert.DoesNotContain("<script>alert", html, StringComparison.Ordinal);
        Assert.DoesNotContain(host.Folder, html, StringComparison.Ordinal);

        // Every link leads to a desk.
        List<string> links = [.. Link().Matches(html).Select(match => WebUtility.HtmlDecode(match.Groups[1].Value))];
        Assert.Equal(5, links.Count);
        foreach (string link in links)
        {
            using HttpResponseMessage desk = await host.GetAsync(link);
            Assert.Equal(HttpStatusCode.OK, desk.StatusCode);
        }
    }

    [Fact]
    public async Task List_OfAnEmptyFolder_SaysHowToBegin()
    {
        await using DeskHost host = await DeskHost.WithAsync(null, null);
        using HttpResponseMessage response = await host.GetAsync($"/?token={host.Token}");
        Assert.Contains("launchsim new", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task First_WithAFileNamed_IsItsDesk()
    {
        await using DeskHost host = await DeskHost.WithAsync("door-car.yaml", null, "door-car", "ladder-bar");
        using HttpResponseMessage response = await host.GetAsync($"/?token={host.Token}");
        string html = await response.Content.ReadAsStringAsync();
        Assert.Contains("<title>Door car, as measured", html, StringComparison.Ordinal);
        Assert.Contains("\"file\":\"door-car.yaml\"", html, StringComparison.Ordinal);
        Assert.Contains(host.Token, html, StringComparison.Ordinal);
        using var head = new HttpRequestMessage(HttpMethod.Head, $"/?token={host.Token}");
        using HttpResponseMessage empty = await host.Http.SendAsync(head);
        Assert.Equal((HttpStatusCode.OK, ""), (empty.StatusCode, await empty.Content.ReadAsStringAsync()));
    }

    [Fact]
    public async Task Desk_OfABadFile_ShowsItsErrorsAtTheirLines()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        host.Write("bad.yaml", File.ReadAllText(host.PathOf("door-car.yaml")).Replace("cg_height: 21 in", "cg_height: 21 <b>", StringComparison.Ordinal));
        using HttpResponseMessage response = await host.DeskAsync("bad.yaml");
        string html = await response.Content.ReadAsStringAsync();
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Contains("bad.yaml:10:", html, StringComparison.Ordinal);
        Assert.DoesNotContain("21 <b>", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_OfWhatWasMoved_IsOneFileToSend()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        object[] edits = [new { path = "rear.spring.rate", value = "175 lb/in" }];
        using HttpResponseMessage response = await host.PostAsync("/page", new { file = "door-car.yaml", edits, name = "Stiffer", pinned = Array.Empty<object>(), pinnedName = "As it was" });
        string html = await response.Content.ReadAsStringAsync();
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal("attachment; filename=\"door-car.html\"; filename*=UTF-8''door-car.html", Assert.Single(response.Content.Headers.GetValues("Content-Disposition")));
        Assert.Contains("<title>Stiffer and As it was", html, StringComparison.Ordinal);
        Assert.Contains(Shipped.Read("door-car", ("rear.spring.rate", "175 lb/in")).ContentHash, html, StringComparison.Ordinal);
        Assert.Contains(Shipped.Read("door-car").ContentHash, html, StringComparison.Ordinal);
        Assert.Contains("connect-src 'none'", html, StringComparison.Ordinal);

        // It goes to a friend: nothing of this machine is in it.
        Assert.DoesNotContain(host.Token, html, StringComparison.Ordinal);
        Assert.DoesNotContain(host.Folder, html, StringComparison.Ordinal);
        Assert.DoesNotContain($"{host.Server.Port}", html.Replace(Data().Match(html).Value, "", StringComparison.Ordinal), StringComparison.Ordinal);

        using HttpResponseMessage refused = await host.PostAsync("/page", new { file = "door-car.yaml", edits = new[] { new { path = "rear.spring.rate", value = "x" } } });
        Assert.Equal(HttpStatusCode.BadRequest, refused.StatusCode);
    }

    [GeneratedRegex("<a href=\"([^\"]*)\"")]
    private static partial Regex Link();

    [GeneratedRegex("<script type=\"application/json\".*?</script>", RegexOptions.Singleline)]
    private static partial Regex Data();
}
