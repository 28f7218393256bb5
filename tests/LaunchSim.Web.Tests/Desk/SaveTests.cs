using System.Net;
using System.Text.Json;
using LaunchSim.Scenarios;

namespace LaunchSim.Web.Tests.Desk;

public class SaveTests
{
    private static readonly object[] Stiffer = [new { path = "rear.spring.rate", value = "175 lb/in" }, new { path = "rear.linkage.upper.body.use", value = "3" }];

    [Fact]
    public async Task Save_OfWhatWasMoved_IsAVariantThatReadsAsTheSameCar()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        using HttpResponseMessage response = await host.PostAsync("/save", new { file = "door-car.yaml", @as = "door-car-stiffer.yaml", name = "Stiffer: with #3, \"low\"", edits = Stiffer });
        Assert.Equal(HttpStatusCode.Created, response.StatusCode);
        JsonElement answer = await DeskHost.JsonAsync(response);
        Assert.Equal(host.PathOf("door-car-stiffer.yaml"), answer.GetProperty("place").GetString());
        Assert.Equal("""
            name: 'Stiffer: with #3, "low"'
            notes: Set on the desk, from door-car.yaml.
            base: door-car.yaml
            change:
              rear.spring.rate: 175 lb/in
              rear.linkage.upper.body.use: 3

            """.ReplaceLineEndings("\n"), File.ReadAllText(host.PathOf("door-car-stiffer.yaml")));
        Scenario saved = StandingCheck.Reader(ReadPurpose.Run).Read(host.PathOf("door-car-stiffer.yaml")).Scenario!;
        Assert.Equal(Shipped.Read("door-car", ("rear.spring.rate", "175 lb/in"), ("rear.linkage.upper.body.use", "3")).ContentHash, saved.ContentHash);
        Assert.Equal("Stiffer: with #3, \"low\"", saved.Name);
        Assert.Equal(["door-car-stiffer.yaml", "door-car.yaml"], Names(host));
        using HttpResponseMessage desk = await host.DeskAsync("door-car-stiffer.yaml");
        Assert.Equal(HttpStatusCode.OK, desk.StatusCode);
    }

    [Theory]
    [InlineData("door-car.yaml", 409)]
    [InlineData("Door-Car.yaml", 409)]
    [InlineData("folder.yaml", 409)]
    [InlineData("dangling.yaml", 409)]
    [InlineData("../out.yaml", 400)]
    [InlineData("..\\out.yaml", 400)]
    [InlineData("/tmp/out.yaml", 400)]
    [InlineData("sub/out.yaml", 400)]
    [InlineData(".hidden.yaml", 400)]
    [InlineData("-option.yaml", 400)]
    [InlineData(" blank.yaml", 400)]
    [InlineData("blank .yaml", 400)]
    [InlineData("dot..yaml", 400)]
    [InlineData("a:b.yaml", 400)]
    [InlineData("a\nb.yaml", 400)]
    [InlineData("a\0b.yaml", 400)]
    [InlineData("CON.yaml", 400)]
    [InlineData("com1.x.yaml", 400)]
    [InlineData("a.yml", 400)]
    [InlineData("a.YAML", 400)]
    [InlineData("a", 400)]
    [InlineData(".yaml", 400)]
    [InlineData("", 400)]
    public async Task Save_UnderANameThatMayNotBe_IsRefusedAndLeavesAllAsItWas(string name, int status)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        await using DeskHost host = await DeskHost.OpenAsync();
        Directory.CreateDirectory(host.PathOf("folder.yaml"));
        File.CreateSymbolicLink(host.PathOf("dangling.yaml"), Path.Combine(host.Outside, "made.yaml"));
        List<string> before = Names(host);
        string text = File.ReadAllText(host.PathOf("door-car.yaml"));
        using HttpResponseMessage response = await host.PostAsync("/save", new { file = "door-car.yaml", @as = name, name = "New", edits = Stiffer });
        Assert.Equal(status, (int)response.StatusCode);
        Assert.NotEmpty(LiveClient.Error(await DeskHost.JsonAsync(response)));
        Assert.Equal(before, Names(host));
        Assert.Equal(text, File.ReadAllText(host.PathOf("door-car.yaml")));
        Assert.Empty(Directory.EnumerateFileSystemEntries(host.Outside));
    }

    [Fact]
    public async Task Save_UnderALongName_IsRefused()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        using HttpResponseMessage response = await host.PostAsync("/save", new { file = "door-car.yaml", @as = new string('ü', 150) + ".yaml", name = "New", edits = Stiffer });
        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }

    [Fact]
    public async Task Save_OfTheSameNameByMany_IsDoneOnce()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        HttpStatusCode[] statuses = await Task.WhenAll(Enumerable.Range(0, 20).Select(async i =>
        {
            using HttpResponseMessage response = await host.PostAsync("/save", new { file = "door-car.yaml", @as = "one.yaml", name = $"Number {i}", edits = Stiffer });
            return response.StatusCode;
        }));
        Assert.Single(statuses, HttpStatusCode.Created);
        Assert.All(statuses, status => Assert.Contains(status, new[] { HttpStatusCode.Created, HttpStatusCode.Conflict, HttpStatusCode.TooManyRequests }));
        Assert.Equal(["door-car.yaml", "one.yaml"], Names(host));
        Assert.NotNull(StandingCheck.Reader(ReadPurpose.Run).Read(host.PathOf("one.yaml")).Scenario);
    }

    [Fact]
    public async Task Save_OfNothingMovedOrWhatCannotBe_IsRefused()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await RefusedAsync(new { file = "door-car.yaml", @as = "a.yaml", name = "A", edits = Array.Empty<object>() });
        await RefusedAsync(new { file = "door-car.yaml", @as = "a.yaml", name = " ", edits = Stiffer });
        await RefusedAsync(new { file = "door-car.yaml", @as = "a.yaml", name = "A", edits = new[] { new { path = "rear.spring.rate", value = "175 psi" } } });
        await RefusedAsync(new { file = "door-car.yaml", @as = "a.yaml", name = "A", edits = new[] { new { path = "car.cg_height", value = "20 in" } } });
        Assert.Equal(["door-car.yaml"], Names(host));

        async Task RefusedAsync(object body)
        {
            using HttpResponseMessage response = await host.PostAsync("/save", body);
            Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
            Assert.StartsWith("found ", LiveClient.Error(await DeskHost.JsonAsync(response)), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Save_AfterTheFileChangedUnseen_IsRefused()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        await client.NextAsync("file");
        string good = File.ReadAllText(host.PathOf("door-car.yaml"));
        host.Write("door-car.yaml", good.Replace("cg_height: 21 in", "cg_height: none", StringComparison.Ordinal));
        await client.NextAsync("file");
        using HttpResponseMessage response = await host.PostAsync("/save", new { file = "door-car.yaml", @as = "a.yaml", name = "A", edits = Stiffer });
        Assert.Equal(HttpStatusCode.Conflict, response.StatusCode);
        Assert.Equal(["door-car.yaml"], Names(host));
    }

    [Fact]
    public async Task Save_OfAVariant_BeginsFromTheVariantAndKeepsDoubts()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        host.Write("doubtful.yaml", "name: Doubtful\nbase: door-car.yaml\nchange:\n  rear.spring.rate: 150 ±8 lb/in\n");
        using HttpResponseMessage response = await host.PostAsync("/save", new { file = "doubtful.yaml", @as = "a.yaml", name = "A", notes = "Said:\n  mine", edits = Stiffer });
        Assert.Equal(HttpStatusCode.Created, response.StatusCode);
        string text = File.ReadAllText(host.PathOf("a.yaml"));
        Assert.Contains("base: doubtful.yaml\n", text, StringComparison.Ordinal);
        Assert.Contains("  rear.spring.rate: 175 ±8 lb/in\n", text, StringComparison.Ordinal);
        Assert.Contains("notes: 'Said: mine'\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Save_IntoAFolderThatMayNotBeWritten_IsToldAndLeavesNothing()
    {
        if (OperatingSystem.IsWindows() || Environment.UserName == "root")
        {
            return;
        }

        await using DeskHost host = await DeskHost.OpenAsync();
        File.SetUnixFileMode(host.Folder, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        try
        {
            using HttpResponseMessage response = await host.PostAsync("/save", new { file = "door-car.yaml", @as = "a.yaml", name = "A", edits = Stiffer });
            Assert.Equal(HttpStatusCode.InternalServerError, response.StatusCode);
            Assert.Contains("nothing of it is left behind", LiveClient.Error(await DeskHost.JsonAsync(response)), StringComparison.Ordinal);
        }
        finally
        {
            File.SetUnixFileMode(host.Folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        Assert.Equal(["door-car.yaml"], Names(host));
    }

    private static List<string> Names(DeskHost host) => [.. Directory.EnumerateFileSystemEntries(host.Folder).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];
}
