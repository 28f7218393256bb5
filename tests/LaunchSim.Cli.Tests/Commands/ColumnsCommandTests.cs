using LaunchSim.Cli.Terminal;
using Snapshooter.Xunit;

namespace LaunchSim.Cli.Tests.Commands;

public class ColumnsCommandTests
{
    private const string Log = """
        Recorder 7; session 3
        Time;Rear RH [mm];Shock FL;Oil [bar];DS rpm;Accel X (g);DS rpm
        0,00;118,1;40,2;4,1;0;0,01;0
        0,01;118,3;40,1;4,1;40;0,2;1
        0,02;119,8;41,9;4,2;390;1,1;2
        0,03;126,2;58,0;4,2;1900;1,4;3

        """;

    [Fact]
    public void Columns_EuropeanLog_PrintsTableAndMapping()
    {
        using var folder = new Folder();
        Printed printed = Printed.By("columns", folder.Write("log.csv", Log));

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Empty(printed.Error);
        Snapshot.Match(printed.Output.Replace(folder.At, "", StringComparison.Ordinal));
    }

    [Fact]
    public void Columns_Out_WritesAMappingThatPassReads()
    {
        using var folder = new Folder();
        (string log, string _) = PassLog.Write(folder);
        Printed printed = Printed.By("columns", log, "--out", folder.Path("proposed.yaml"));

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.DoesNotContain("quantity:", printed.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, Printed.By("pass", Files.DoorCar, log, "--mapping", folder.Path("proposed.yaml")).Code);

        // Nothing that is there is overwritten.
        Printed.By("columns", log, "--out", folder.Path("proposed.yaml")).IsRefused();
    }

    [Fact]
    public void Columns_BadInput_IsRefused()
    {
        using var folder = new Folder();
        Printed.By("columns", folder.Path("none.csv")).IsRefused();
        Printed.By("columns", folder.Write("empty.csv", "")).IsRefused();
        Printed.By("columns", folder.Write("words.csv", "a,b\nc,d\n")).IsRefused();
        Printed.By("columns", folder.Write("binary.csv", new byte[300])).IsRefused();
        Printed.By("columns", folder.Write("log.csv", Log), "--out", folder.Path("mapping.csv")).IsRefused();
        Printed.By("columns", folder.Write("log.csv", Log), "--out", "").IsRefused();
        Printed.By("columns", folder.Write("utf16.csv", System.Text.Encoding.Unicode.GetBytes(Log))).IsRefused();
        Assert.DoesNotContain(folder.Names(), name => name.StartsWith("mapping", StringComparison.Ordinal));
    }
}
