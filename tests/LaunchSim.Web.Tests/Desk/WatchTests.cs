using System.Text.Json;

namespace LaunchSim.Web.Tests.Desk;

public class WatchTests
{
    [Fact]
    public async Task File_GoodThenBadThenGood_IsToldAndTheLastGoodIsKept()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        Assert.Equal(1, (await client.NextAsync("file")).GetProperty("version").GetInt32());
        string good = File.ReadAllText(host.PathOf("door-car.yaml"));

        host.Write("door-car.yaml", good.Replace("cg_height: 21 in", "cg_height: 21 inches of", StringComparison.Ordinal));
        JsonElement bad = await client.NextAsync("file");
        Assert.False(bad.GetProperty("present").GetBoolean());
        JsonElement error = bad.GetProperty("errors")[0];
        Assert.Equal(("door-car.yaml", 10, "car.cg_height"), (error.GetProperty("file").GetString(), error.GetProperty("line").GetInt32(), error.GetProperty("path").GetString()));
        Assert.Equal("  cg_height: 21 inches of", error.GetProperty("source").GetString());
        Assert.NotEmpty(bad.GetProperty("controls").EnumerateArray());

        // The picture that was good goes on being moved.
        await client.SolveAsync(("rear.spring.rate", "160 lb/in"));
        JsonElement kept = await client.NextAsync("launch", "refused");
        Assert.Equal("launch", LiveClient.Kind(kept));
        Assert.False(kept.GetProperty("present").GetBoolean());
        Assert.Equal(Shipped.Read("door-car", ("rear.spring.rate", "160 lb/in")).ContentHash, kept.GetProperty("document").GetProperty("launches")[0].GetProperty("hash").GetString());

        host.Write("door-car.yaml", good.Replace("cg_height: 21 in", "cg_height: 22 in", StringComparison.Ordinal));
        JsonElement again = await client.NextAsync("file");
        Assert.True(again.GetProperty("present").GetBoolean());
        Assert.True(again.GetProperty("version").GetInt32() > bad.GetProperty("version").GetInt32());
        await client.SolveAsync();
        JsonElement solved = await client.NextAsync("launch");
        Assert.Equal(Shipped.Read("door-car", ("car.cg_height", "22 in")).ContentHash, solved.GetProperty("document").GetProperty("launches")[0].GetProperty("hash").GetString());
        Assert.Equal(again.GetProperty("version").GetInt32(), solved.GetProperty("version").GetInt32());
    }

    [Fact]
    public async Task File_ReplacedByRenaming_IsTold()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        await client.NextAsync("file");
        string next = host.Write(".next", File.ReadAllText(host.PathOf("door-car.yaml")).Replace("Door car, as measured", "Another name", StringComparison.Ordinal));
        File.Move(next, host.PathOf("door-car.yaml"), overwrite: true);
        Assert.Equal("Another name", (await client.NextAsync("file")).GetProperty("name").GetString());
        File.Delete(host.PathOf("door-car.yaml"));
        JsonElement gone = await client.NextAsync("file");
        Assert.False(gone.GetProperty("present").GetBoolean());
        Assert.Contains("no file", LiveClient.Error(gone), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Base_ChangedInAFolderWithin_IsTold()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        Directory.CreateDirectory(host.PathOf("cars"));
        File.Move(host.PathOf("door-car.yaml"), host.PathOf("cars/door-car.yaml"));
        host.Write("variant.yaml", "name: Variant\nbase: cars/door-car.yaml\nchange:\n  rear.spring.rate: 160 lb/in\n");
        await using LiveClient client = await host.ConnectAsync("variant.yaml");
        Assert.True((await client.NextAsync("file")).GetProperty("present").GetBoolean());
        host.Write("cars/door-car.yaml", File.ReadAllText(host.PathOf("cars/door-car.yaml")).Replace("cg_height: 21 in", "cg_height: 0 in", StringComparison.Ordinal));
        JsonElement bad = await client.NextAsync("file");
        JsonElement error = bad.GetProperty("errors")[0];
        Assert.Equal(("cars/door-car.yaml", "  cg_height: 0 in"), (error.GetProperty("file").GetString(), error.GetProperty("source").GetString()));
    }

    [Fact]
    public async Task File_BadFromTheBeginning_IsOpenedOnceItIsMended()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        string good = File.ReadAllText(host.PathOf("door-car.yaml"));
        host.Write("new.yaml", good.Replace("name:", "nmae:", StringComparison.Ordinal));
        await using LiveClient client = await host.ConnectAsync("new.yaml");
        JsonElement bad = await client.NextAsync("file");
        Assert.False(bad.GetProperty("present").GetBoolean());
        Assert.Empty(bad.GetProperty("controls").EnumerateArray());
        await client.SolveAsync();
        Assert.Contains("nmae", LiveClient.Error(await client.NextAsync("refused", "launch")), StringComparison.Ordinal);
        host.Write("new.yaml", good);
        Assert.True((await client.NextAsync("file")).GetProperty("present").GetBoolean());
        await client.SolveAsync();
        await client.NextAsync("launch");
    }

    [Fact]
    public async Task File_WrittenPieceByPiece_IsReadOnceItIsWhole()
    {
        await using DeskHost host = await DeskHost.OpenAsync();
        await using LiveClient client = await host.ConnectAsync();
        await client.NextAsync("file");
        string good = File.ReadAllText(host.PathOf("door-car.yaml"));
        using (var stream = new StreamWriter(host.PathOf("door-car.yaml")))
        {
            foreach (char[] piece in good.Chunk(400))
            {
                stream.Write(piece);
                stream.Flush();
                await Task.Delay(10);
            }
        }

        JsonElement told = await client.NextAsync("file");
        while (!told.GetProperty("present").GetBoolean())
        {
            // On a busy machine the pieces may be far enough apart to be read.
            told = await client.NextAsync("file");
        }

        await Task.Delay(300);
        Assert.DoesNotContain("file", client.Drain().Select(LiveClient.Kind));
    }
}
