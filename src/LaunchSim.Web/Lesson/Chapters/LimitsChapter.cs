using LaunchSim.Reports.Words;
using LaunchSim.Web.Lesson.Prose;

namespace LaunchSim.Web.Lesson.Chapters;

/// <summary>What the lesson leaves out, the caution, and where to go on.</summary>
internal static class LimitsChapter
{
    public static Chapter Of(LessonNumbers n) => new("limits", "What this lesson leaves out",
    [
        new Points(
        [
            Passage.Of($"Left and right. The driveshaft twists the body and loads one rear tyre more than the other; preload and an anti-roll bar work against it. In one plane there is no left and right."),
            Passage.Of($"The track and the tyre of the day. Grip is a number here. On a track it is a line, a temperature and a pressure."),
            Passage.Of($"Tyre shake. It is not predicted. If the car shakes, lift."),
            Passage.Of($"Other cars. The lesson's car is one, invented, driven by a torque that comes at once and stays; its front tyres stay on the ground, with {n.Above["front_load_lowest_n"]} at the least. A car that lifts its front wheels, or stands on a wheelie bar, has no more load to move."),
            Passage.Of($"Engine, clutch and converter, shifts, drag, a second pass. The program has them; the lesson does not."),
            Passage.Of($"Strength. Each lower bar of the {n.Above.Percent} car pushes with {n.Above["lower_link_push_n"]}, each upper one pulls with {n.Above["upper_link_pull_n"]}: together far more than the thrust. Whether your bars and brackets can carry that, is not said."),
        ]),
        new Paragraph(Passage.Of($"{new Term(LimitWords.Caution)}")),
        new Heading("Where to go on"),
        new Points(
        [
            Passage.Of($"The guide, {new Source("docs/guide")}: measure your car, set up its file, run it, change one thing."),
            Passage.Of($"{new Typed("launchsim geometry my-car.yaml")}: percent and instant centre of every hole that you have."),
            Passage.Of($"{new Typed("launchsim run my-car.yaml")}: your launch in sentences; {new Typed("launchsim page my-car.yaml")}: your launch moving, as here."),
            Passage.Of($"{new Source("docs/model.md")}: all equations, with their sources and limits."),
        ]),
    ]);
}
