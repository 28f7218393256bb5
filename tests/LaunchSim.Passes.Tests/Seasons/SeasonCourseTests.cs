using System.Globalization;
using LaunchSim.Passes.Seasons;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Tests.Seasons;

public sealed class SeasonCourseTests : IDisposable
{
    private readonly Folder _folder = new();

    public SeasonCourseTests() => File.Copy(Files.DoorCar, _folder.Path("car.yaml"));

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Read_Passes_StandInTheOrderOfTheirDays()
    {
        Write(1, "when: 2026-09-12 15:00");
        Write(2, "");
        Write(10, "when: 2026-09-12 16:00");
        Write(3, "when: 2026-09-12 14:10");
        _folder.Write("season/season.yaml", "name: Door car, 2026\n");
        _folder.Write("season/car.yaml", "name: Not a pass\nbase: ../car.yaml\n");
        _folder.Write("season/logger.yaml", "columns: {a: b}\n");

        Season season = Read();

        Assert.Equal("Door car, 2026", season.Name);
        Assert.Equal(["pass-3", "pass-1", "pass-2", "pass-10"], season.Passes.Select(pass => Path.GetFileNameWithoutExtension(pass.SourceFile)));
    }

    [Fact]
    public void Read_WrongPassAndWrongSeason_AreToldTogether()
    {
        Write(1, "seen: {rear_moves: 5}");
        Write(2, "whn: today");
        _folder.Write("season/season.yaml", "fited: a.yaml\n");

        SeasonResult result = new SeasonReader(StandingCheck.Reader(ReadPurpose.Run)).Read(_folder.Path("season"));

        Assert.Null(result.Season);
        Assert.Equal(["season.yaml", "pass-1.yaml", "pass-2.yaml"], result.Errors.Select(error => Path.GetFileName(error.File)));
        Assert.All(result.Errors, error => Assert.True(error.Line > 0));
    }

    [Fact]
    public void Of_Season_TellsWhatChangedFromPassToPass()
    {
        Write(1, "");
        Write(2, "changed: {rear.tire.pressure.set: 15 psi}");
        Write(3, "changed: {rear.tire.pressure.set: 15.0 psi, rear.linkage.upper.body.use: 3}");

        SeasonCourse course = SeasonCourse.Of(Read(), readsLogs: false);

        Assert.Equal(["as in the car's file", "rear.tire.pressure.set 16 → 15 psi", "rear.linkage.upper.body.use 2 → 3"], course.Entries.Select(SeasonWords.Changes));
        Assert.Equal(["rear.linkage.upper.body.use", "rear.tire.pressure.set"], course.Settings.Select(setting => setting.Path));
        Assert.NotEqual(course.Entries[0].Predicted.RiseLag, course.Entries[2].Predicted.RiseLag);
    }

    [Fact]
    public void Of_FittedCar_IsPredictedWithThePassesChanges()
    {
        _folder.Write("fitted.yaml", "name: Fitted\nbase: car.yaml\nchange: {car.cg_height: 23 in}\n");
        _folder.Write("season/season.yaml", "fitted: ../fitted.yaml\n");
        Write(1, "changed: {rear.linkage.upper.body.use: 3}");

        SeasonEntry entry = Assert.Single(SeasonCourse.Of(Read(), readsLogs: false).Entries);

        Assert.Equal("3", entry.Fitted!.Scenario.FindText("rear.linkage.upper.body.use"));
        Assert.Equal(23, entry.Fitted.Scenario.Find("car.cg_height")!.Numbers[0]);
        Assert.NotEqual(entry.Predicted.Facts.FrontMoves, entry.Fitted.Facts.FrontMoves);
    }

    /// <summary>Errors of one side that were put into what was seen have to come out, of the right sign and size; those of both sides must not.</summary>
    [Fact]
    public void Lessons_ErrorsPutIn_AreFoundWhereTheyAreAndNowhereElse()
    {
        double[] scatter = [0.002, -0.002, 0.001, -0.001];
        for (int i = 0; i < scatter.Length; i++)
        {
            Write(i + 1, $"changed: {{rear.tire.pressure.set: {15 + i} psi}}");
            PassPrediction as1 = SeasonCourse.Of(Read(), readsLogs: false).Entries[^1].Predicted;
            string rear = (as1.Facts.RearMoves + 0.012 + scatter[i]).ToString("F4", CultureInfo.InvariantCulture), front = (as1.Facts.FrontMoves + scatter[i]).ToString("F4", CultureInfo.InvariantCulture);
            Write(i + 1, $"changed: {{rear.tire.pressure.set: {15 + i} psi}}\nseen: {{rear_moves: {rear} ±0.004 s, front_moves: {front} ±0.004 s, shake: {(i < 2 ? "light" : "none")}}}\nnotes: Note {i + 1}");
        }

        IReadOnlyList<SeasonLesson> lessons = SeasonLessons.Of(SeasonCourse.Of(Read(), readsLogs: false), new Readout(UnitSystem.Shop));

        Assert.Contains(lessons, lesson => lesson.Text == "Predictions err on one side at rear moves: sooner than measured by 12 ms on average, all 4 passes on that side.");
        Assert.Contains(lessons, lesson => lesson.Text.StartsWith("No side shows, within what was measured, at front moves (", StringComparison.Ordinal));
        Assert.Contains(lessons, lesson => lesson.Text == "Tyre shake: light in pass-1 and pass-2; none in pass-3 and pass-4. The model has none, so nothing here predicts it.");
        Assert.Contains(lessons, lesson => lesson.Text.StartsWith("Every pass with shake had rear.tire.pressure.set at 15 psi and 16 psi, every one without at 17 psi and 18 psi", StringComparison.Ordinal));
        Assert.Equal(4, lessons.Count(lesson => lesson.Kind == LessonKind.Note));
        Assert.Equal(3, lessons.Count(lesson => lesson.Kind == LessonKind.Change));
    }

    [Fact]
    public void Lessons_TwoChangesAtOnce_DoNotSayWhichOfThemDidIt()
    {
        Write(1, "track: left\nseen: {rear_moves: 0.05 ±0.002 s}");
        Write(2, "track: right\nchanged: {rear.tire.pressure.set: 15 psi, rear.linkage.upper.body.use: 1}\nseen: {rear_moves: 0.08 ±0.002 s}");

        SeasonLesson lesson = Assert.Single(SeasonLessons.Of(SeasonCourse.Of(Read(), readsLogs: false), new Readout(UnitSystem.Si)), one => one.Kind == LessonKind.Change);

        Assert.Contains("rear moves 0.050 → 0.080 s (+30 ms, predicted ", lesson.Text, StringComparison.Ordinal);
        Assert.EndsWith("; which of the changes did it cannot be told; track or weather are noted otherwise, too.", lesson.Text, StringComparison.Ordinal);
    }

    private void Write(int number, string text) => _folder.Write($"season/pass-{number}.yaml", $"car: ../car.yaml\n{text}\n");

    private Season Read()
    {
        SeasonResult result = new SeasonReader(StandingCheck.Reader(ReadPurpose.Run)).Read(_folder.Path("season"));
        Assert.Empty(result.Errors);
        return result.Season!;
    }
}
