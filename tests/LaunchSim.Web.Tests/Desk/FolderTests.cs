using System.Diagnostics;
using System.Net;
using System.Text.Json;

namespace LaunchSim.Web.Tests.Desk;

public class FolderTests
{
    private const string Secret = "name: Kept-from-view\n";

    [Theory]
    [InlineData("../outside/secret.yaml")]
    [InlineData("..%2Foutside%2Fsecret.yaml")]
    [InlineData("..\\outside\\secret.yaml")]
    [InlineData("./door-car.yaml")]
    [InlineData("sub/../door-car.yaml")]
    [InlineData("{outside}/secret.yaml")]
    [InlineData("//localhost/share/secret.yaml")]
    [InlineData("\\\\localhost\\share\\secret.yaml")]
    [InlineData("file:///{outside}/secret.yaml")]
    [InlineData("/etc/passwd")]
    [InlineData("door-car.yaml\0.yaml")]
    [InlineData("door-car.yaml:stream")]
    [InlineData("door-car.yaml ")]
    [InlineData("DOOR-CAR.YAML")]
    [InlineData("door-car")]
    [InlineData("")]
    [InlineData(".")]
    [InlineData(".hidden.yaml")]
    [InlineData("notes.txt")]
    [InlineData("sub/inner.yaml")]
    public async Task Name_OfAnythingButAScenarioOfTheFolder_IsNotFound(string name)
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        host.WriteOutside("secret.yaml", Secret);
        host.Write(".hidden.yaml", Secret);
        host.Write("notes.txt", Secret);
        Directory.CreateDirectory(host.PathOf("sub"));
        host.Write("sub/inner.yaml", Secret);
        name = name.Replace("{outside}", host.Outside, StringComparison.Ordinal);
        using HttpResponseMessage page = await host.DeskAsync(name);
        string text = await page.Content.ReadAsStringAsync();
        Assert.True(page.StatusCode is HttpStatusCode.NotFound or HttpStatusCode.BadRequest, $"{page.StatusCode}: {text}");
        Assert.DoesNotContain("Kept-from-view", text, StringComparison.Ordinal);
        Assert.NotNull(await Record.ExceptionAsync(() => LiveClient.OpenAsync(host, name)));
        using HttpResponseMessage save = await host.PostAsync("/save", new { file = name, @as = "new.yaml", name = "New", edits = Array.Empty<object>() });
        Assert.True(save.StatusCode is HttpStatusCode.NotFound or HttpStatusCode.BadRequest, $"{save.StatusCode}");
        Assert.False(File.Exists(host.PathOf("new.yaml")));
        Assert.Contains("desk: refused 40", host.Log, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Link_OutOfTheFolder_IsSaidAndNotFollowed()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        await using DeskHost host = await DeskHost.OpenAsync();
        string secret = host.WriteOutside("secret.yaml", Secret);
        File.CreateSymbolicLink(host.PathOf("link.yaml"), secret);
        Directory.CreateSymbolicLink(host.PathOf("way"), host.Outside);
        File.CreateSymbolicLink(host.PathOf("round.yaml"), host.PathOf("way/secret.yaml"));
        File.CreateSymbolicLink(host.PathOf("inside.yaml"), host.PathOf("door-car.yaml"));
        foreach (string name in new[] { "link.yaml", "round.yaml" })
        {
            string text = await TextAsync(host, name);
            Assert.DoesNotContain("Kept-from-view", text, StringComparison.Ordinal);
            Assert.Contains("a link that leads out of the folder", text, StringComparison.Ordinal);
        }

        Assert.Contains("Door car, as measured", await TextAsync(host, "inside.yaml"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../outside/secret.yaml")]
    [InlineData("{outside}/secret.yaml")]
    [InlineData("way/secret.yaml")]
    [InlineData("link.yaml")]
    [InlineData("/etc/hostname")]
    [InlineData("//localhost/share/secret.yaml")]
    [InlineData("../outside/nothing.yaml")]
    public async Task Base_OutsideTheFolder_IsRefusedAtItsLine(string name)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        await using DeskHost host = await DeskHost.OpenAsync();
        string secret = host.WriteOutside("secret.yaml", File.ReadAllText(host.PathOf("door-car.yaml")).Replace("Door car, as measured", "Kept-from-view", StringComparison.Ordinal));
        Directory.CreateSymbolicLink(host.PathOf("way"), host.Outside);
        File.CreateSymbolicLink(host.PathOf("link.yaml"), secret);
        host.Write("variant.yaml", $"name: Variant\nbase: {name.Replace("{outside}", host.Outside, StringComparison.Ordinal)}\nchange:\n  rear.spring.rate: 160 lb/in\n");
        await using LiveClient client = await host.ConnectAsync("variant.yaml");
        JsonElement file = await client.NextAsync("file");
        Assert.False(file.GetProperty("present").GetBoolean());
        JsonElement error = Assert.Single(file.GetProperty("errors").EnumerateArray());
        Assert.Equal(("variant.yaml", 2, 7), (error.GetProperty("file").GetString(), error.GetProperty("line").GetInt32(), error.GetProperty("column").GetInt32()));
        Assert.Matches("a file outside the folder|a link that leads out of the folder", LiveClient.Error(file));

        // Not even names of what lies there are guessed at.
        Assert.DoesNotContain("did you mean", LiveClient.Error(file), StringComparison.Ordinal);
        await client.SolveAsync();
        JsonElement refused = await client.NextAsync("refused", "launch");
        Assert.Equal("refused", LiveClient.Kind(refused));
        Assert.DoesNotContain("Kept-from-view", await TextAsync(host, "variant.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Base_InAFolderWithin_IsRead()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        Directory.CreateDirectory(host.PathOf("cars"));
        File.Move(host.PathOf("door-car.yaml"), host.PathOf("cars/door-car.yaml"));
        host.Write("variant.yaml", "name: Variant\nbase: cars/../cars/door-car.yaml\nchange:\n  rear.spring.rate: 160 lb/in\n");
        await using LiveClient client = await host.ConnectAsync("variant.yaml");
        Assert.True((await client.NextAsync("file")).GetProperty("present").GetBoolean());
    }

    [Fact]
    public async Task Pipe_NamedLikeAScenario_IsNotWaitedFor()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        await using DeskHost host = await DeskHost.OpenAsync();
        using (Process make = Process.Start("mkfifo", host.PathOf("pipe.yaml")))
        {
            await make.WaitForExitAsync();
            Assert.Equal(0, make.ExitCode);
        }

        host.Write("empty.yaml", "");
        File.CreateSymbolicLink(host.PathOf("zero.yaml"), "/dev/zero");
        foreach (string name in new[] { "pipe.yaml", "empty.yaml", "zero.yaml" })
        {
            Assert.Matches("none that can be read to its end|a link that leads out of the folder", await TextAsync(host, name).WaitAsync(TimeSpan.FromSeconds(20)));
        }

        using HttpResponseMessage list = await host.GetAsync($"/?token={host.Token}");
        Assert.Equal(HttpStatusCode.OK, list.StatusCode);
    }

    [Fact]
    public async Task Folder_ReachedByALink_IsServed()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        DirectoryInfo outer = Directory.CreateTempSubdirectory("launchsim-link");
        try
        {
            string real = outer.CreateSubdirectory("real").FullName, link = Path.Combine(outer.FullName, "link");
            File.Copy(Shipped.PathOf("door-car"), Path.Combine(real, "door-car.yaml"));
            File.WriteAllText(Path.Combine(real, "variant.yaml"), $"name: Variant\nbase: {real}/door-car.yaml\n");
            Directory.CreateSymbolicLink(link, real);
            var boundary = new Scenarios.FolderBoundary(link);
            Assert.Null(boundary.Refusal(Path.Combine(link, "door-car.yaml")));
            Assert.Null(boundary.Refusal(Path.Combine(real, "door-car.yaml")));
            Assert.NotNull(boundary.Refusal(Path.Combine(outer.FullName, "other.yaml")));
            Assert.NotNull(boundary.Refusal(real));
            Assert.NotNull(boundary.Refusal(real + "2/other.yaml"));
        }
        finally
        {
            outer.Delete(true);
        }
    }

    [Fact]
    public void Links_InACircle_AreRefused()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        DirectoryInfo folder = Directory.CreateTempSubdirectory("launchsim-circle");
        try
        {
            string a = Path.Combine(folder.FullName, "a.yaml"), b = Path.Combine(folder.FullName, "b.yaml");
            File.CreateSymbolicLink(a, b);
            File.CreateSymbolicLink(b, a);
            Assert.Equal("a link that leads out of the folder", new Scenarios.FolderBoundary(folder.FullName).Refusal(a));
        }
        finally
        {
            folder.Delete(true);
        }
    }

    private static async Task<string> TextAsync(DeskHost host, string name)
    {
        using HttpResponseMessage response = await host.DeskAsync(name);
        return WebUtility.HtmlDecode(await response.Content.ReadAsStringAsync());
    }
}
