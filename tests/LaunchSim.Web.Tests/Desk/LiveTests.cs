using System.Net.WebSockets;
using System.Text.Json;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Next;
using LaunchSim.Web.Desk;

namespace LaunchSim.Web.Tests.Desk;

public class LiveTests
{
    [Theory]
    [MemberData(nameof(Shipped.Names), MemberType = typeof(Shipped))]
    public async Task Solve_OfAShippedScenario_IsTheLaunchThatRunGives(string name)
    {
        await using DeskHost host = await DeskHost.OpenAllAsync();
        await using LiveClient client = await host.ConnectAsync(name + ".yaml");
        JsonElement file = await client.NextAsync("file");
        Assert.True(file.GetProperty("present").GetBoolean());
        Assert.NotEmpty(file.GetProperty("controls").EnumerateArray());
        long number = await client.SolveAsync();
        JsonElement told = await client.NextAsync("launch", "refused");
        Assert.Equal("launch", LiveClient.Kind(told));
        Assert.Equal(number, LiveClient.Number(told));
        JsonElement launch = told.GetProperty("document").GetProperty("launches")[0];
        LaunchOutcome own = Shipped.Run(name);
        Assert.Equal(own.Scenario.ContentHash, launch.GetProperty("hash").GetString());
        Assert.Equal(
            Summary.Of(own.Figures, new Readout(own.Scenario.UnitSystem)).Select(sentence => sentence.Text), launch.GetProperty("sentences").EnumerateArray().Select(one => one.GetProperty("text").GetString()!));
        Assert.Equal(name + ".yaml", launch.GetProperty("file").GetString());
    }

