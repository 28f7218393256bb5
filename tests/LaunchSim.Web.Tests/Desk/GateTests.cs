using System.Net;
using System.Net.WebSockets;
using System.Text;

namespace LaunchSim.Web.Tests.Desk;

public class GateTests
{
    [Theory]
    [InlineData("evil.example")]
    [InlineData("127.0.0.1")]
    [InlineData("127.0.0.1:1")]
    [InlineData("localhost.evil.example:{port}")]
    [InlineData("127.0.0.1.nip.io:{port}")]
    [InlineData("127.0.0.2:{port}")]
    [InlineData("[::ffff:127.0.0.1]:{port}")]
    [InlineData("user@127.0.0.1:{port}")]
    public async Task Request_UnderAnotherHost_IsRefused(string name)
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        string answer = await host.RawAsync(Encoding.ASCII.GetBytes(
            $"GET /?token={host.Token} HTTP/1.1\r\nHost: {name.Replace("{port}", $"{host.Server.Port}", StringComparison.Ordinal)}\r\nConnection: close\r\n\r\n"));
        Assert.Matches("^HTTP/1.1 40[03] ", answer);
        Assert.DoesNotContain("<html", answer, StringComparison.Ordinal);
        Assert.Contains("desk: refused 40", host.Log, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("127.0.0.1")]
    [InlineData("localhost")]
    [InlineData("LOCALHOST")]
    [InlineData("[::1]")]
    public async Task Request_UnderAnOwnHost_IsAnswered(string name)
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        string answer = await host.RawAsync(Encoding.ASCII.GetBytes($"GET /?token={host.Token} HTTP/1.1\r\nHost: {name}:{host.Server.Port}\r\nConnection: close\r\n\r\n"));
        Assert.StartsWith("HTTP/1.1 200 ", answer, StringComparison.Ordinal);
        Assert.Contains("Door car, as measured", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Request_WithTwoHosts_IsRefused()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        string own = $"127.0.0.1:{host.Server.Port}";
        string answer = await host.RawAsync(Encoding.ASCII.GetBytes($"GET /?token={host.Token} HTTP/1.1\r\nHost: {own}\r\nHost: evil.example\r\nConnection: close\r\n\r\n"));
        Assert.Matches("^HTTP/1.1 40[03] ", answer);
        answer = await host.RawAsync(Encoding.ASCII.GetBytes($"GET http://evil.example/?token={host.Token} HTTP/1.1\r\nHost: {own}\r\nConnection: close\r\n\r\n"));
        Assert.Matches("^HTTP/1.1 40[03] ", answer);
    }

    [Theory]
    [InlineData("http://evil.example")]
    [InlineData("null")]
    [InlineData("https://127.0.0.1:{port}")]
    [InlineData("http://127.0.0.1:1")]
    [InlineData("http://localhost:{port}")]
    [InlineData("http://127.0.0.1:{port}.evil.example")]
    public async Task Request_FromAnotherOrigin_IsRefused(string origin)
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        origin = origin.Replace("{port}", $"{host.Server.Port}", StringComparison.Ordinal);
        using var request = new HttpRequestMessage(HttpMethod.Get, $"/?token={host.Token}");
        request.Headers.Add("Origin", origin);
        using HttpResponseMessage page = await host.Http.SendAsync(request);
        Assert.Equal(HttpStatusCode.Forbidden, page.StatusCode);

