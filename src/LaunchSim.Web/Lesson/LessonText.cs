using LaunchSim.Web.Lesson.Chapters;
using LaunchSim.Web.Lesson.Prose;

namespace LaunchSim.Web.Lesson;

/// <summary>What the lesson says, in order: the register of its chapters, one line each.</summary>
internal static class LessonText
{
    /// <summary>The title.</summary>
    public const string Title = "Why more than 100 % separates the axle";

    private static readonly Func<LessonNumbers, Chapter>[] All =
    [
        DrawingChapter.Of,
        StaticsChapter.Of,
        MotionChapter.Of,
        DamperChapter.Of,
        StepChapter.Of,
        QuestionsChapter.Of,
        LimitsChapter.Of,
    ];

    /// <summary>What stands before the first chapter.</summary>
    /// <param name="n">The numbers.</param>
    public static IReadOnlyList<Passage> Opening(LessonNumbers n) =>
    [
        Passage.Of($"A car leaves the line. Its rear tyres push it forward, and load moves onto them. With a solid axle the bars decide how that load gets there, and how soon. This page begins with a drawing that can be made on the shop floor with a string and a tape, cuts the axle free, and ends with cars that move."),
        Passage.Of($"The drawings take your numbers. All other numbers come from {n.Launches} launches of one invented car, solved when this page was made; lay the pointer on one, or look into the list at the end, and it says which. You need to know what a lever is, and that forces balance on what stands still."),
    ];

    /// <summary>The chapters.</summary>
    /// <param name="n">The numbers.</param>
    public static IReadOnlyList<Chapter> Chapters(LessonNumbers n) => [.. All.Select(chapter => chapter(n))];
}
