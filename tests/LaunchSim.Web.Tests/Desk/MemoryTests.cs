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
    private const double Seconds = 20, Rate = 50;

    // What may come to stay of some thousand answers of four hundred kilobytes each: less than five of them.
    private const double MostGrowth = 2;

    [Fact]
    public async Task Changes_FiftyASecond_LeaveMemoryFlat()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        await MoveAsync(client, 4);
        double before = await SettledAsync();
        (int asked, int answered) = await MoveAsync(client, Seconds);
        double after = await SettledAsync();
        output.WriteLine($"{asked} changes, {answered} answers; managed memory {before:0.00} MB before, {after:0.00} MB after");
        Assert.InRange(after - before, double.NegativeInfinity, MostGrowth);
        Assert.InRange(answered, 20, asked);
        Assert.DoesNotContain("fault", host.Log, StringComparison.Ordinal);
    }

    private static async Task<(int Asked, int Answered)> MoveAsync(LiveClient client, double seconds)
    {
        int asked = 0, answered = 0;
        long before = 0, last = 0;
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

        while (before < last)
        {
            Take([await client.NextAsync("launch", "refused")]);
        }

        return (asked, answered);

        void Take(IReadOnlyList<JsonElement> told)
        {
            foreach (JsonElement one in told.Where(one => LiveClient.Kind(one) != "file"))
            {
                Assert.Equal("launch", LiveClient.Kind(one));
                Assert.True(LiveClient.Number(one) > before);
                before = LiveClient.Number(one);
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
