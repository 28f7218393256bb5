using System.Text;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

public class MeasureCommandTests
{
    [Theory]
    [InlineData("")]
    [InlineData("--linkage ladder-bar --units si")]
    [InlineData("--paper a4")]
    public void Measure_Pdf_HasTwoPages(string options)
    {
        using var folder = new Folder();

        Printed printed = Printed.By([.. "measure".Split(' '), .. options.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--out", folder.Path("m.pdf")]);

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Contains("wrote ", printed.Output, StringComparison.Ordinal);
        Assert.Contains("/Count 2", Encoding.Latin1.GetString(File.ReadAllBytes(folder.Path("m.pdf"))), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("svg")]
    [InlineData("png")]
    public void Measure_Pictures_AreAFileAPage(string ending)
    {
        using var folder = new Folder();

        Printed printed = Printed.By("measure", "--out", folder.Path("m." + ending));
        Printed again = Printed.By("measure", "--out", folder.Path("m." + ending));

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Equal([$"m-1.{ending}", $"m-2.{ending}"], folder.Names());
        Assert.Equal(2, again.Output.Split('\n').Count(line => line.StartsWith("replaced ", StringComparison.Ordinal)));
    }

    [Fact]
    public void Measure_OnAnEarlierSheet_ReplacesIt()
    {
        using var folder = new Folder();
        Printed.By("measure", "--out", folder.Path("m.pdf"));

        Printed again = Printed.By("measure", "--linkage", "ladder-bar", "--out", folder.Path("m.pdf"));

        Assert.Equal(ExitCode.Done, again.Code);
        Assert.Contains("replaced ", again.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Measure_WhatIsInTheWay_IsRefused()
    {
        using var folder = new Folder();
        string foreign = folder.Write("foreign.pdf", "%PDF-1.4 somebody else's");
        folder.Write("m-2.svg", "<?xml version=\"1.0\"?><svg>somebody else's</svg>");

        Printed.By("measure", "--out", foreign).IsRefused();
        Printed.By("measure", "--out", folder.Path("m.svg")).IsRefused();
        Printed.By("measure", "--out", folder.Path("m.doc")).IsRefused();
        Printed.By("measure", "--out", folder.Path("m")).IsRefused();
        Printed.By("measure", "--out", folder.At).IsRefused();
        Printed.By("measure", "--out", folder.Path("no/m.pdf")).IsRefused();
        Printed.By("measure", "--out", "").IsRefused();
        Printed.By("measure", "--linkage", "leaf-spring", "--out", folder.Path("m.pdf")).IsRefused();
        Printed.By("measure", "--paper", "a3", "--out", folder.Path("m.pdf")).IsRefused();

        Assert.Equal(["foreign.pdf", "m-2.svg"], folder.Names());
    }
}
