using LaunchSim.Reports.Numbers;
using LaunchSim.Web.Lesson.Prose;

namespace LaunchSim.Web.Lesson.Chapters;

/// <summary>Contact patch, instant centre, neutral line, percent.</summary>
internal static class DrawingChapter
{
    public static Chapter Of(LessonNumbers n)
    {
        CaseNumbers above = n.Above;
        return new("drawing", "The drawing on the shop floor",
        [
            new Spread(
            [
                new Paragraph(Passage.Of($"Look at the car from the side. Each rear tyre stands on its {new Term("contact patch")}. An upper and a lower bar tie the axle to the body. Draw a line through each bar and let both run on until they meet. Where they meet is the {new Term("instant centre")}: for a small movement the axle swings about that point, as if one long arm reached from the axle to there.")),
                new Paragraph(Passage.Of($"Now two lines from the contact patch. The first goes through the instant centre. The second goes to the height of the centre of gravity, drawn up over the front axle: this is the {new Term("neutral line")}. How steep the first line is, measured by the second, is the {new Term("percent")} (of anti-squat). An instant centre on the neutral line is 100 %. Above the line it is more, below it less.")),
                new Paragraph(Passage.Of($"The lesson's car weighs {n.Weight} on a wheelbase of {n.Wheelbase}, with its centre of gravity {n.CentreOfGravity} up. The drawing begins with its instant centre {above["standing_instant_centre_ahead_m"]} ahead of the axle and {above["standing_instant_centre_up_m"]} up. That makes {above.Percent}.")),
                new Heading("Try it"),
                new Points(
                [
                    Passage.Of($"Double both distances of the instant centre. The line stays, and so does the percent: only the slope counts, not the length."),
                    Passage.Of($"Raise the centre of gravity. The neutral line gets steeper and the percent falls, though no bar was touched."),
                    Passage.Of($"Make the bars parallel. The instant centre is infinitely far away, and there is a percent all the same: the line from the contact patch runs parallel to the bars."),
                    Passage.Of($"Put the instant centre behind the axle and above the ground. The line falls towards the front: the percent is negative."),
                ]),
            ], new Drawing("shop-floor")),
            new Note("Where this is from",
            [
                Passage.Of($"It is the drawing for a solid axle whose housing takes the drive torque ({new Source("docs/model.md, section 5")}). With independent wheels the torque goes into the body, and the line starts at another place. The names are those of the trade; that people speak of 'percent' for short is {new Source("common practice, no source")}."),
            ]),
        ]);
    }
}
