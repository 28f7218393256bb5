using System.Buffers.Binary;
using System.Text.Json;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Web.Documents;
using LaunchSim.Web.Pages;

namespace LaunchSim.Web.Tests.Documents;

public class LaunchDocumentTests
{
    public static TheoryData<string> Names => Shipped.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Columns_OfAnyScenario_AreTheTracesToSingleDigits(string name)
    {
        LaunchOutcome run = Shipped.Run(name);
        JsonElement launch = Launch(Shipped.Document(run));
        double step = launch.GetProperty("step").GetDouble();
        var trace = Trace.Of(run.Solution, step);
        Assert.Equal(trace.Rows, launch.GetProperty("rows").GetInt32());
        foreach (TraceColumn column in TraceColumns.All)
        {
            if (launch.GetProperty("columns").TryGetProperty(column.Name, out JsonElement text))
            {
                float[] seen = Floats(text.GetBytesFromBase64());
                for (int row = 0; row < trace.Rows; row++)
                {
                    double value = trace.Column(column.Name)[row];
                    Assert.Equal(double.IsFinite(value) ? (float)value : float.NaN, seen[row]);
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Figures_OfAnyScenario_AreTheEngines(string name)
    {
        LaunchOutcome run = Shipped.Run(name);
        var readout = new Readout(run.Scenario.UnitSystem);
        JsonElement[] rows = [.. Launch(Shipped.Document(run)).GetProperty("figures").EnumerateArray().SelectMany(family => family.GetProperty("rows").EnumerateArray())];
        Assert.Equal(run.Figures.Catalog.Definitions.Count, rows.Length);
        foreach (JsonElement row in rows)
        {
            string key = row.GetProperty("key").GetString()!;
            Figure figure = run.Figures.Get(key);
            if (figure.Value is { } value)
            {
                Assert.Equal(value, row.GetProperty("value").GetDouble());
                (string number, string unit) = FigureFormat.Of(run.Figures.Catalog.Definitions.First(one => one.Key == key), value, readout);
                Assert.Equal((number, unit), (row.GetProperty("number").GetString(), row.GetProperty("unit").GetString()));
            }
            else
            {
                Assert.NotEmpty(row.GetProperty("reason").GetString()!);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Answers_OfAnyScenario_AreSaidOfEachPart(string name)
    {
        JsonElement[] answers = [.. Launch(Shipped.Document(Shipped.Run(name))).GetProperty("answers").EnumerateArray()];
        Assert.Equal(["instant-centre", "ends", "rear-tire", "rear-damper", "contact"], answers.Select(answer => answer.GetProperty("part").GetString()));
        Assert.All(answers, answer => Assert.NotEmpty(answer.GetProperty("lead").GetString()!));
        Assert.All(answers, answer => Assert.EndsWith(".", answer.GetProperty("text").GetString(), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0.2, 0.001)]
    [InlineData(2.0, 0.001)]
    [InlineData(2.001, 0.002)]
    [InlineData(4.0, 0.002)]
    [InlineData(4.5, 0.003)]
    public void Step_OfADuration_KeepsTheRowsBounded(double duration, double step) => Assert.Equal(step, ColumnJson.Step(duration), 9);

    [Fact]
    public void Page_OfTwoLongLaunches_IsUnderOneAndAHalfMegabytes()
    {
        LaunchOutcome run = Shipped.Run("door-car", ("run.duration", "4 s"));
        DocumentedLaunch[] launches = [new(run, "one"), new(run, "other")];
        int size = System.Text.Encoding.UTF8.GetByteCount(LaunchPage.Of(launches, new Readout(run.Scenario.UnitSystem), "LaunchSim").Text);
        Assert.InRange(size, 100_000, 1_400_000);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(4)]
    public void Page_OfTooFewOrTooManyLaunches_IsRefused(int count)
    {
        LaunchOutcome run = Shipped.Run("door-car", ("run.duration", "0.2 s"));
        DocumentedLaunch[] launches = [.. Enumerable.Repeat(new DocumentedLaunch(run, "one"), count)];
        Assert.Throws<ArgumentException>(() => LaunchPage.Of(launches, new Readout(run.Scenario.UnitSystem), "LaunchSim"));
    }

    private static JsonElement Launch(string document) => JsonDocument.Parse(document).RootElement.GetProperty("launches")[0];

    private static float[] Floats(byte[] bytes) => [.. Enumerable.Range(0, bytes.Length / 4).Select(i => BinaryPrimitives.ReadSingleLittleEndian(bytes.AsSpan(i * 4)))];
}