    [Fact]
    public async Task Solve_WithEveryControlMoved_IsTheLaunchOfThatSetUp()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        (string, string)[] edits =
        [
            ("rear.linkage.upper.body.use", "3"), ("rear.damper.extension.set", "9"), ("rear.tire.pressure.set", "15 psi"), ("car.ride_height.rear", "0.5 in"),
            ("car.ride_height.front", "-0.25 in"), ("rear.spring.rate", "165 lb/in"), ("front.spring.rate", "140 lb/in"), ("car.ballast[0].mass", "75 lb"),
        ];
        await client.SolveAsync(edits);
        JsonElement launch = (await client.NextAsync("launch")).GetProperty("document").GetProperty("launches")[0];
        Assert.Equal(Shipped.Read("door-car", edits).ContentHash, launch.GetProperty("hash").GetString());
    }

    [Theory]
    [InlineData("rear.spring.rate", "150 psi")]
    [InlineData("rear.spring.rate", "-5 lb/in")]
    [InlineData("rear.spring.rate", "")]
    [InlineData("rear.spring.rate", "150 lb/in ±5 lb/in")]
    [InlineData("rear.spring.rate", "100 to 200 by 1 lb/in")]
    [InlineData("rear.spring.rate", "130 150 lb/in")]
    [InlineData("rear.linkage.upper.body.use", "9")]
    [InlineData("rear.linkage.upper.body.use", "all")]
    [InlineData("rear.damper.extension.set", "13")]
    [InlineData("rear.damper.extension.set", "{a: b}")]
    [InlineData("rear.wheelie_bar.rate", "800 lb/in")]
    [InlineData("run.duration", "60 s")]
    [InlineData("base", "/etc/passwd")]
    [InlineData("name", "x")]
    [InlineData("car.ballast[1].mass", "5 lb")]
    [InlineData("rear.spring.rate\u001b[31m", "1 lb/in")]
    public async Task Solve_OfWhatCannotBe_IsRefusedWithTheReason(string path, string value)
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        long number = await client.SolveAsync((path, value));
        JsonElement refused = await client.NextAsync("refused", "launch");
        Assert.Equal("refused", LiveClient.Kind(refused));
        Assert.Equal(number, LiveClient.Number(refused));
        Assert.StartsWith("found ", LiveClient.Error(refused), StringComparison.Ordinal);
        await client.SolveAsync();
        Assert.Equal("launch", LiveClient.Kind(await client.NextAsync("refused", "launch")));
    }

    [Fact]
    public async Task Solve_OfACarThatCannotStand_IsRefusedWithTheReason()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        await client.SolveAsync(("car.ride_height.rear", "5.875 in"));
        JsonElement refused = await client.NextAsync("refused", "launch");
        Assert.Equal("refused", LiveClient.Kind(refused));
        Assert.StartsWith("found that ", LiveClient.Error(refused), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pin_ThenSolve_HoldsTheOneAgainstTheOther()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        await client.SolveAsync();
        Assert.False((await client.NextAsync("launch")).TryGetProperty("compared", out _));
        await client.AskAsync("pin");
        JsonElement pinned = await client.NextAsync("pinned");
        Assert.Equal(Shipped.Read("door-car").ContentHash, pinned.GetProperty("document").GetProperty("launches")[0].GetProperty("hash").GetString());
        await client.SolveAsync(("rear.linkage.upper.body.use", "3"));
        JsonElement launch = await client.NextAsync("launch");
        string verdict = launch.GetProperty("compared")[0].GetString()!;
        Assert.StartsWith("For both ends coming up in step, this set-up is worse than the pinned set-up, ", verdict, StringComparison.Ordinal);
        Assert.True(launch.GetProperty("compared").GetArrayLength() > 1);
        Assert.Equal(launch.GetProperty("aims").GetArrayLength(), launch.GetProperty("aims").EnumerateArray().Count(aim => aim.TryGetProperty("verdict", out _)));
        await client.SolveAsync();
        Assert.Equal("This set-up says the same as the pinned set-up: nothing differs.", (await client.NextAsync("launch")).GetProperty("compared")[0].GetString());
        await client.SendAsync(new { ask = "pin", number = 1000, edits = (object?)null });
        Assert.Equal(JsonValueKind.Null, (await client.NextAsync("pinned")).GetProperty("document").ValueKind);
        await client.SendAsync(new { ask = "solve", number = 1001, edits = Array.Empty<object>() });
        Assert.False((await client.NextAsync("launch")).TryGetProperty("compared", out _));
    }

    [Fact]
    public async Task Solve_InAFlood_AnswersInOrderAndTheLastOne()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        long last = 0;
        for (int i = 0; i < 1000; i++)
        {
            last = await client.SolveAsync(("rear.spring.rate", $"{120 + (i % 80)} lb/in"));
        }

        long before = 0;
        int answers = 0;
        JsonElement told;
        do
        {
            told = await client.NextAsync("launch", "refused");
            Assert.Equal("launch", LiveClient.Kind(told));
            Assert.True(LiveClient.Number(told) > before, $"{LiveClient.Number(told)} after {before}");
            before = LiveClient.Number(told);
            answers++;
        }
        while (before < last);

        // The newest is what was asked for last, and most of the others were passed over.
        Assert.Equal(Shipped.Read("door-car", ("rear.spring.rate", $"{120 + (999 % 80)} lb/in")).ContentHash, told.GetProperty("document").GetProperty("launches")[0].GetProperty("hash").GetString());
        Assert.InRange(answers, 1, 900);
        await Task.Delay(300);
        Assert.DoesNotContain("launch", client.Drain().Select(LiveClient.Kind));
    }

    [Fact]
    public async Task Next_OfTheDoorCar_SaysWhatTheCommandSaysWithItsEdits()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        long number = await client.AskAsync("next");
        JsonElement first = await client.NextAsync("progress");
        Assert.Equal(number, LiveClient.Number(first));
        Assert.Equal((0, false), (first.GetProperty("done").GetInt32(), first.GetProperty("waiting").GetBoolean()));
        JsonElement next = await client.NextAsync("next");
        Assert.Equal(number, LiveClient.Number(next));

        Scenario scenario = Shipped.Read("door-car");
        var readout = new Readout(scenario.UnitSystem);
        NextResult own = NextStudy.Run(scenario, VariationReader.OfChoices(scenario), false, AimSet.Of(scenario.Aims, null, out _)!, GridPlan.Tolerance, 2, null, CancellationToken.None);
        Assert.Equal(NextWords.Conclusion(own, scenario, readout), next.GetProperty("conclusion").GetString());
        Assert.Equal(own.Singles.Select(change => NextWords.Change(change, scenario)), next.GetProperty("singles").EnumerateArray().Select(row => row.GetProperty("words").GetString()!));
        JsonElement best = next.GetProperty("singles")[0];
        Assert.Equal(NextWords.Gain(own.Score, own.Singles[0].Score), best.GetProperty("gain").GetString());
        Assert.Equal(next.GetProperty("aims").GetArrayLength(), best.GetProperty("cells").GetArrayLength());

        // Tried by a click, the row's edits give the launch that was ranked.
        JsonElement edit = best.GetProperty("edits")[0];
        await client.SolveAsync((edit.GetProperty("path").GetString()!, edit.GetProperty("value").GetString()!));
        Assert.Equal(own.Singles[0].Scenario!.ContentHash, (await client.NextAsync("launch")).GetProperty("document").GetProperty("launches")[0].GetProperty("hash").GetString());
    }

    [Fact]
    public async Task Doubt_OfFewCars_TellsBandsAndShares()
    {
        await using DeskHost host = await DeskHost.OpenAsync("sixty-percent");
        await using LiveClient client = await host.ConnectAsync("sixty-percent.yaml");
        await client.SendAsync(new { ask = "doubt", number = 1, edits = Array.Empty<object>(), cars = 50 });
        JsonElement doubt = (await client.NextAsync("doubt")).GetProperty("doubt");
        Assert.NotEmpty(doubt.GetProperty("conclusion").GetString()!);
        Assert.NotEmpty(doubt.GetProperty("bands").EnumerateObject());
    }

    [Fact]
    public async Task Study_Cancelled_EndsAndSaysSo()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        long number = await AskLongAsync(client, 1);
        await client.NextAsync("progress");
        await client.SendAsync(new { ask = "cancel" });
        Assert.Equal(number, LiveClient.Number(await client.NextAsync("cancelled", "doubt")));
        await DeskHost.UntilAsync(() => host.Server.Work.Studies == 0, "the study has ended");

        // A newer study takes the place of the one in work, and of one that waits.
        await AskLongAsync(client, 2);
        await client.NextAsync("progress");
        await AskLongAsync(client, 3);
        await client.SendAsync(new { ask = "next", number = 4, edits = Array.Empty<object>() });
        var cancelled = new List<long>();
        JsonElement told;
        while (LiveClient.Kind(told = await client.NextAsync("cancelled", "next")) == "cancelled")
        {
            cancelled.Add(LiveClient.Number(told));
        }

        Assert.Equal([2, 3], cancelled.Order());
        Assert.Equal(4, LiveClient.Number(told));
    }

    [Fact]
    public async Task Study_WhileAnotherDeskHasOne_WaitsAndIsToldSo()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient one = await host.ConnectAsync(), other = await host.ConnectAsync();
        await AskLongAsync(one, 1);
        await one.NextAsync("progress");
        await other.SendAsync(new { ask = "doubt", number = 1, edits = Array.Empty<object>(), cars = 50 });
        Assert.True((await other.NextAsync("progress")).GetProperty("waiting").GetBoolean());
        await one.SendAsync(new { ask = "cancel" });
        Assert.Equal("doubt", LiveClient.Kind(await other.NextAsync("doubt", "cancelled")));
    }

    [Fact]
    public async Task Study_OfAClosedBrowser_Ends()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        LiveClient client = await host.ConnectAsync();
        await AskLongAsync(client, 1);
        await client.NextAsync("progress");
        Assert.Equal((1, 1, 1), (host.Server.Work.Studies, host.Server.Sockets, host.Server.Files.Count));
        client.Vanish();
        await DeskHost.UntilAsync(() => host.Server is { Work.Studies: 0, Sockets: 0, Files.Count: 0 }, "study, socket and file are given back");
        await client.DisposeAsync();
    }

    [Fact]
    public async Task Solve_WhileAStudyRuns_IsAnswered()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        await AskLongAsync(client, 1);
        await client.NextAsync("progress");
        await client.SendAsync(new { ask = "solve", number = 2, edits = Array.Empty<object>() });
        Assert.Equal(2, LiveClient.Number(await client.NextAsync("launch")));
        Assert.Equal(1, host.Server.Work.Studies);
        await client.SendAsync(new { ask = "cancel" });
        await client.NextAsync("cancelled");
    }

    [Fact]
    public async Task Message_Malformed_IsRefusedAndTheDeskGoesOn()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        string[] malformed =
        [
            "", "nothing", "{", "[]", "{}", "{\"ask\": 1}", "{\"ask\": \"fly\"}", "{\"ask\": \"solve\"}", "{\"ask\": \"solve\", \"number\": 1}", "{\"ask\": \"solve\", \"number\": -1, \"edits\": []}",
            "{\"ask\": \"solve\", \"number\": 1.5, \"edits\": []}", "{\"ask\": \"solve\", \"number\": 1e400, \"edits\": []}", "{\"ask\": \"doubt\", \"number\": 1, \"edits\": [], \"cars\": 1000000}",
            "{\"ask\": \"solve\", \"number\": 1, \"edits\": [" + string.Join(',', Enumerable.Repeat("{\"path\": \"a\", \"value\": \"b\"}", 101)) + "]}",
        ];
        foreach (string text in malformed)
        {
            await client.SendTextAsync(text);
            JsonElement refused = await client.NextAsync("refused", "launch");
            Assert.StartsWith("found ", LiveClient.Error(refused), StringComparison.Ordinal);
            Assert.False(refused.TryGetProperty("number", out _));
        }

        await client.SendTextAsync("{\"ask\": \"solve\", \"number\": 7, \"edits\": []}");
        await client.NextAsync("launch");
        await client.SendTextAsync("{\"ask\": \"solve\", \"number\": 7, \"edits\": []}");
        Assert.Contains("numbers that rise", LiveClient.Error(await client.NextAsync("refused", "launch")), StringComparison.Ordinal);
        await client.SendTextAsync("{\"ask\": \"solve\", \"number\": 8, \"edits\": []}", WebSocketMessageType.Binary);
        Assert.Contains("binary", LiveClient.Error(await client.NextAsync("refused", "launch")), StringComparison.Ordinal);
        Assert.Contains("desk: refused a message: found no JSON", host.Log, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Messages_MalformedTooOften_CloseTheSocketWithAReason()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync(), other = await host.ConnectAsync();
        for (int i = 0; i < 40; i++)
        {
            try
            {
                await client.SendTextAsync("nonsense");
            }
            catch (WebSocketException)
            {
                break;
            }
        }

        await client.Closed.WaitAsync(TimeSpan.FromSeconds(30));
        Assert.Equal(WebSocketCloseStatus.PolicyViolation, client.CloseStatus);
        Assert.StartsWith("found 20 messages that are none", client.CloseReason, StringComparison.Ordinal);
        await other.SolveAsync();
        await other.NextAsync("launch");
    }

    [Fact]
    public async Task Message_TooLong_ClosesTheSocketWithAReason()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();

        // What is allowed is just taken.
        await client.SendTextAsync("{\"ask\": \"solve\", \"number\": 1, \"edits\": []}".PadRight(64 << 10));
        await client.NextAsync("launch");
        try
        {
            await client.SendTextAsync(new string('x', (64 << 10) + 1));
        }
        catch (WebSocketException)
        {
            // It may be closed before all was sent.
        }

        await client.Closed.WaitAsync(TimeSpan.FromSeconds(30));
        Assert.Equal(WebSocketCloseStatus.MessageTooBig, client.CloseStatus);
    }

    [Fact]
    public async Task Sockets_TooMany_AreRefusedUntilOneIsClosed()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        var clients = new List<LiveClient>();
        for (int i = 0; i < DeskLimits.Sockets; i++)
        {
            clients.Add(await host.ConnectAsync());
        }

        WebSocketException refused = await Assert.ThrowsAsync<WebSocketException>(() => host.ConnectAsync());
        Assert.Contains("429", refused.Message, StringComparison.Ordinal);
        await clients[0].DisposeAsync();
        await DeskHost.UntilAsync(() => host.Server.Sockets < DeskLimits.Sockets, "one is closed");
        await using (LiveClient again = await host.ConnectAsync())
        {
            await again.SolveAsync();
            await again.NextAsync("launch");
        }

        foreach (LiveClient client in clients)
        {
            await client.DisposeAsync();
        }

        await DeskHost.UntilAsync(() => host.Server is { Sockets: 0, Files.Count: 0 }, "all are closed");
    }

    [Fact]
    public async Task Client_ThatTakesNothing_IsGivenUp()
    {
        await using DeskHost host = await DeskHost.WithAsync(null, TimeSpan.FromMilliseconds(500), "door-car");
        using var socket = new System.Net.Sockets.Socket(System.Net.Sockets.AddressFamily.InterNetwork, System.Net.Sockets.SocketType.Stream, System.Net.Sockets.ProtocolType.Tcp) { ReceiveBufferSize = 4096 };
        await socket.ConnectAsync(System.Net.IPAddress.Loopback, host.Server.Port);
        await socket.SendAsync(System.Text.Encoding.ASCII.GetBytes(
            $"GET /live?file=door-car.yaml&token={host.Token} HTTP/1.1\r\nHost: 127.0.0.1:{host.Server.Port}\r\nOrigin: {host.Origin}\r\nConnection: Upgrade\r\nUpgrade: websocket\r\nSec-WebSocket-Version: 13\r\nSec-WebSocket-Key: AAAAAAAAAAAAAAAAAAAAAA==\r\n\r\n"));
        await DeskHost.UntilAsync(() => host.Server.Sockets == 1, "the socket is open");

        // Launches are asked for again and again, and nothing of the answers is ever read.
        try
        {
            for (int number = 1; number < 2000 && host.Server.Sockets == 1; number++)
            {
                await socket.SendAsync(Frame($"{{\"ask\": \"solve\", \"number\": {number}, \"edits\": []}}"));
                await Task.Delay(5);
            }
        }
        catch (System.Net.Sockets.SocketException)
        {
            // Given up.
        }

        await DeskHost.UntilAsync(() => host.Server is { Sockets: 0, Files.Count: 0 }, "it is given up");
        Assert.Contains("desk: refused to go on telling a client", host.Log, StringComparison.Ordinal);

        static byte[] Frame(string text)
        {
            byte[] payload = System.Text.Encoding.UTF8.GetBytes(text);
            return [0x81, (byte)(0x80 | payload.Length), 0, 0, 0, 0, .. payload];
        }
    }

    [Fact]
    public async Task Desk_Stopped_TellsItsClients()
    {
        DeskHost host = await DeskHost.OpenAsync();
        LiveClient client = await host.ConnectAsync();
        await client.NextAsync("file");
        await AskLongAsync(client, 1);
        await client.NextAsync("progress");
        var watch = System.Diagnostics.Stopwatch.StartNew();
        await host.DisposeAsync();
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 4.5);
        await client.Closed.WaitAsync(TimeSpan.FromSeconds(10));
        Assert.Equal(WebSocketCloseStatus.EndpointUnavailable, client.CloseStatus);
        Assert.Equal("the desk was stopped", client.CloseReason);
        await client.DisposeAsync();
    }

    /// <summary>A study that takes some seconds.</summary>
    private static async Task<long> AskLongAsync(LiveClient client, long number)
    {
        await client.SendAsync(new { ask = "doubt", number, edits = Array.Empty<object>(), cars = 2000 });
        return number;
    }
}
