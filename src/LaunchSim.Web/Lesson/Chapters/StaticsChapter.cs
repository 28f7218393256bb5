using LaunchSim.Reports.Numbers;
using LaunchSim.Web.Lesson.Prose;

namespace LaunchSim.Web.Lesson.Chapters;

/// <summary>Free bodies of axle and body; what the bars carry; what holds when; what the drawing leaves out.</summary>
internal static class StaticsChapter
{
    public static Chapter Of(LessonNumbers n)
    {
        CaseNumbers above = n.Above;
        AxleStatics statics = n.Statics(above);
        Scale force = n.Readout.Force;
        Shown transfer = LessonNumbers.Drawn("transfer_n", "thrust times height of the centre of gravity over wheelbase", statics.Transfer, force);
        Shown push = LessonNumbers.Drawn("bars_push_n", "thrust times the slope of the line to the instant centre", statics.BarsPush, force);
        Shown apart = LessonNumbers.Drawn("apart_n", "what the bars press beyond the transfer", statics.Apart, force);
        Shown passes = LessonNumbers.Drawn("passes_below_m", "how far the line of the push passes below the centre of gravity", statics.CentreOfGravityHeight - (statics.Slope * n.CentreOfGravityAhead), n.Readout.Place);
        Shown beyond = LessonNumbers.Drawn("beyond_100", "percent beyond 100", above.Percent.Value - 100, Readout.Percent);
        return new("statics", "Cut the axle free",
        [
            new Paragraph(Passage.Of($"Statics has one trick: cut a part free, draw every force that touches it, and ask that they balance. We do it three times, and we only look at what changes from the standing car. Its weight and the load on its springs were in balance before, and stay out of it.")),
            new Spread(
            [
                new Heading("First cut: the axle with its wheels"),
                new Paragraph(Passage.Of($"Three things touch it: the ground, the bars, and the springs with their dampers. The ring gear turns the wheels forward and, with the same torque, turns the housing nose up. Both are inside the cut, so they cancel. What is left of the engine is the {new Term("thrust")} with which the ground pushes at the contact patch.")),
                new Paragraph(Passage.Of($"That torque is still felt: because of it the bars are loaded in opposite ways. The lower bar pushes the body forward, the upper one pulls it back, and the lower one wins by exactly the thrust.")),
                new Paragraph(Passage.Of($"A bar can only push or pull along its own line, and both lines go through the instant centre. So take the balance of turning about that point: there the bars have no lever at all. The thrust has one, the height of the instant centre. What has to hold against it is the load at the contact patch, whose lever is the distance of the instant centre. Hence the bars press the axle down with thrust × height ÷ distance: thrust times the slope of the line.")),
            ], new Drawing("free-axle")),
            new Spread(
            [
                new Heading("Second cut: the body"),
                new Paragraph(Passage.Of($"What the bars do to the axle they do to the body the other way round. They push it forward with the thrust and lift it with the same force with which they press the axle. Both together act along the line from the contact patch to the instant centre: the body is pushed as if by a pole that stands on the contact patch.")),
                new Paragraph(Passage.Of($"In the lesson's car the pole's line passes {passes} below the centre of gravity. That lever is what turns the nose up. A steeper line passes nearer: it lifts the rear more and turns the nose less.")),
                new Heading("Third cut: the whole car"),
                new Paragraph(Passage.Of($"Now the bars are inside. The ground pushes forward at the bottom, the mass resists at the height of the centre of gravity, and the difference has to come from the wheels: load moves from the front tyres to the rear ones. This {new Term("transfer")} is thrust × height of the centre of gravity ÷ wheelbase: thrust times the slope of the neutral line. No bar is in it.")),
                new Paragraph(Passage.Of($"Lay both results side by side, and percent has a meaning that you can weigh: {new Term("it is how much of the transfer the bars carry")}. A thrust of {n.Thrust} moves {transfer}. At {above.Percent} the bars press with {push}. The {beyond} that are over, {apart}, push body and axle apart: they lift the body and press the tyres with the same force.")),
            ], new Drawing("free-body")),
            new Heading("Your numbers"),
            new Drawing("balance"),
            new Note("What holds in statics, and what only for the first instant",
            [
                Passage.Of($"In statics: the thrust is steady and nothing moves up or down any more. Then the rear tyres carry what they carried standing, and the transfer; whatever the percent. Percent only says who brings it. Below 100 % the springs bring the rest, and have to be shorter for it: the body has come down on the axle. Above 100 % the springs are relieved of what is over, and have to be longer: the body has moved off the axle."),
                Passage.Of($"For the first instant: the thrust is there, but nothing has moved. The springs are as long as before and carry what they carried before; the dampers stand still and carry nothing. Then the bars are alone, and the tyres are pressed with the percent of the transfer: with less than they will carry in the end, or with more. More is possible because the body is being thrown upward: the ground holds up its weight and speeds it up as well. It lasts as long as the body gains speed, and no longer."),
                Passage.Of($"Even the first instant takes its time: the torque needs a moment to come, and a tyre has to be squashed before the ground feels more of it. And everything between these two is motion, with masses, springs, dampers and tyres. That is the next chapter."),
            ]),
            LeftOut(n),
            new Note("Common practice, no source",
            [
                Passage.Of($"The trade calls the pushing apart {new Term("separation")}, the blow with which it presses the tyres {new Term("hit")}, and says that more than 100 % plants the tyre. Until here that is what the statics says, too, for the first instant."),
            ]),
        ]);
    }

    // What a drawing cannot know, with the run's own numbers: they add up.
    private static Spread LeftOut(LessonNumbers n)
    {
        Shown at = n.Tenth;
        CaseNumbers above = n.Above;
        (Shown engine, Shown drawing, Shown wheels, Shown axleMass, Shown rest) = above.Push(at);
        return new Spread(
        [
            new Heading("What the drawing leaves out"),
            new Paragraph(Passage.Of($"The program does not use the drawing. It solves the motion of body, axle and wheels, and afterwards one can ask it what the bars press with. A tenth of a second after the release the thrust is {above.Thrust(at)} and the percent, now that the car has moved a little, {above.PercentAt(at)}. The drawing then says {drawing}, the program {engine}. The difference has names, and they are in the table.")),
            new Paragraph(Passage.Of($"The largest is the wheels. Torque that spins them up does not become thrust, but the housing feels it all the same. And a tyre under load rolls on a larger radius than the height at which its centre stands. So a solid axle is pushed apart a little more than its percent says, and a car at 100 % is not quite neutral.")),
        ],
        new Table(
            Passage.Of($"What the bars press on the axle at {at}, {above.Percent} car"),
            [Passage.Of($"part"), Passage.Of($"load")],
            [
                new Row(Passage.Of($"thrust × slope: the drawing"), [Passage.Of($"{drawing}")]),
                new Row(Passage.Of($"torque that is not thrust at this height: wheels that spin up, tyres that roll"), [Passage.Of($"{wheels}")]),
                new Row(Passage.Of($"the axle's own mass, which has to be pushed along"), [Passage.Of($"{axleMass}")]),
                new Row(Passage.Of($"the housing's own turning; springs and dampers that do not stand over the axle"), [Passage.Of($"{rest}")]),
                new Row(Passage.Of($"all together: the program"), [Passage.Of($"{engine}")], IsMarked: true),
            ]));
    }
}
