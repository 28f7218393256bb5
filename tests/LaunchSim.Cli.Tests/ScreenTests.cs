using System.Globalization;
using System.Text.RegularExpressions;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests;

public class ScreenTests
{
    private static readonly string[] Commands = ["run", "geometry"];

    private static string OnTerminal(string command, string file, int width, bool colours = true)
    {
        using var output = new StringWriter { NewLine = "\n" };
        Assert.Equal(0, App.Run([command, file], new Session(output, TextWriter.Null, CancellationToken.None) { Screen = new Screen(true, width, colours) }));
        return output.ToString();
    }

    private static string Bare(string text) => Regex.Replace(text, "\u001b\\[[0-9;]*m", "");

    [Theory]
    [InlineData(80)]
    [InlineData(100)]
    [InlineData(160)]
    public void Command_OnATerminal_KeepsWithinItsWidthAndLosesNoNumber(int width)
    {
        foreach (string command in Commands)
        {
            foreach (string file in new[] { Files.DoorCar, Files.Test("ladder"), Files.Test("parallel") })
            {
                string text = Bare(OnTerminal(command, file, width));
                Assert.All(text.Split('\n'), line => Assert.InRange(new StringInfo(line).LengthInTextElements, 0, width));
                string[] numbers = [.. Regex.Matches(Printed.By(command, file).Output, @"-?\d+\.?\d*").Select(match => match.Value).Distinct()];
                Assert.All(numbers, number => Assert.Contains(number, text, StringComparison.Ordinal));
            }
        }
    }

    [Fact]
    public void Command_WithoutColours_SendsNone()
    {
        string text = OnTerminal("geometry", Files.DoorCar, 100, colours: false);

        Assert.DoesNotMatch("\u001b\\[[0-9;]*(3[0-7]|9[0-7]|38|4[0-7])m", text);
    }

    [Fact]
    public void Command_IntoAPipe_SendsPlainLines()
    {
        foreach (string command in Commands)
        {
            Assert.DoesNotContain('\u001b', Printed.By(command, Files.DoorCar).Output);
        }
    }

    [Theory]
    [InlineData(true, "xterm", "", 120, false, 0, false)]
    [InlineData(false, "dumb", "", 120, false, 0, false)]
    [InlineData(false, "xterm", "", 120, true, 120, true)]
    [InlineData(false, "xterm", "1", 120, true, 120, false)]
    [InlineData(false, "xterm", "", 0, true, 80, true)]
    [InlineData(false, "xterm", "", 30, true, 60, true)]
    public void Of_StreamAndEnvironment_DecideHowItIsRead(bool redirected, string term, string noColor, int columns, bool terminal, int width, bool colours)
    {
        var screen = Screen.Of(redirected, name => name == "TERM" ? term : name == "NO_COLOR" ? noColor : null, () => columns);

        Assert.Equal(terminal, screen.IsTerminal);
        Assert.Equal(colours, screen.HasColours);
        if (terminal)
        {
            Assert.Equal(width, screen.Width);
        }
    }

    [Fact]
    public void Table_TooWideForTheTerminal_BeginsEachPartWithItsKey()
    {
        TextTable table = new TextTable(false, true, true, true).Named("hole", "first one", "second one", "third one");
        table.Add("1", "111.11 in", "222.22 in", "333.33 in");

        string text = Bare(new Page(new Screen(true, 36, false)).Table(table).ToString());

        Assert.Equal(2, Regex.Count(text, "hole"));
        Assert.Contains("333.33 in", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Progress_OnATerminal_CountsEveryPieceAndClearsItself()
    {
        using var error = new StringWriter();
        var session = new Session(TextWriter.Null, error, CancellationToken.None) { ErrorScreen = new Screen(true, 80, true) };
        int calls = 0;

        session.WithProgress("launches", 3, done =>
        {
            for (calls = 0; calls < 3; calls++)
            {
                done();
            }
        });

        Assert.Equal(3, calls);
        Assert.Contains("launches", error.ToString(), StringComparison.Ordinal);
    }
}
