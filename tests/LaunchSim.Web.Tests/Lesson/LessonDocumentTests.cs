using System.Text.Json;
using System.Text.RegularExpressions;
using LaunchSim.Figures;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios.Units;
using LaunchSim.Web.Lesson;
using LaunchSim.Web.Lesson.Prose;
using LaunchSim.Web.Pages;

namespace LaunchSim.Web.Tests.Lesson;

public sealed partial class LessonDocumentTests
{
    public static TheoryData<string> Systems => ["shop", "si"];

    /// <summary>No number of the text is typed: what stands between the numbers holds no digit, but for the 100 % that the drawing is about.</summary>
    [Theory]
    [MemberData(nameof(Systems))]
    public void Text_BetweenItsNumbers_HoldsNoDigit(string system)
    {
        string[] typed = [.. Passages(Numbers(system)).SelectMany(passage => passage.Parts).Where(part => part is string or Term).Select(part => $"{(part is Term term ? term.Text : part)}")];
        Assert.NotEmpty(typed);
        foreach (string text in typed.Where(text => text != LimitWords.Caution))
        {
            Assert.True(!text.Replace("100 %", "", StringComparison.Ordinal).Any(char.IsAsciiDigit), text);
        }
    }

    /// <summary>Every number that names a figure of a launch is that figure, read off a launch that is solved once more.</summary>
    [Theory]
    [MemberData(nameof(Systems))]
    public void Numbers_ThatNameAFigure_AreThatFigure(string system)
    {
        LessonNumbers n = Numbers(system);
        var launches = TheLesson.Runs.Clicks.Append(TheLesson.Runs.Below).Append(TheLesson.Runs.At).ToDictionary(one => one.Key, one => LaunchOutcome.Of(one.Car.Scenario, CancellationToken.None).Figures);
        int held = 0;
        foreach (Shown number in Passages(n).SelectMany(passage => passage.Numbers))
        {
            if (FigureKey().Match(number.Key) is { Success: true } named && launches.TryGetValue(named.Groups["case"].Value, out FigureSet? figures) && figures.TryGet(named.Groups["figure"].Value, out Figure? figure))
            {
                double value = figure.Value.Value!.Value * (named.Groups["figure"].Value == "grip_margin_lowest_ratio" ? 100 : 1);
                Assert.Equal(number.Key[0] == '|' ? Math.Abs(value) : value, number.Value, 1e-12 * Math.Max(1, Math.Abs(value)));
                held++;
            }
        }

        Assert.True(held > 60, $"{held}");
    }

    /// <summary>Differences are those of two numbers that can be looked up.</summary>
    [Fact]
    public void Numbers_ThatAreDifferences_AreThoseOfTheirParts()
    {
        LessonNumbers n = TheLesson.Shop;
        Shown one = n.Above.Load(n.HalfTenth), other = n.Below.Load(n.HalfTenth);
        Assert.Contains(Passages(n).SelectMany(passage => passage.Numbers), number => number.Key == $"|{one.Key} − {other.Key}|" && number.Value == Math.Abs(one.Value - other.Value));
    }

    [Theory]
    [MemberData(nameof(Systems))]
    public void Document_OfEitherSystem_HasEveryNumberThatItsTextNames(string system)
    {
        using var document = JsonDocument.Parse(LessonDocument.Text(Numbers(system)));
        JsonElement numbers = document.RootElement.GetProperty("numbers");
        int named = 0;
        foreach (JsonElement part in Parts(document.RootElement))
        {
            Assert.True(numbers.TryGetProperty(part.GetString()!, out JsonElement number), part.GetString());
            string text = number.GetProperty("text").GetString()!;
            Assert.Matches(@"^-?\d+(\.\d+)?( ?[^\d\s]\S*)?$", text);
            Assert.NotEmpty(number.GetProperty("meaning").GetString()!);
            named++;
        }

        Assert.True(named > 120, $"{named}");
    }

    [Fact]
    public void Document_InSi_HoldsNoShopUnit()
    {
        using var document = JsonDocument.Parse(LessonDocument.Text(TheLesson.Si));
        foreach (JsonProperty number in document.RootElement.GetProperty("numbers").EnumerateObject())
        {
            Assert.DoesNotMatch(@"\d (in|lb|ft|lb-ft|mph)$", number.Value.GetProperty("text").GetString()!);
        }
    }

    [Fact]
    public void Chapters_OfTheLesson_AreSevenWithSixToEightQuestionsAndOneToPredict()
    {
        IReadOnlyList<Chapter> chapters = LessonText.Chapters(TheLesson.Shop);
        Assert.Equal(["drawing", "statics", "motion", "damper", "step", "questions", "limits"], chapters.Select(chapter => chapter.Id));
        Question[] asked = [.. chapters.SelectMany(chapter => chapter.Blocks).OfType<Question>()];
        Assert.InRange(asked.Count(question => question.Choices.Count == 0), 6, 8);
        Question predict = Assert.Single(asked, question => question.Choices.Count > 0);
        Assert.InRange(predict.Right, 0, predict.Choices.Count - 1);
        Assert.Contains(Passages(TheLesson.Shop), passage => passage.ToString() == LimitWords.Caution);
    }

    [Theory]
    [MemberData(nameof(Systems))]
    public void Page_OfEitherSystem_IsOneSmallFileThatAsksNobody(string system)
    {
        HtmlPage page = LessonPage.Of(new Readout(system == "si" ? UnitSystem.Si : UnitSystem.Shop), "LaunchSim", CancellationToken.None);
        Assert.True(page.Text.Length < 1_500_000, $"{page.Text.Length}");
        Assert.False(page.Connects);
        Assert.Contains("connect-src 'none'", page.Policy, StringComparison.Ordinal);
        Assert.EndsWith("LaunchSim", page.Title, StringComparison.Ordinal);
    }

    private static LessonNumbers Numbers(string system) => system == "si" ? TheLesson.Si : TheLesson.Shop;

    private static IEnumerable<Passage> Passages(LessonNumbers n) =>
        LessonText.Opening(n).Concat(LessonText.Chapters(n).SelectMany(chapter => chapter.Blocks).SelectMany(block => block.Passages));

    private static IEnumerable<JsonElement> Parts(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Parts),
        JsonValueKind.Object => element.EnumerateObject().Where(property => property.Name != "numbers").SelectMany(property => property is { Name: "n", Value.ValueKind: JsonValueKind.String } ? [property.Value] : Parts(property.Value)),
        _ => [],
    };

    [GeneratedRegex(@"^\|?(?<case>\w+)\.(?<figure>[a-z0-9_]+)\|?$")]
    private static partial Regex FigureKey();
}
