using LaunchSim.Reports.Numbers;
using LaunchSim.Web.Lesson.Prose;

namespace LaunchSim.Web.Lesson.Chapters;

/// <summary>Small questions with answers out of the drawing and the runs.</summary>
internal static class QuestionsChapter
{
    public static Chapter Of(LessonNumbers n) => new("questions", "Questions",
    [
        new Paragraph(Passage.Of($"Answer first, then look. The numbers in the answers are those of the drawing and of the launches above.")),
        Lowered(n),
        Parallel(n),
        Pushed(n),
        MoreLoad(n),
        TwoKnobs(n),
        Bumper(n),
        LowPoint(n),
    ]);

    private static Question Lowered(LessonNumbers n)
    {
        AxleStatics before = n.Statics(n.Above);
        Shown by = LessonNumbers.Drawn("lowered_m", "how far the centre of gravity is lowered", n.Readout.IsShop ? 0.0254 : 0.025, n.Readout.Place.With(0));
        AxleStatics after = before with { CentreOfGravityHeight = before.CentreOfGravityHeight - by.Value };
        Shown percent = LessonNumbers.Drawn("lowered_percent", "percent with the lower centre of gravity", after.Percent, Readout.Percent);
        return new(
            Passage.Of($"The centre of gravity of the {n.Above.Percent} car comes down by {by}. No bar is touched. What is the percent now, and does the hit get harder?"),
            [Passage.Of($"{percent}: the neutral line is flatter, the line to the instant centre is the same. In the first instant the tyres are pressed just as hard as before, with thrust times the same slope. What got less is the transfer: more of the same push is over, and in the end the tyres carry less.")],
            []);
    }

    private static Question Parallel(LessonNumbers n)
    {
        AxleStatics neutral = n.Statics(n.At);
        Shown climb = LessonNumbers.Drawn("parallel_climb_rad", "climb of two parallel bars that gives 100 %", Math.Atan(neutral.NeutralSlope), Readout.Angle);
        return new(
            Passage.Of($"Both bars are parallel, and climb to the front by {climb}. Where is the instant centre, and what is the percent?"),
            [Passage.Of($"There is none, or it is infinitely far away. But the line from the contact patch has a direction, that of the bars, and {climb} is the slope of this car's neutral line ({n.CentreOfGravity} over {n.Wheelbase}). So it is 100 %.")],
            []);
    }

    private static Question Pushed(LessonNumbers n)
    {
        AxleStatics statics = n.Statics(n.Above);
        Shown apart = LessonNumbers.Drawn("apart_n", "what the bars press beyond the transfer", statics.Apart, n.Readout.Force);
        Shown gap = LessonNumbers.Drawn("settled_gap_m", "what is over, over the rate of the rear springs at the wheels", statics.Apart / n.Rates.Rear, n.Readout.Travel);
        CaseNumbers above = n.Above;
        Shown over = above.EndOver, fits = above.EndGap(n.Rates);
        return new(
            Passage.Of($"A thrust of {n.Thrust}, {above.Percent}: with how much are body and axle pushed apart, and how far has the gap opened once all is at rest? The drawing will do."),
            [
                Passage.Of($"{apart} are over. The rear springs give up as much when the gap has opened by {gap}."),
                Passage.Of($"The run ends with {above.Gap(n.End)}. As the body comes up the bars turn, and the percent with them: it is {above.PercentAt(n.End)} there, and the drawing leaves out what you know. With the program's own {over} that are over, the same springs open by {fits}: the rule holds, the percent did not stand still."),
            ],
            []);
    }

    private static Question MoreLoad(LessonNumbers n) => new(
        Passage.Of($"Somebody says: 'more percent, more weight on the rear tyres'. True?"),
        [Passage.Of($"For the first tenth of a second, yes: {n.Above.Load(n.Tenth)} against {n.Below.Load(n.Tenth)}. In the end, no: {n.Above.Load(n.End)} against {n.Below.Load(n.End)}. How much load moves is decided by thrust, height of the centre of gravity and wheelbase; the percent decides by which way, and so how soon.")],
        []);

    private static Question TwoKnobs(LessonNumbers n)
    {
        Shown half = n.HalfTenth;
        return new(
            Passage.Of($"You move the bracket from {n.At.Percent} to {n.Above.Percent} and turn the rear extension fully stiff, so that the car does not separate so wildly. What have you gained for the moment when the torque is there?"),
            [Passage.Of($"{Word.Of(n.Stiff.Load(half), n.At.Load(half), "Nothing", "Next to nothing", "Nothing")}: {n.Stiff.Load(half)} at {half} in the place of {n.At.Load(half)}. Of the {n.Stiff.ViaBars(half)} that the bars bring the dampers take {n.Stiff.ViaDampers(half).Size}. The torque that holds went from {n.At.HeldTorque} to {n.Stiff.HeldTorque}; with click {n.Above.Click} it is {n.Above.HeldTorque}.")],
            []);
    }

    private static Question Bumper(LessonNumbers n) => new(
        Passage.Of($"On a video the rear bumper of the {n.Below.Percent} car comes down by {n.Below.RearFall}. How much of that is squat?"),
        [Passage.Of($"At most {n.Below["squat_peak_m"].Size}: by so much the gap closes. The rest is the tyres, which are pressed flatter. The {n.At.Percent} car comes down by {n.At.RearFall} without any squat.")],
        []);

    private static Question LowPoint(LessonNumbers n) => new(
        Passage.Of($"With soft extension the hit is the hardest of all. Why is that not the best launch?"),
        [Passage.Of($"Because of what follows: {n.Soft["hit_n"]} at {n.Soft["hit_time_s"]}, but {n.Soft["lowest_rear_load_after_hit_n"]} at {n.Soft["lowest_rear_load_after_hit_time_s"]}, and the thrust is the same at both. The tyres are nearest to spinning in the hole, not at the start: {n.Soft.Spare} to spare at {n.Soft["grip_margin_lowest_time_s"]}. With click {n.Above.Click} it is {n.Above.Spare}.")],
        []);
}
