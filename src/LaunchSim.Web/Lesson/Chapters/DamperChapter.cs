using LaunchSim.Web.Lesson.Prose;

namespace LaunchSim.Web.Lesson.Chapters;

/// <summary>Why the push ends, and what the damper hands back: soft against stiff extension.</summary>
internal static class DamperChapter
{
    public static Chapter Of(LessonNumbers n)
    {
        CaseNumbers soft = n.Soft, above = n.Above, stiff = n.Stiff;
        CaseNumbers best = n.Clicks.MaxBy(click => click["lowest_rear_load_after_hit_n"].Value)!;
        Shown half = n.HalfTenth, low = soft["lowest_rear_load_after_hit_time_s"], held = stiff["lowest_rear_load_after_hit_time_s"];
        return new("damper", "Why the push ends, and what the damper hands back",
        [
            new Paragraph(Passage.Of($"The force that lifts the body presses the tyre; the force that stops the body relieves it. Two things stop it. The springs, which let go of their load as they get longer, and the dampers, which pull on both ends while they open: their {new Term("extension")}.")),
            new Paragraph(Passage.Of($"We keep the bars at {above.Percent} and turn only the knob of the rear dampers' extension: fully soft (click {soft.Click}), click {above.Click}, and fully stiff (click {stiff.Click}).")),
            new Drawing("three-dampers"),
            new Spread(
            [
                new Heading("Soft: everything at once, and then a hole"),
                new Paragraph(Passage.Of($"A soft extension lets the body go. Nearly all that the bars press arrives at the tyre: {soft.Load(half)} at {half}, and {soft["hit_n"]} at the hit. But a body that was let go has to be stopped. The gap opens to {soft["separation_peak_m"]}; at {low} the springs have given up {soft.ViaSprings(low).Size}, and the tyres are down at {soft["lowest_rear_load_after_hit_n"]}. There, and not at the start, the car comes nearest to spinning: {soft.Spare} of its grip to spare at {soft["grip_margin_lowest_time_s"]}. On the way there the load swings, for little is left to damp it.")),
                new Heading("Stiff: what the bars give, the damper takes"),
                new Paragraph(Passage.Of($"A stiff extension holds the body down. At {half} the bars press with {stiff.ViaBars(half)}, and the dampers take {stiff.ViaDampers(half).Size} of it: the tyres carry {stiff.Load(half)}, {Word.Of(stiff.Load(half), n.At.Load(half), "even less than", "hardly more than", "as much as")} those of the {n.At.Percent} car with {n.At.Load(half)}. As far as the first tenth goes, the bracket was moved for nothing: {stiff.Spare} to spare at {stiff["grip_margin_lowest_time_s"]}. The lift comes all the same, only later. The load is largest at {stiff["hit_time_s"]}, when nothing asks for it; and once the body is under way the dampers pull at the axle: at {held} they take {stiff.ViaDampers(held).Size}, and that is the low point, {stiff["lowest_rear_load_after_hit_n"]}.")),
            ], new Drawing("charts-dampers")),
            new Heading("What is handed back"),
            new Paragraph(Passage.Of($"A damper makes no load. What it takes from the tyre while it opens it takes from the body's lift as well, and a body that was lifted more slowly need not be stopped as hard. Over the whole run the tyres gain {soft.MeanGain(n.End)} on the mean with the soft extension, {above.MeanGain(n.End)} with the middle one and {stiff.MeanGain(n.End)} with the stiff one: the same, near enough. The knob only decides when.")),
            Compared(n),
            new Paragraph(Passage.Of($"Between both ends of the knob lies what one looks for: hard enough at first, not too deep afterwards. Of all the clicks, {best.Click} leaves the highest low point, {best["lowest_rear_load_after_hit_n"]}. It is not the softest, and not the stiffest. For another car, torque or track it is another click; that is what {new Typed("launchsim next")} and {new Typed("launchsim sweep")} are for.")),
        ]);
    }

    private static Table Compared(LessonNumbers n)
    {
        CaseNumbers[] cars = [n.Soft, n.Above, n.Stiff];
        Shown half = n.HalfTenth;
        return new(
            Passage.Of($"One car at {n.Above.Percent}, three clicks of the rear extension"),
            [Passage.Of($"both rear tyres"), .. cars.Select(car => Passage.Of($"{car.Letter}  click {car.Click}"))],
            [
                Row(Passage.Of($"via the bars at {half}"), car => car.ViaBars(half)),
                Row(Passage.Of($"via the dampers at {half}"), car => car.ViaDampers(half)),
                Row(Passage.Of($"load at {half}"), car => car.Load(half)),
                Row(Passage.Of($"hit"), car => car["hit_n"]),
                Row(Passage.Of($"… at"), car => car["hit_time_s"]),
                Row(Passage.Of($"low point after it"), car => car["lowest_rear_load_after_hit_n"]),
                Row(Passage.Of($"… at"), car => car["lowest_rear_load_after_hit_time_s"]),
                Row(Passage.Of($"least grip to spare"), car => car.Spare),
                Row(Passage.Of($"… at"), car => car["grip_margin_lowest_time_s"]),
                Row(Passage.Of($"largest axle torque that holds"), car => car.HeldTorque),
                Row(Passage.Of($"mean gain of load, whole run"), car => car.MeanGain(n.End)),
            ]);

        Row Row(Passage name, Func<CaseNumbers, Shown> read) => new(name, [.. cars.Select(car => Passage.Of($"{read(car)}"))]);
    }
}
