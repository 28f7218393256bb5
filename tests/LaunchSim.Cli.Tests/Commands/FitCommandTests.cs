using System.Text.Json;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

public sealed class FitCommandTests
{
    private static readonly string Season = Path.Combine(Files.Root, "scenarios", "season");
    private static readonly string Car = Path.Combine(Season, "car.yaml");
    private static readonly string Seen = Path.Combine(Season, "05-hole-3.yaml");

    [Fact]
    public void Fit_APassThatWasOnlySeen_SaysWhatItTellsAndWhatItDoesNot()
    {
        Printed printed = Printed.By("fit", Car, Seen, "--starts", "1", "--json");
        Assert.True(printed.Code == ExitCode.Done, printed.Error);
        using var document = JsonDocument.Parse(printed.Output);
        JsonElement[] values = [.. document.RootElement.GetProperty("values").EnumerateArray()];
        Assert.Contains(values, value => value.GetProperty("path").GetString() == "driveline.torque" && value.GetProperty("told").GetBoolean());
        Assert.Contains(values, value => !value.GetProperty("told").GetBoolean());
        Assert.All(values.Where(value => !value.GetProperty("told").GetBoolean()), value => Assert.Equal(1, value.GetProperty("share_of_doubt_left").GetDouble()));
    }

    [Fact]
    public void Fit_WithOut_WritesAVariantThatIsReadAndNeverOverAnother()
    {
        using var folder = new Folder();
        string path = folder.Path("fitted.yaml");
        Printed printed = Printed.By("fit", Car, Seen, "--starts", "1", "--free", "driveline.torque", "--out", path);
        Assert.True(printed.Code == ExitCode.Done, printed.Error);
        Assert.Equal(ExitCode.Done, Printed.By("run", path, "--quiet").Code);
        string text = File.ReadAllText(path);
        Assert.Contains("driveline.torque: ", text, StringComparison.Ordinal);

        Printed again = Printed.By("fit", Car, Seen, "--starts", "1", "--free", "driveline.torque", "--out", path);
        again.IsRefused();
        Assert.Equal(text, File.ReadAllText(path));
    }

    [Theory]
    [InlineData("--free", "rear.tire.grp", "did you mean rear.tire.grip?")]
    [InlineData("--free", "name", "which has no doubt")]
    [InlineData("--starts", "0", "a whole number from 1 to 100")]
    [InlineData("--out", "", "needs a name")]
    [InlineData("--picture", "fit.txt", ".pdf, .svg or .png")]
    public void Fit_AnOptionThatCannotBe_IsRefused(string option, string value, string words)
    {
        Printed printed = Printed.By("fit", Car, Seen, option, value);
        printed.IsRefused();
        Assert.Contains(words, printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Fit_APassOfAnotherCar_IsRefusedWithWhatIsAllowed()
    {
        Printed printed = Printed.By("fit", Path.Combine(Files.Root, "scenarios", "ladder-bar.yaml"), Seen);
        printed.IsRefused();
        Assert.Contains("another car than the one to be fitted", printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Fit_PassesOfWhichNothingWasSeen_IsRefused()
    {
        using var folder = new Folder();
        string path = folder.Write("pass.yaml", $"car: {Car}\nseen: {{shake: hard}}\n");
        Printed printed = Printed.By("fit", Car, path);
        printed.IsRefused();
        Assert.Contains("nothing seen and nothing logged", printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Fit_AMarkThatTheLogCannotHave_IsRefusedWithItsPlace()
    {
        using var folder = new Folder();
        string path = folder.Write("pass.yaml", $"car: {Car}\nlogs:\n  - {{file: none.csv}}\nseen: {{rear_moves: 0.06 s}}\n");
        Printed printed = Printed.By("fit", Car, path);
        printed.IsRefused();
        Assert.Contains("none.csv", printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void After_APass_FitsOneScreen()
    {
        Printed printed = Printed.By("after", Seen);
        Assert.True(printed.Code == ExitCode.Done, printed.Error);
        Assert.InRange(printed.Output.Split('\n').Length, 10, 40);
        Assert.Contains("The one change", printed.Output, StringComparison.Ordinal);
        Assert.Contains("A launch can hurt people", printed.Output.Replace("a launch", "A launch", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void After_AsADocument_HasTheSameChange()
    {
        Printed text = Printed.By("after", Seen), json = Printed.By("after", Seen, "--json");
        using var document = JsonDocument.Parse(json.Output);
        string change = document.RootElement.GetProperty("change").GetProperty("words").GetString()!;
        Assert.Contains(change, text.Output, StringComparison.Ordinal);
        Assert.Equal(7, document.RootElement.GetProperty("seen").GetArrayLength());
    }

    [Theory]
    [InlineData("car: none.yaml\n", "none.yaml")]
    [InlineData("seen: {rear_moves: frame 12}\n", "car")]
    [InlineData("car: 5\nseen: [1, 2]\n", "seen")]
    public void After_WhatIsNoPass_IsRefused(string content, string words)
    {
        using var folder = new Folder();
        Printed printed = Printed.By("after", folder.Write("pass.yaml", content));
        printed.IsRefused();
        Assert.Contains(words, printed.Error, StringComparison.Ordinal);
    }
}