        using HttpResponseMessage save = await host.SendAsync("/save", one =>
        {
            one.Headers.Remove("Origin");
            one.Headers.Add("Origin", origin);
        });
        Assert.Equal(HttpStatusCode.Forbidden, save.StatusCode);
        WebSocketException socket = await Assert.ThrowsAsync<WebSocketException>(() => SocketAsync(host, origin, host.Token));
        Assert.Contains("403", socket.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Socket_WithoutOriginOrToken_IsRefused()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await RefusedAsync(null, host.Token);
        await RefusedAsync(host.Origin, "");
        await RefusedAsync(host.Origin, host.Token[..^1]);
        await RefusedAsync(host.Origin, host.Token + "x");
        await SocketAsync(host, host.Origin, host.Token);

        async Task RefusedAsync(string? origin, string token)
        {
            WebSocketException refused = await Assert.ThrowsAsync<WebSocketException>(() => SocketAsync(host, origin, token));
            Assert.Contains("403", refused.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Page_WithoutOrWithAWrongToken_IsRefused()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        foreach (string path in new[] { "/", "/?token=", "/?token=wrong", $"/?token={host.Token}&token={host.Token}", "/desk?file=door-car.yaml", $"/desk?file=door-car.yaml&token={host.Token.ToLowerInvariant()}x" })
        {
            using HttpResponseMessage page = await host.GetAsync(path);
            Assert.Equal(HttpStatusCode.Forbidden, page.StatusCode);
            Assert.DoesNotContain("Door car", await page.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }

        Assert.DoesNotContain(host.Token, host.Log, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Post_WithoutTokenOrFromElsewhere_IsRefused()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await RefusedAsync(one => one.Headers.Remove("Desk-Token"));
        await RefusedAsync(one =>
        {
            one.Headers.Remove("Desk-Token");
            one.Headers.Add("Desk-Token", "wrong");
        });
        await RefusedAsync(one => one.Headers.Add("Sec-Fetch-Site", "cross-site"));
        await RefusedAsync(one => one.Headers.Add("Sec-Fetch-Site", "same-site"));
        await RefusedAsync(one =>
        {
            one.Headers.Remove("Origin");
            one.Headers.Add("Sec-Fetch-Site", "same-origin");
        });

        // What is no browser says nothing of where it comes from, and has the token: it gets as far as its empty body.
        using HttpResponseMessage tool = await host.SendAsync("/save", one => one.Headers.Remove("Origin"));
        Assert.Equal(HttpStatusCode.BadRequest, tool.StatusCode);
        using HttpResponseMessage browser = await host.SendAsync("/save", one => one.Headers.Add("Sec-Fetch-Site", "same-origin"));
        Assert.Equal(HttpStatusCode.BadRequest, browser.StatusCode);

        async Task RefusedAsync(Action<HttpRequestMessage> change)
        {
            using HttpResponseMessage response = await host.SendAsync("/save", change);
            Assert.Equal(HttpStatusCode.Forbidden, response.StatusCode);
        }
    }

    [Theory]
    [InlineData("POST", "/", 405, "GET, HEAD")]
    [InlineData("DELETE", "/desk", 405, "GET, HEAD")]
    [InlineData("OPTIONS", "/save", 405, "POST")]
    [InlineData("GET", "/save", 405, "POST")]
    [InlineData("GET", "/page", 405, "POST")]
    [InlineData("HEAD", "/live", 405, "GET")]
    [InlineData("TRACE", "/", 405, "GET, HEAD")]
    [InlineData("GET", "/etc/passwd", 404, null)]
    [InlineData("GET", "/Desk", 404, null)]
    [InlineData("GET", "/desk/", 404, null)]
    [InlineData("GET", "/../../etc/passwd", 404, null)]
    [InlineData("GET", "/%2e%2e/%2e%2e/etc/passwd", 404, null)]
    [InlineData("GET", "/door-car.yaml", 404, null)]
    public async Task Request_OfAnotherKind_IsRefusedByItsStatus(string method, string path, int status, string? allow)
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        string answer = await host.RawAsync(Encoding.ASCII.GetBytes($"{method} {path}?token={host.Token} HTTP/1.1\r\nHost: 127.0.0.1:{host.Server.Port}\r\nContent-Length: 0\r\nConnection: close\r\n\r\n"));
        Assert.StartsWith($"HTTP/1.1 {status} ", answer, StringComparison.Ordinal);
        if (allow is not null)
        {
            Assert.Contains($"Allow: {allow}\r\n", answer, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Live_AskedWithoutASocket_IsRefused()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, $"/live?file=door-car.yaml&token={host.Token}");
        request.Headers.Add("Origin", host.Origin);
        using HttpResponseMessage response = await host.Http.SendAsync(request);
        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }

    [Fact]
    public async Task Body_TooLargeUnmeasuredOrOfAnotherType_IsRefused()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        using HttpResponseMessage large = await host.SendAsync("/save", one => one.Content = new StringContent(new string(' ', (64 << 10) + 1), Encoding.UTF8, "application/json"));
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, large.StatusCode);
        Assert.Contains("found a body of", LiveClient.Error(await DeskHost.JsonAsync(large)), StringComparison.Ordinal);
        using HttpResponseMessage chunked = await host.SendAsync("/save", one => one.Headers.TransferEncodingChunked = true);
        Assert.Equal(HttpStatusCode.LengthRequired, chunked.StatusCode);
        using HttpResponseMessage form = await host.SendAsync("/save", one => one.Content = new StringContent("{}", Encoding.UTF8, "text/plain"));
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, form.StatusCode);
        string get = await host.RawAsync(Encoding.ASCII.GetBytes($"GET /?token={host.Token} HTTP/1.1\r\nHost: 127.0.0.1:{host.Server.Port}\r\nContent-Length: 3\r\n\r\nabc"));
        Assert.StartsWith("HTTP/1.1 400 ", get, StringComparison.Ordinal);
        Assert.Contains("Connection: close", get, StringComparison.Ordinal);

        // Just what is allowed is read, and found to be no object with a file.
        using HttpResponseMessage full = await host.SendAsync("/save", one => one.Content = new StringContent("{}" + new string(' ', (64 << 10) - 2), Encoding.UTF8, "application/json"));
        Assert.Equal(HttpStatusCode.BadRequest, full.StatusCode);
    }

    [Theory]
    [InlineData("")]
    [InlineData("nothing")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{\"file\": 1}")]
    [InlineData("{\"file\": \"door-car.yaml\", \"file\": \"door-car.yaml\"}")]
    [InlineData("{\"file\": \"\\ud800\"}")]
    [InlineData("{\"file\": \"door-car.yaml\", \"as\": \"a.yaml\", \"name\": \"A\", \"edits\": {}}")]
    [InlineData("{\"file\": \"door-car.yaml\", \"as\": \"a.yaml\", \"name\": \"A\", \"edits\": [1]}")]
    [InlineData("{\"file\": \"door-car.yaml\", \"as\": \"a.yaml\", \"name\": \"A\", \"edits\": [{\"path\": \"rear.spring.rate\"}]}")]
    [InlineData("{\"file\": \"door-car.yaml\", \"as\": [[[[[[[[]]]]]]]]}")]
    public async Task Body_Malformed_IsRefusedInWords(string body)
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        using HttpResponseMessage response = await host.SendAsync("/save", one => one.Content = new StringContent(body, Encoding.UTF8, "application/json"));
        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.StartsWith("found ", LiveClient.Error(await DeskHost.JsonAsync(response)), StringComparison.Ordinal);
        Assert.Equal(["door-car.yaml"], Directory.EnumerateFileSystemEntries(host.Folder).Select(Path.GetFileName));
    }

