using LaunchSim.Web.Desk;

namespace LaunchSim.Web.Tests.Desk;

public class DeskLogTests
{
    [Fact]
    public void Refused_OverAndOver_IsCountedInsteadOfTold()
    {
        using var text = new StringWriter { NewLine = "\n" };
        using (var log = new DeskLog(text, TimeSpan.FromMinutes(10)))
        {
            for (int i = 0; i < 5000; i++)
            {
                log.Refused("400: x");
            }

            log.Tell("y");
        }

        string[] lines = text.ToString().TrimEnd('\n').Split('\n');
        Assert.Equal(22, lines.Length);
        Assert.Equal(["desk: refused 400: x", "desk: y", "desk: refused 4,980 more in the last 600 s"], [lines[0], lines[20], lines[21]]);
    }

    [Fact]
    public async Task Refused_InTheNextWindow_IsToldAgain()
    {
        using var text = new StringWriter { NewLine = "\n" };
        TextWriter shared = TextWriter.Synchronized(text);
        using var log = new DeskLog(shared, TimeSpan.FromMilliseconds(50));
        for (int i = 0; i < 30; i++)
        {
            log.Refused("a");
        }

        await DeskHost.UntilAsync(() => Told().Contains("10 more", StringComparison.Ordinal), "the rest is told");
        log.Refused("b");
        Assert.Contains("refused b", Told(), StringComparison.Ordinal);
        Assert.Equal(31, log.Refusals);

        string Told()
        {
            lock (shared)
            {
                return text.ToString();
            }
        }
    }

    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("\u001b[31mred\r\nnext\0", "?[31mred??next?")]
    [InlineData("a\u202eb\u2028c", "a?b?c")]
    public void Plain_OfWhatATerminalWouldObey_IsHarmless(string text, string plain) => Assert.Equal(plain, DeskLog.Plain(text));

    [Fact]
    public void Plain_OfALongText_IsCut() => Assert.Equal(new string('x', 200) + "…", DeskLog.Plain(new string('x', 10_000)));
}
