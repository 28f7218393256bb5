using LaunchSim.Web.Lesson.Prose;

namespace LaunchSim.Web.Lesson.Chapters;

/// <summary>Below, at and above 100 % from the same torque: what squat is, the first tenth of a second, and what it costs.</summary>
internal static class MotionChapter
{
    public static Chapter Of(LessonNumbers n)
    {
        CaseNumbers below = n.Below, at = n.At, above = n.Above;
        return new("motion", "The same in motion",
        [
            new Paragraph(Passage.Of($"Three cars that differ in one number: how high the bracket of the upper bar sits on the body. At {below.Bracket} above the ground the car has {below.Percent}, at {at.Bracket} it has {at.Percent}, at {above.Bracket} it has {above.Percent}. Mass, springs, dampers and tyres are the same, and so is the torque: {n.Torque} at the axle, all of it there after {n.TorqueTime}, and held.")),
            Predict(n),
            new Drawing("three-cars"),
            new Spread(
            [
                new Heading("What squat is"),
                new Paragraph(Passage.Of($"{new Term("Squat")} is body and axle moving together. Below 100 % the bars bring less than the transfer. The springs have to bring the rest, and a spring carries more only when it is shorter. The {below.Percent} car closes by {below["squat_peak_m"].Size}, at {below["squat_peak_time_s"]}. The {above.Percent} car opens by {above["separation_peak_m"]}.")),
                new Paragraph(Passage.Of($"Do not look at the body for it. The tyres are pressed flatter in all three cars, and the body comes down with them: its rear end by {below.RearFall} at most in the {below.Percent} car and by {at.RearFall} in the {at.Percent} car, which does not squat at all. Squat is in the gap between wheel and body, not in the height of the bumper.")),
            ], new Drawing("chart-gap")),
            new Spread(
            [
                new Heading("The first tenth of a second"),
                new Paragraph(Passage.Of($"Here is what the steeper line is for. The torque is there after {n.TorqueTime}; the tyres need their load by then. In that time the body has hardly moved, and of the three ways to bring load only the bars work without movement.")),
                FirstTenth(n),
                new Paragraph(Passage.Of($"At {n.HalfTenth} the {above.Percent} car's rear tyres carry {above.Load(n.HalfTenth).Apart(below.Load(n.HalfTenth))} more than those of the {below.Percent} car; on the mean of the first {n.Tenth} they gain {above.MeanGain(n.Tenth)} in the place of {below.MeanGain(n.Tenth)}. All three push with the same thrust. So the {below.Percent} car comes nearest to spinning, with {below.Spare} of its grip to spare at {below["grip_margin_lowest_time_s"]}; the {above.Percent} car has {above.Spare} left at its worst. Or told in torque: with the same rise in time the first holds {below.HeldTorque}, the other {above.HeldTorque}.")),
                new Paragraph(Passage.Of($"{new Term("A steeper line does not move more load. It moves it sooner.")} In the end, when everything has come to rest, the three carry {below.Load(n.End)}, {at.Load(n.End)} and {above.Load(n.End)}. The drawing said the same for all: the standing {n.RearLoad} and a transfer of {above.DrawnTransfer}. That the program ends {above.EndGain.Apart(above.DrawnTransfer)} higher has its reasons in the drawing, too: the car has come up, its centre of gravity by {above.CentreRise}, and the lever is longer; this alone is {above.RiseShare}. The rest is wheels that spin up, and tyres that roll.")),
            ], new Drawing("chart-load")),
            new Heading("The bill"),
            new Paragraph(Passage.Of($"What is pressed on the tyre beyond the transfer is borrowed. It was there because the body was being thrown upward; the body cannot be thrown for ever. When it slows down, the ground carries less than its weight, and the tyres get that much less. After their hit the tyres of the {above.Percent} car fall from {above["hit_n"]} at {above["hit_time_s"]} to a {new Term("low point")} of {above["lowest_rear_load_after_hit_n"]} at {above["lowest_rear_load_after_hit_time_s"]}; those of the {below.Percent} car from {below["hit_n"]} to {below["lowest_rear_load_after_hit_n"]}. How deep that low point is, is the dampers' business.")),
            new Drawing("charts-paths"),
        ]);
    }

    private static Question Predict(LessonNumbers n)
    {
        CaseNumbers[] cars = [n.Below, n.At, n.Above];
        Shown at = n.Tenth;
        int most = Enumerable.Range(0, cars.Length).MaxBy(i => cars[i].Load(at).Value);
        int least = Enumerable.Range(0, cars.Length).MinBy(i => cars[i]["lowest_rear_load_after_hit_n"].Value);
        CaseNumbers[] others = [.. cars.Where(car => car != cars[most])];
        var same = new Word(most == least ? "the same car" : "another one");
        return new(
            Passage.Of($"Before you play: a tenth of a second after the release, whose rear tyres carry the most? And whose carry the least later on?"),
            [
                Passage.Of($"At {at} it is the {cars[most].Percent} car, with {cars[most].Load(at)}; the others have {others[0].Load(at)} ({others[0].Percent}) and {others[1].Load(at)} ({others[1].Percent})."),
                Passage.Of($"The lowest load after the hit has {same}: the one with {cars[least].Percent}, {cars[least]["lowest_rear_load_after_hit_n"]} at {cars[least]["lowest_rear_load_after_hit_time_s"]}. What comes early has to be paid back. Now play, and watch the gap at the rear wheel."),
            ],
            [.. cars.Select(car => Passage.Of($"the {car.Percent} car carries the most")), Passage.Of($"all three the same, for the thrust is the same")],
            most);
    }

    private static Table FirstTenth(LessonNumbers n)
    {
        CaseNumbers[] cars = [n.Below, n.At, n.Above];
        return new(
            Passage.Of($"The first {n.Tenth}, and what comes of it"),
            [Passage.Of($"both rear tyres"), .. cars.Select(car => Passage.Of($"{car.Letter}  {car.Percent}"))],
            [
                Row(Passage.Of($"load at {n.HalfTenth}"), car => car.Load(n.HalfTenth)),
                Row(Passage.Of($"load at {n.Tenth}"), car => car.Load(n.Tenth)),
                Row(Passage.Of($"mean gain of load, first {n.Tenth}"), car => car.MeanGain(n.Tenth)),
                Row(Passage.Of($"gap opened at {n.Tenth}"), car => car.Gap(n.Tenth)),
                Row(Passage.Of($"least grip to spare"), car => car.Spare),
                Row(Passage.Of($"… at"), car => car["grip_margin_lowest_time_s"]),
                Row(Passage.Of($"largest axle torque that holds"), car => car.HeldTorque),
                Row(Passage.Of($"low point after the hit"), car => car["lowest_rear_load_after_hit_n"]),
            ]);

        Row Row(Passage name, Func<CaseNumbers, Shown> read) => new(name, [.. cars.Select(car => Passage.Of($"{read(car)}"))]);
    }
}
