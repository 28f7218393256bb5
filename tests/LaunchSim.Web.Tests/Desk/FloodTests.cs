using System.Net;
using System.Text;
using System.Text.Json;

namespace LaunchSim.Web.Tests.Desk;

public class FloodTests
{
    [Fact]
    public async Task Garbage_InThousands_LeavesAGoodClientAnswered()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        using var done = new CancellationTokenSource();
        int sent = 0;
        Task[] flood = [.. Enumerable.Range(0, 8).Select(seed => Task.Run(async () =>
        {
            var dice = new Random(seed);
            for (int i = 0; i < 500; i++)
            {
                await host.RawAsync(Garbage(dice, host), closes: true);
                Interlocked.Increment(ref sent);
            }
        }))];
        Task all = Task.WhenAll(flood);
        int answered = 0;
        while (!all.IsCompleted)
        {
            long number = await client.SolveAsync(("rear.spring.rate", $"{120 + (answered % 80)} lb/in"));
            JsonElement told = await client.NextAsync("launch", "refused");
            Assert.Equal(("launch", number), (LiveClient.Kind(told), LiveClient.Number(told)));
            answered++;
        }

        await all;
        Assert.Equal(4000, sent);
        Assert.True(answered >= 20, $"{answered} answers");
        using HttpResponseMessage page = await host.GetAsync($"/?token={host.Token}");
        Assert.Equal(HttpStatusCode.OK, page.StatusCode);

        // All of it is counted, little of it is told.
        Assert.InRange(host.Server.Log.Refusals, 1000, long.MaxValue);
        Assert.InRange(host.Log.Split('\n').Length, 2, 400);
        Assert.DoesNotContain(host.Log, c => char.IsControl(c) && c != '\n');
        Assert.DoesNotContain("fault of the program", host.Log, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bodies_InHundreds_AreRefusedAndLeaveNothingBehind()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        string large = new(' ', 200_000);
        var statuses = new List<int>();
        await Parallel.ForEachAsync(Enumerable.Range(0, 300), new ParallelOptions { MaxDegreeOfParallelism = 8 }, async (i, _) =>
        {
            string answer = await host.RawAsync(Encoding.ASCII.GetBytes(
                $"POST /save HTTP/1.1\r\nHost: 127.0.0.1:{host.Server.Port}\r\nOrigin: {host.Origin}\r\nDesk-Token: {host.Token}\r\nContent-Type: application/json\r\nContent-Length: {large.Length}\r\n\r\n{large}"));
            lock (statuses)
            {
                statuses.Add(answer.Length > 12 ? int.Parse(answer.AsSpan(9, 3)) : 0);
            }
        });

        // The connection may be cut off while the body is still on its way, before the answer is read.
        Assert.All(statuses, status => Assert.Contains(status, new[] { 413, 0 }));
        Assert.Contains(413, statuses);
        using HttpResponseMessage saved = await host.PostAsync("/save", new { file = "door-car.yaml", @as = "a.yaml", name = "A", edits = new[] { new { path = "rear.spring.rate", value = "160 lb/in" } } });
        Assert.Equal(HttpStatusCode.Created, saved.StatusCode);
        Assert.Equal(["a.yaml", "door-car.yaml"], Directory.EnumerateFileSystemEntries(host.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Body_ThatNeverComes_IsGivenUp()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        Task<string>[] slow = [.. Enumerable.Range(0, 12).Select(_ => host.RawAsync(Encoding.ASCII.GetBytes(
            $"POST /save HTTP/1.1\r\nHost: 127.0.0.1:{host.Server.Port}\r\nOrigin: {host.Origin}\r\nDesk-Token: {host.Token}\r\nContent-Type: application/json\r\nContent-Length: 1000\r\n\r\n{{")))];

        // None of them keeps another from being answered.
        using HttpResponseMessage saved = await host.PostAsync("/save", new { file = "door-car.yaml", @as = "a.yaml", name = "A", edits = new[] { new { path = "rear.spring.rate", value = "160 lb/in" } } });
        Assert.Equal(HttpStatusCode.Created, saved.StatusCode);
        foreach (string answer in await Task.WhenAll(slow))
        {
            Assert.Matches("^(HTTP/1.1 408 |$)", answer);
        }
    }

    [Fact]
    public async Task Connections_ThatSayNothing_DoNotKeepTheDeskFromItsClients()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        Task<string>[] silent = [.. Enumerable.Range(0, 200).Select(_ => host.RawAsync(Encoding.ASCII.GetBytes("GET / HTTP/1.1\r\nHost: ")))];
        await client.SolveAsync();
        await client.NextAsync("launch");
        await Task.WhenAll(silent);
        using HttpResponseMessage page = await host.GetAsync($"/?token={host.Token}");
        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
    }

    private static byte[] Garbage(Random dice, DeskHost host)
    {
        string own = $"127.0.0.1:{host.Server.Port}";
        return dice.Next(10) switch
        {
            0 => Noise(dice),
            1 => [.. Encoding.ASCII.GetBytes("GET "), .. Noise(dice), .. Encoding.ASCII.GetBytes(" HTTP/1.1\r\n\r\n")],
            2 => Encoding.ASCII.GetBytes($"GET /{new string('a', dice.Next(20_000))} HTTP/1.1\r\nHost: {own}\r\n\r\n"),
            3 => Encoding.ASCII.GetBytes($"GET / HTTP/1.1\r\nHost: {own}\r\n{string.Concat(Enumerable.Range(0, dice.Next(200)).Select(i => $"X-{i}: {new string('b', dice.Next(300))}\r\n"))}\r\n"),
            4 => Encoding.ASCII.GetBytes($"POST /save HTTP/1.1\r\nHost: {own}\r\nContent-Length: 99999999999999999999\r\n\r\n"),
            5 => Encoding.ASCII.GetBytes($"POST /save HTTP/1.1\r\nHost: {own}\r\nTransfer-Encoding: chunked\r\n\r\nZZ\r\n"),
            6 => Encoding.ASCII.GetBytes($"GET /live?file=../../etc/passwd&token={host.Token} HTTP/1.1\r\nHost: {own}\r\nOrigin: {host.Origin}\r\nConnection: Upgrade\r\nUpgrade: websocket\r\nSec-WebSocket-Version: 13\r\nSec-WebSocket-Key: x\r\n\r\n"),
            7 => Encoding.ASCII.GetBytes($"GET /?token={new string('%', dice.Next(100))} HTTP/1.1\r\nHost: {own}\r\n\r\n"),
            8 => Encoding.ASCII.GetBytes("PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n"),
            _ => Encoding.ASCII.GetBytes("GET / HTTP/1.1\r\nHost: evil.example\r\nConnection: close\r\n\r\n"),
        };
    }

    private static byte[] Noise(Random dice)
    {
        byte[] noise = new byte[dice.Next(1, 300)];
        dice.NextBytes(noise);
        return noise;
    }
}
