using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using LaunchSim.Web.Desk;

namespace LaunchSim.Web.Tests.Desk;

public class StartTests
{
    [Fact]
    public async Task Desk_OnceOpen_ListensOnLoopbackOnly()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        IPEndPoint[] listening = [.. IPGlobalProperties.GetIPGlobalProperties().GetActiveTcpListeners().Where(point => point.Port == host.Server.Port)];
        Assert.NotEmpty(listening);
        Assert.All(listening, point => Assert.True(IPAddress.IsLoopback(point.Address), $"{point}"));
        if (Socket.OSSupportsIPv6)
        {
            using var client = new HttpClient(new SocketsHttpHandler { UseProxy = false });
            using HttpResponseMessage page = await client.GetAsync(new Uri($"http://[::1]:{host.Server.Port}/?token={host.Token}"));
            Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        }
    }

    [Fact]
    public async Task Desk_AtAPortThatIsTaken_SaysWhatToDo()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        DeskException taken = await Assert.ThrowsAsync<DeskException>(() => DeskServer.StartAsync(new DeskSettings { Folder = host.Folder, Port = host.Server.Port, Log = TextWriter.Null, Program = "test" }));
        Assert.Equal($"port {host.Server.Port} is taken by another program; leave --port out for a free one, or name another", taken.Message);
    }

    [Fact]
    public async Task Desk_AtAPortThatWasUsedBefore_OpensAtOnce()
    {
        DeskHost host = await DeskHost.OpenAsync();
        int port = host.Server.Port;
        await using (LiveClient client = await host.ConnectAsync())
        {
            await client.SolveAsync();
            await client.NextAsync("launch");
            await host.DisposeAsync();
        }

        await using DeskServer again = await DeskServer.StartAsync(new DeskSettings { Folder = Shipped.Folder, Port = port, Log = TextWriter.Null, Program = "test" });
        Assert.Equal(port, again.Port);
    }

    [Fact]
    public async Task Desk_UnderVariablesOfTheWebServer_ObeysNone()
    {
        string[] names = ["ASPNETCORE_URLS", "DOTNET_URLS", "ASPNETCORE_HTTP_PORTS", "Kestrel__Endpoints__Other__Url", "URLS"];
        int other = FreePort();
        try
        {
            foreach (string name in names)
            {
                Environment.SetEnvironmentVariable(name, name.Contains("PORTS", StringComparison.Ordinal) ? $"{other}" : $"http://0.0.0.0:{other}");
            }

            await using DeskHost host = await DeskHost.OpenAsync();
            IPEndPoint[] listening = IPGlobalProperties.GetIPGlobalProperties().GetActiveTcpListeners();
            Assert.DoesNotContain(listening, point => point.Port == other);
            using HttpResponseMessage page = await host.GetAsync($"/?token={host.Token}");
            Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        }
        finally
        {
            foreach (string name in names)
            {
                Environment.SetEnvironmentVariable(name, null);
            }
        }
    }

    [Fact]
    public async Task Tokens_OfTwoDesks_AreNotTheSame()
    {
        await using DeskHost one = await DeskHost.OpenAsync(), other = await DeskHost.OpenAsync();
        Assert.Equal(43, one.Token.Length);
        Assert.NotEqual(one.Token, other.Token);
        using HttpResponseMessage page = await one.GetAsync($"/?token={other.Token}");
        Assert.Equal(HttpStatusCode.Forbidden, page.StatusCode);
    }

    private static int FreePort()
    {
        using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        socket.Bind(new IPEndPoint(IPAddress.Loopback, 0));
        return ((IPEndPoint)socket.LocalEndPoint!).Port;
    }
}
