using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using LaunchSim.Dynamics;
using LaunchSim.Geometry;
using LaunchSim.Reports.Numbers;
using LaunchSim.Vehicle;
using LaunchSim.Web.Documents;
using LaunchSim.Web.Lesson.Prose;

namespace LaunchSim.Web.Lesson;

/// <summary>The lesson as the front end reads it: its text, its numbers by key, what its drawings begin with, and check points.</summary>
internal static class LessonDocument
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The document.</summary>
    /// <param name="n">The numbers.</param>
    public static string Text(LessonNumbers n)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            Write(json, n);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    private static void Write(Utf8JsonWriter json, LessonNumbers n)
    {
        IReadOnlyList<Passage> opening = LessonText.Opening(n);
        IReadOnlyList<Chapter> chapters = LessonText.Chapters(n);
        json.WriteStartObject();
        json.WriteString("title", LessonText.Title);
        PassageJson.Write(json, "opening", opening);
        json.WriteStartArray("chapters");
        foreach (Chapter chapter in chapters)
        {
            PassageJson.Write(json, chapter);
        }

        json.WriteEndArray();
        Numbers(json, opening.SelectMany(passage => passage.Numbers).Concat(chapters.SelectMany(chapter => chapter.Blocks).SelectMany(block => block.Numbers)));
        Cases(json, n);
        Car(json, n);
        Checks(json, n);
        json.WriteEndObject();
    }

    private static void Numbers(Utf8JsonWriter json, IEnumerable<Shown> all)
    {
        var written = new Dictionary<string, Shown>(StringComparer.Ordinal);
        json.WriteStartObject("numbers");
        foreach (Shown number in all)
        {
            if (written.TryAdd(number.Key, number))
            {
                json.WriteStartObject(number.Key);
                json.WriteString("meaning", number.Meaning);
                json.WriteNumber("value", number.Value);
                json.WriteString("text", number.Text);
                json.WriteEndObject();
            }
            else if (written[number.Key].Text != number.Text)
            {
                throw new InvalidOperationException($"{number.Key} reads `{written[number.Key].Text}` and `{number.Text}`.");
            }
        }

        json.WriteEndObject();
    }

    // Which launch of the launches' document each case is, and what it is called in a chart.
    private static void Cases(Utf8JsonWriter json, LessonNumbers n)
    {
        json.WriteStartArray("cases");
        foreach (CaseNumbers one in n.Moving)
        {
            json.WriteStartObject();
            json.WriteString("key", one.Case.Key);
            json.WriteString("letter", one.Letter.Text);
            json.WriteString("percent", one.Percent.Text);
            json.WriteString("click", one.Click.Text);
            StaticLine line = one.Case.Run.Solution.Car.Line;
            json.WriteNumber("ahead", line.InstantCentreAhead);
            json.WriteNumber("up", line.InstantCentreUp);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("outOfStep", n.OutOfStep.Case.Key);
    }

    private static void Car(Utf8JsonWriter json, LessonNumbers n)
    {
        Standing standing = n.Standing;
        LaunchModel model = n.Runs.Above.Run.Solution.Car.Model;
        WheelRates rates = n.Rates;
        var bars = (FourLink)n.Runs.Above.Car.Scenario.Car!.Rear.Linkage;
        json.WriteStartObject("car");
        json.WriteNumber("wheelbase", standing.Wheelbase);
        json.WriteNumber("cgHeight", standing.CentreOfGravityHeight);
        json.WriteNumber("rearLoad", standing.RearLoad);
        json.WriteNumber("frontLoad", standing.FrontLoad);
        json.WriteNumber("rearSprings", standing.RearLoad - (model.RearMass * LaunchModel.Gravity));
        json.WriteNumber("thrust", n.Thrust.Value);
        json.WriteNumber("rearRate", rates.Rear);
        json.WriteNumber("frontRate", rates.Front);
        json.WriteNumber("rearTireRate", rates.RearTire);
        json.WriteNumber("frontTireRate", rates.FrontTire);
        Bars(json, bars);
        json.WriteEndObject();
    }

    private static void Checks(Utf8JsonWriter json, LessonNumbers n)
    {
        json.WriteStartArray("checks");
        foreach (LessonCheck check in LessonChecks.Of(n))
        {
            StaticLine line = check.Line;
            AxleStatics statics = check.Statics;
            json.WriteStartObject();
            json.WriteString("name", check.Name);
            Bars(json, check.Linkage);
            json.WriteNumber("cgHeight", check.CentreOfGravityHeight);
            json.WriteNumber("wheelbase", check.Wheelbase);
            json.WriteNumber("thrust", check.Thrust);
            json.WriteStartObject("engine");
            json.Number("ahead", line.InstantCentreAhead);
            json.Number("up", line.InstantCentreUp);
            json.WriteNumber("percent", line.Percent);
            json.WriteNumber("transfer", statics.Transfer);
            json.WriteNumber("barsPush", statics.BarsPush);
            json.WriteNumber("apart", statics.Apart);
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Bars(Utf8JsonWriter json, FourLink bars)
    {
        json.WriteStartObject("bars");
        Place(json, "lowerAxle", bars.LowerAxle);
        Place(json, "lowerBody", bars.LowerBody);
        Place(json, "upperAxle", bars.UpperAxle);
        Place(json, "upperBody", bars.UpperBody);
        json.WriteEndObject();
    }

    private static void Place(Utf8JsonWriter json, string name, Point point)
    {
        json.WriteStartArray(name);
        json.WriteNumberValue(point.Ahead);
        json.WriteNumberValue(point.Up);
        json.WriteEndArray();
    }
}
