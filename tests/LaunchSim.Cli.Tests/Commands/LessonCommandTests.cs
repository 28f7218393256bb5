using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

public class LessonCommandTests
{
    [Fact]
    public void Lesson_WithoutAnything_IsOneFileThatAllowsOnlyItsOwn()
    {
        using var folder = new Folder();

        Printed printed = Printed.By("lesson", "--out", folder.Path("l.html"));

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Equal($"wrote {folder.Path("l.html")}\n", printed.Output);
        Assert.Equal(["l.html"], folder.Names());
        string page = File.ReadAllText(folder.Path("l.html"));
        Assert.StartsWith("<!DOCTYPE html>", page, StringComparison.Ordinal);
        Assert.Contains("default-src 'none'; script-src 'sha256-", page, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe-", page, StringComparison.Ordinal);
        Assert.DoesNotContain("http:", page.Replace("http://www.w3.org/2000/svg", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.InRange(new FileInfo(folder.Path("l.html")).Length, 100_000, 1_500_000);
        Assert.Contains("\"unitSystem\":\"shop\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Lesson_OnAnEarlierOneInOtherUnits_ReplacesIt()
    {
        using var folder = new Folder();
        Printed.By("lesson", "--out", folder.Path("l.html"));

        Printed again = Printed.By("lesson", "--units", "si", "--out", folder.Path("l.html"));

        Assert.Equal(ExitCode.Done, again.Code);
        Assert.Contains("replaced ", again.Output, StringComparison.Ordinal);
        Assert.Contains("\"unitSystem\":\"si\"", File.ReadAllText(folder.Path("l.html")), StringComparison.Ordinal);
    }

    /// <summary>The same launches give the same file to the last byte.</summary>
    [Fact]
    public void Lesson_MadeTwice_IsTheSame()
    {
        using var folder = new Folder();
        Printed.By("lesson", "--out", folder.Path("a.html"));
        Printed.By("lesson", "--out", folder.Path("b.html"));

        Assert.Equal(File.ReadAllText(folder.Path("a.html")), File.ReadAllText(folder.Path("b.html")));
    }

    [Fact]
    public void Lesson_WhatIsInTheWayOrNotAPage_IsRefused()
    {
        using var folder = new Folder();
        string foreign = folder.Write("foreign.html", "<!DOCTYPE html><title>somebody else's</title>");
        string car = folder.Write("car.yaml", File.ReadAllText(Files.DoorCar));

        Printed.By("lesson", "--out", foreign).IsRefused();
        Printed.By("lesson", "--out", folder.Path("l.htm")).IsRefused();
        Printed.By("lesson", "--out", car).IsRefused();
        Printed.By("lesson", "--out", folder.At).IsRefused();
        Printed.By("lesson", "--out", folder.Path("none/l.html")).IsRefused();
        Printed.By("lesson", "--out", "").IsRefused();
        Printed.By("lesson", "--units", "metric", "--out", folder.Path("l.html")).IsRefused();
        Printed.By("lesson", car).IsRefused();

        Assert.Equal(["car.yaml", "foreign.html"], folder.Names());
    }

    [Fact]
    public void Lesson_Interrupted_LeavesNothing()
    {
        using var folder = new Folder();

        Printed printed = Printed.By(new CancellationToken(canceled: true), "lesson", "--out", folder.Path("l.html"));

        Assert.Equal(ExitCode.Interrupted, printed.Code);
        Assert.Empty(folder.Names());
    }
}
