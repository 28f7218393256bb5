using LaunchSim.Web.Desk;

namespace LaunchSim.Web.Tests.Desk;

public class NewestWinsTests
{
    private static readonly TimeSpan Long = TimeSpan.FromSeconds(30);

    [Fact]
    public async Task Put_WhileWorkGoesOn_CancelsItAndPassesOverWhatWaits()
    {
        var begun = new List<string>();
        var entered = new SemaphoreSlim(0);
        using var box = new NewestWins<string>(
            async (ask, token) =>
            {
                begun.Add(ask);
                entered.Release();
                await Task.Delay(Timeout.Infinite, token);
            },
            TimeSpan.Zero, TimeSpan.Zero);
        using var stop = new CancellationTokenSource();
        Task running = box.RunAsync(stop.Token);
        Assert.Null(box.Put("first"));
        Assert.True(await entered.WaitAsync(Long));
        Assert.Null(box.Put("second"));
        Assert.True(await entered.WaitAsync(Long));
        Assert.Equal(1, box.Cancelled);
        await stop.CancelAsync();
        await running.WaitAsync(Long);
        Assert.Equal(["first", "second"], begun);
        Assert.Null(box.Put("third"));
        Assert.Equal("third", box.Put("fourth"));
        Assert.Equal("fourth", box.Clear());
        Assert.Null(box.Clear());
        Assert.Equal(2, box.Passed);
    }

    [Fact]
    public async Task Put_Within_TheGraceLetsWorkComeToItsEnd()
    {
        var finished = new List<int>();
        var entered = new SemaphoreSlim(0);
        var goOn = new SemaphoreSlim(0);
        using var box = new NewestWins<string>(
            async (ask, token) =>
            {
                entered.Release();
                await goOn.WaitAsync(token);
                lock (finished)
                {
                    finished.Add(int.Parse(ask));
                }
            },
            Long, Long);
        using var stop = new CancellationTokenSource();
        Task running = box.RunAsync(stop.Token);
        box.Put("1");
        Assert.True(await entered.WaitAsync(Long));
        box.Put("2");
        box.Put("3");
        goOn.Release(2);
        await DeskHost.UntilAsync(() => finished.Count == 2, "two are done");
        Assert.Equal([1, 3], finished);
        Assert.Equal((1, 0), (box.Passed, box.Cancelled));
        await stop.CancelAsync();
        await running.WaitAsync(Long);
    }

    [Fact]
    public async Task Put_AgainAndAgain_LetsWorkSlowerThanTheGraceBeFinishedNowAndThen()
    {
        int finished = 0;
        using var box = new NewestWins<string>(
            async (_, token) =>
            {
                await Task.Delay(60, token);
                Interlocked.Increment(ref finished);
            },
            TimeSpan.FromMilliseconds(5), TimeSpan.FromSeconds(20));
        using var stop = new CancellationTokenSource();
        Task running = box.RunAsync(stop.Token);
        for (int i = 0; i < 100; i++)
        {
            box.Put($"{i}");
            await Task.Delay(10);
        }

        await DeskHost.UntilAsync(() => finished > 2, "some are done");
        Assert.True(box.Cancelled > 0, "none was cancelled");
        await stop.CancelAsync();
        await running.WaitAsync(Long);
    }

    [Fact]
    public async Task Put_FromManyThreads_NeverLosesTheLast()
    {
        string? last = null;
        using var box = new NewestWins<string>((ask, _) =>
        {
            last = ask;
            return Task.CompletedTask;
        }, TimeSpan.Zero, TimeSpan.Zero);
        using var stop = new CancellationTokenSource();
        Task running = box.RunAsync(stop.Token);
        await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() =>
        {
            for (int i = 0; i < 20_000; i++)
            {
                if (i % 7 == 0)
                {
                    box.Clear();
                }

                box.Put("some");
            }
        })));
        box.Put("last");
        await DeskHost.UntilAsync(() => last == "last", "the last is done");
        await stop.CancelAsync();
        await running.WaitAsync(Long);
    }
}
