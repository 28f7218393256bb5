using LaunchSim.Web.Lesson.Prose;

namespace LaunchSim.Web.Lesson.Chapters;

/// <summary>Why both ends should come up in step: one car that does, one that does not.</summary>
internal static class StepChapter
{
    public static Chapter Of(LessonNumbers n)
    {
        CaseNumbers above = n.Above, other = n.OutOfStep;
        CaseNumbers best = n.Clicks.MaxBy(click => click["lowest_rear_load_after_hit_n"].Value)!;
        CaseNumbers sparest = n.Clicks.MaxBy(click => click.Spare.Value)!;
        CaseNumbers slowest = n.Clicks.MaxBy(click => click["front_rise_t50_s"].Value)!, quickest = n.Clicks.MinBy(click => click["front_rise_t50_s"].Value)!;
        Shown at = other["front_rise_t50_s"], rear = other.Rise("rear", at);
        return new("step", "Both ends in step",
        [
            new Paragraph(Passage.Of($"A camera beside the track sees both ends of the body come up. When has each of them half of its {new Term("rise")}? The time between the two is the {new Term("rise lag")}: positive when the front is late, negative when the rear is. With click {above.Click} the ends come up nearest to together, with a lag of {above["rise_lag_s"]}. With click {other.Click} it is {other["rise_lag_s"]}.")),
            new Drawing("two-steps"),
            new Spread(
            [
                new Heading("What it does to the body"),
                new Paragraph(Passage.Of($"The car that is out of step first turns and then lifts. When its front has half of its rise, at {at}, its rear stands {rear.Size} {Word.Of(rear, rear.Size, "lower", "higher", "higher")} than it stood, and the body is pitched by {other.Pitch(at)}. The car in step, at the same instant, has come up by {above.Rise("rear", at)} at the rear and is pitched by {above.Pitch(at)}. At the most the two pitch by {other["pitch_nose_up_largest_rad"]} and {above["pitch_nose_up_largest_rad"]}.")),
                new Heading("What it does to the tyre"),
                new Paragraph(Passage.Of($"The table has every click of the knob. The front does not care: it has half of its rise between {quickest["front_rise_t50_s"]} and {slowest["front_rise_t50_s"]}, whatever the rear does, for its time is made by the load that moves and by its own springs and dampers. So the lag tells how quickly the rear is lifted, by a clock that stands at the front. Far ahead of that clock, and the body was thrown and has to be caught. Far behind, and it was held down while the tyres needed the push.")),
            ], new Drawing("charts-steps")),
            Clicks(n),
            new Paragraph(Passage.Of($"Of all clicks, {best.Click} has the highest low point after the hit, and {sparest.Click} keeps the most grip in reserve. The click that is nearest to in step is {above.Click}. They lie side by side; the farther from them, the worse is one or the other. That is what people mean when they want both ends to come up in step.")),
            new Note("Common practice, no source",
            [
                Passage.Of($"'Both ends up together' is the trade's rule. No law of mechanics asks for a lag of nothing: the runs here show that for this car it lies where hit and low point are in balance. A car with other springs in front has another clock, and a car below 100 % has no rise at the rear that a lag could be read from."),
            ]),
        ]);
    }

    private static Table Clicks(LessonNumbers n) => new(
        Passage.Of($"One car at {n.Above.Percent}, every click of the rear extension"),
        [Passage.Of($"click"), Passage.Of($"rise lag"), Passage.Of($"hit"), Passage.Of($"low point"), Passage.Of($"load unrest"), Passage.Of($"largest pitch"), Passage.Of($"grip to spare")],
        [.. n.Clicks.Select(click => new Row(
            Passage.Of($"{click.Click}"),
            [
                Passage.Of($"{click["rise_lag_s"]}"), Passage.Of($"{click["hit_n"]}"), Passage.Of($"{click["lowest_rear_load_after_hit_n"]}"), Passage.Of($"{click["load_unrest_n"]}"),
                Passage.Of($"{click["pitch_nose_up_largest_rad"]}"), Passage.Of($"{click.Spare}"),
            ],
            IsMarked: click == n.Above))]);
}
