using LaunchSim.BrowserTests.Checks;

namespace LaunchSim.BrowserTests.Harness;

public class TimingsTests
{
    [Fact]
    public void Text_OfATwenty_NamesMedianAndTheNineteenth() =>
        Assert.Equal("median 10.0 ms, 95 % within 19.0 ms, longest 20.0 ms, of 20", Timings.Text([.. Enumerable.Range(1, 20).Reverse().Select(time => (double)time)]));

    [Fact]
    public void Text_OfOneOrNone_SaysSo()
    {
        Assert.Equal("3.5 ms", Timings.Text([3.5]));
        Assert.Equal("none measured", Timings.Text([]));
    }
}
