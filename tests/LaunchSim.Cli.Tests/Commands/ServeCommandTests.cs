using System.Net;
using System.Net.Sockets;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

public class ServeCommandTests
{
    [Theory]
    [InlineData("--port", "0")]
    [InlineData("--port", "65536")]
    [InlineData("--port", "-1")]
    [InlineData("--port", "")]
    [InlineData("--port", "80 80")]
    [InlineData("--port", "٨٠")]
    [InlineData("no-such.yaml")]
    [InlineData("no/such/folder")]
    [InlineData("--json")]
    [InlineData("a.yaml", "b.yaml")]
    public void Serve_OfWhatIsNot_IsRefused(params string[] args) => Printed.By(["serve", .. args]).IsRefused();

    [Fact]
    public void Serve_AskedToEndBeforeItBegins_OpensNothing()
    {
        Printed printed = Printed.By(new CancellationToken(true), "serve", Files.DoorCar);
        Assert.Equal((ExitCode.Done, "ended before it began; nothing was opened\n", ""), (printed.Code, printed.Output, printed.Error));
    }

    [Fact]
    public void Serve_AtAPortThatIsTaken_IsRefused()
    {
        using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        socket.Bind(new IPEndPoint(IPAddress.Loopback, 0));
        socket.Listen();
        Printed printed = Printed.By("serve", Files.DoorCar, "--port", $"{((IPEndPoint)socket.LocalEndPoint!).Port}");
        printed.IsRefused();
        Assert.Contains("is taken by another program; leave --port out for a free one, or name another", printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Serve_OfALinkOutOfItsFolder_IsRefused()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var folder = new Folder();
        File.CreateSymbolicLink(folder.Path("link.yaml"), Files.DoorCar);
        Printed printed = Printed.By("serve", folder.Path("link.yaml"));
        printed.IsRefused();
        Assert.Contains("a link that leads out of the folder", printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Serve_UntilItIsEnded_AnswersAtTheAddressThatItPrints()
    {
        using var folder = new Folder();
        folder.Write("car.yaml", File.ReadAllText(Files.DoorCar));
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        TextWriter told = TextWriter.Synchronized(output);
        using var stop = new CancellationTokenSource();
        Task<int> running = Task.Run(() => App.Run(["serve", folder.At], new Session(told, TextWriter.Synchronized(error), stop.Token)));
        string[] lines = [];
        for (int i = 0; i < 300 && lines.Length < 4; i++)
        {
            await Task.Delay(100);
            lock (told)
            {
                lines = output.ToString().Split('\n');
            }
        }

        Assert.Matches("^http://127\\.0\\.0\\.1:[0-9]+/\\?token=[A-Za-z0-9_-]{43}$", lines[0]);
        Assert.Contains("from this machine only", lines[1], StringComparison.Ordinal);
        Assert.Contains("Ctrl-C", lines[2], StringComparison.Ordinal);
        using (var client = new HttpClient(new SocketsHttpHandler { UseProxy = false }))
        {
            string page = await client.GetStringAsync(new Uri(lines[0]));
            Assert.Contains("Door car, as measured", page, StringComparison.Ordinal);
        }

        await stop.CancelAsync();
        Assert.Equal(ExitCode.Done, await running.WaitAsync(TimeSpan.FromSeconds(30)));
        Assert.EndsWith("the desk is closed\n", error.ToString(), StringComparison.Ordinal);
    }
}
