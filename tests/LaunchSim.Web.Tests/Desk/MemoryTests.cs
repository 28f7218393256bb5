using System.Diagnostics;
using System.Text.Json;
using Xunit.Abstractions;

namespace LaunchSim.Web.Tests.Desk;

/// <summary>What is measured of the whole process must not be measured beside other tests.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public class Alone
{
    public const string Name = "alone";
}

[Collection(Alone.Name)]
public class MemoryTests(ITestOutputHelper output)
{
    private const double Seconds = 5, Rate = 50;
    private const int Rounds = 4;

    // What may come to stay of hundreds of answers of four hundred kilobytes each: less than five of them.
    private const double MostGrowth = 2;

    // The web server hands back every ten seconds what its connections no longer need: here, what those of other tests left.
    private static readonly TimeSpan HandsBack = TimeSpan.FromSeconds(11);

    [Fact]
    public async Task Changes_FiftyASecond_LeaveMemoryFlat()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        _ = await MoveAsync(client, Seconds);
        double now = await SettledAsync(), last = double.PositiveInfinity;
        while (last - now > 0.5 * MostGrowth)
        {
            last = now;
            await Task.Delay(HandsBack);
            now = await SettledAsync();
        }

        // Buffers that are kept for the next message are in use from the first round on.
        var settled = new List<double>();
        for (int round = 0; round < Rounds; round++)
        {
            (int asked, int answered) = await MoveAsync(client, Seconds);
            settled.Add(await SettledAsync());
            output.WriteLine($"{asked} changes, {answered} answers; {settled[^1]:0.00} MB of managed memory afterwards");
            Assert.InRange(answered, 20, asked);
        }

        Assert.InRange(settled[^1] - settled[0], double.NegativeInfinity, MostGrowth);
        Assert.DoesNotContain("fault", host.Log, StringComparison.Ordinal);
    }

    private long _before;

    private async Task<(int Asked, int Answered)> MoveAsync(LiveClient client, double seconds)
    {
        int asked = 0, answered = 0;
        long last = 0;
        var watch = Stopwatch.StartNew();
        while (watch.Elapsed.TotalSeconds < seconds)
        {
            last = await client.SolveAsync(("rear.spring.rate", $"{100 + (asked % 100)} lb/in"), ("rear.linkage.upper.body.use", $"{1 + (asked % 3)}"));
            asked++;
            Take(client.Drain());
            double due = asked / Rate;
            if (due > watch.Elapsed.TotalSeconds)
            {
                await Task.Delay(TimeSpan.FromSeconds(due - watch.Elapsed.TotalSeconds));
            }
        }

        while (_before < last)
        {
            Take([await client.NextAsync("launch", "refused")]);
        }

        return (asked, answered);

        void Take(IReadOnlyList<JsonElement> told)
        {
            foreach (JsonElement one in told.Where(one => LiveClient.Kind(one) != "file"))
            {
                Assert.Equal("launch", LiveClient.Kind(one));
                Assert.True(LiveClient.Number(one) > _before);
                _before = LiveClient.Number(one);
                answered++;
            }
        }
    }

    /// <summary>Managed memory in use once it no longer falls: what other tests have left goes by and by.</summary>
    private static async Task<double> SettledAsync()
    {
        double last = double.PositiveInfinity;
        for (int i = 0; i < 40; i++)
        {
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Forced, blocking: true, compacting: true);
            GC.WaitForPendingFinalizers();
            double now = GC.GetTotalMemory(true) / 1e6;
            if (i > 3 && last - now < 0.05)
            {
                return now;
            }

            last = now;
            await Task.Delay(250);
        }

        return last;
    }
}
