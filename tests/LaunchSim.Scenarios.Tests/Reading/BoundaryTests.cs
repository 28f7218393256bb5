namespace LaunchSim.Scenarios.Tests.Reading;

public class BoundaryTests
{
    [Fact]
    public void Read_WithinAFolder_SeesNamesFromThereAndTellsItsFiles()
    {
        using var folder = new Folder();
        string car = folder.Write("cars/car.yaml", Files.DoorCarText), variant = folder.Write("variant.yaml", "name: V\nbase: cars/car.yaml\n");
        var reader = new ScenarioReader { Boundary = new FolderBoundary(folder.At) };
        ReadResult read = reader.Read("variant.yaml");
        Assert.NotNull(read.Scenario);
        Assert.Equal("variant.yaml", read.Scenario.SourceFile);
        Assert.Equal([variant, car], read.Files);
        Assert.Equal("cars/car.yaml", read.Scenario.PlaceOf("car.wheelbase").Split(':')[0]);
    }

    [Fact]
    public void Read_OfABaseThatIsNotThere_NamesItAmongTheFiles()
    {
        using var folder = new Folder();
        folder.Write("variant.yaml", "name: V\nbase: car.yaml\n");
        ReadResult read = new ScenarioReader { Boundary = new FolderBoundary(folder.At) }.Read("variant.yaml");
        Assert.Null(read.Scenario);
        Assert.Equal([Path.Combine(folder.At, "variant.yaml"), Path.Combine(folder.At, "car.yaml")], read.Files);
    }

    [Theory]
    [InlineData("../other.yaml")]
    [InlineData("a/../../other.yaml")]
    [InlineData("/etc/hostname")]
    [InlineData("..")]
    public void Read_OfAFileOutside_IsRefusedAtTheLineThatNamesIt(string name)
    {
        using var outer = new Folder();
        outer.Write("other.yaml", Files.DoorCarText);
        outer.Write("in/variant.yaml", $"name: V\nbase: {name}\n");
        var reader = new ScenarioReader { Boundary = new FolderBoundary(Path.Combine(outer.At, "in")) };
        Diagnostic error = Assert.Single(reader.Read("variant.yaml").Errors);
        Assert.Equal(("variant.yaml", 2, 7), (error.File, error.Line, error.Column));
        Assert.Contains("a file outside the folder", error.Message, StringComparison.Ordinal);
        Assert.Contains("a file outside the folder", Assert.Single(reader.ReadText($"name: V\nbase: {name}\n", "text.yaml", folder: Path.Combine(outer.At, "in")).Errors).Message, StringComparison.Ordinal);

        // Without a boundary it is read, as everywhere else.
        Assert.Equal(name.EndsWith("other.yaml", StringComparison.Ordinal), StandingCheck.Reader(ReadPurpose.Run).Read(Path.Combine(outer.At, "in/variant.yaml")).Scenario is not null);
    }

    [Fact]
    public void Refusal_OfAFolderWithALikeName_IsOutside()
    {
        using var outer = new Folder();
        outer.Write("car/a.yaml", "x");
        outer.Write("cars/a.yaml", "x");
        var boundary = new FolderBoundary(Path.Combine(outer.At, "car") + Path.DirectorySeparatorChar);
        Assert.Null(boundary.Refusal(Path.Combine(outer.At, "car", "a.yaml")));
        Assert.Null(boundary.Refusal(Path.Combine(outer.At, "car", "none.yaml")));
        Assert.NotNull(boundary.Refusal(Path.Combine(outer.At, "cars", "a.yaml")));
        Assert.NotNull(boundary.Refusal(Path.Combine(outer.At, "car")));
    }
}
