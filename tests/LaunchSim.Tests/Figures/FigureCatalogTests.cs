using System.Text.RegularExpressions;
using LaunchSim.Figures;
using Xunit;

namespace LaunchSim.Tests.Figures;

public sealed partial class FigureCatalogTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void Keys_AnyNumberOfMarks_AreUniqueAndEndWithTheirUnit(int marks)
    {
        IReadOnlyList<FigureDefinition> all = FigureCatalog.For(marks).Definitions;
        Assert.Equal(all.Count, all.Select(d => d.Key).Distinct().Count());
        Assert.All(all, d => Assert.EndsWith(d.Unit.Suffix(), d.Key, StringComparison.Ordinal));
        Assert.All(all, d => Assert.Matches(KeyForm(), d.Key));
        Assert.Equal(4 * marks, all.Count(d => d.Key.StartsWith("mark_", StringComparison.Ordinal)));
    }

    // A suffix may end another one: the longest that fits has to be the unit's own.
    [Fact]
    public void Keys_WithTwoFittingUnits_MeanTheLongerOne()
    {
        foreach (FigureDefinition definition in FigureCatalog.For(1).Definitions)
        {
            FigureUnit longest = Enum.GetValues<FigureUnit>()
                .Where(u => definition.Key.EndsWith(u.Suffix(), StringComparison.Ordinal)).MaxBy(u => u.Suffix().Length);
            Assert.Equal(longest, definition.Unit);
        }
    }

    [Fact]
    public void Definitions_All_AreDescribed()
    {
        Assert.All(FigureCatalog.For(2).Definitions, d => Assert.False(string.IsNullOrWhiteSpace(d.Name) || string.IsNullOrWhiteSpace(d.Description), d.Key));
        Assert.All(FigureCatalog.For(2).Families, f => Assert.False(string.IsNullOrWhiteSpace(f.Title)));
        Assert.Equal(FigureCatalog.For(2).Definitions.Count, FigureCatalog.For(2).Definitions.Select(d => d.Name).Distinct().Count());
    }

    [Fact]
    public void For_SameNumberOfMarks_IsShared() => Assert.Same(FigureCatalog.For(2), FigureCatalog.For(2));

    [GeneratedRegex("^[a-z][a-z0-9]*(_[a-z0-9]+)+$")]
    private static partial Regex KeyForm();
}