    [Fact]
    public async Task Answers_OfEveryKind_CarryTheHeadersThatKeepOthersOut()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        foreach (string path in new[] { $"/?token={host.Token}", $"/desk?file=door-car.yaml&token={host.Token}", "/", "/nothing" })
        {
            using HttpResponseMessage response = await host.GetAsync(path);
            Assert.Equal("nosniff", One("X-Content-Type-Options"));
            Assert.Equal("no-referrer", One("Referrer-Policy"));
            Assert.Equal("no-store", One("Cache-Control"));
            Assert.Equal("same-origin", One("Cross-Origin-Opener-Policy"));
            Assert.Equal("same-origin", One("Cross-Origin-Resource-Policy"));
            string policy = One("Content-Security-Policy");
            Assert.StartsWith("default-src 'none'", policy, StringComparison.Ordinal);
            Assert.EndsWith("frame-ancestors 'none'", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
            Assert.False(response.Headers.Contains("Access-Control-Allow-Origin"));
            Assert.False(response.Headers.Contains("Server"));

            string One(string name) => Assert.Single(response.Headers.GetValues(name));
        }
    }

    private static async Task SocketAsync(DeskHost host, string? origin, string token)
    {
        using var socket = new ClientWebSocket();
        if (origin is not null)
        {
            socket.Options.SetRequestHeader("Origin", origin);
        }

        await socket.ConnectAsync(new Uri($"ws://127.0.0.1:{host.Server.Port}/live?file=door-car.yaml&token={token}"), CancellationToken.None);
        socket.Abort();
    }
}
