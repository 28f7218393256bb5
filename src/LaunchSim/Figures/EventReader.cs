using LaunchSim.Dynamics;
using LaunchSim.Launch;

namespace LaunchSim.Figures;

/// <summary>Reads what happened off the modes that held in the steps: their changes are located events of the launch.</summary>
internal static class EventReader
{
    private static readonly Watch[] Watches =
    [
        new(LaunchEventKind.RearTopStop, (in Modes m) => m.RearTop != ContactMode.Apart, Signal.RearTopForce),
        new(LaunchEventKind.RearBottomStop, (in Modes m) => m.RearBottom != ContactMode.Apart, Signal.RearBottomForce),
        new(LaunchEventKind.FrontTopStop, (in Modes m) => m.FrontTop != ContactMode.Apart, Signal.FrontTopForce),
        new(LaunchEventKind.FrontBottomStop, (in Modes m) => m.FrontBottom != ContactMode.Apart, Signal.FrontBottomForce),
        new(LaunchEventKind.FrontTireOff, (in Modes m) => m.FrontTire != ContactMode.Pressing, Signal.FrontClearance),
        new(LaunchEventKind.RearTireOff, (in Modes m) => m.RearTire != ContactMode.Pressing, Signal.RearClearance),
        new(LaunchEventKind.RearSpringLoose, (in Modes m) => m.RearSpringLoose, null),
        new(LaunchEventKind.FrontSpringLoose, (in Modes m) => m.FrontSpringLoose, null),
        new(LaunchEventKind.WheelieBar, (in Modes m) => m.WheelieBar != ContactMode.Apart, Signal.WheelieBar),
        new(LaunchEventKind.ClutchLocked, (in Modes m) => !m.Shifting && m.Clutch == ClutchMode.Locked, null),
        new(LaunchEventKind.RearGripFloor, (in Modes m) => m.RearOnFloor, null),
        new(LaunchEventKind.FrontGripFloor, (in Modes m) => m.FrontOnFloor, null),
    ];

    /// <summary>What happened and when as the modes tell, without the rear slip and without amounts other than a shift's.</summary>
    /// <param name="launch">The launch.</param>
    /// <param name="found">Receives the events.</param>
    public static void ReadSpells(LaunchReading launch, List<LaunchEvent> found)
    {
        LaunchSolution solution = launch.Solution;
        found.Clear();
        Span<double> since = stackalloc double[Watches.Length];
        since.Fill(double.NaN);
        double shiftSince = double.NaN;
        int gear = 0;
        foreach (int step in launch.Changes)
        {
            Modes modes = solution.Modes(step);
            double time = solution.Step(step).Start;
            for (int i = 0; i < Watches.Length; i++)
            {
                bool holds = Watches[i].Holds(modes);
                if (holds == double.IsNaN(since[i]))
                {
                    if (!holds)
                    {
                        found.Add(new(Watches[i].Kind, since[i], time, null, null));
                    }

                    since[i] = holds ? time : double.NaN;
                }
            }

            // A shift that takes no time shows in the gear alone.
            if (modes.Gear != gear)
            {
                found.Add(new(LaunchEventKind.Shift, double.IsNaN(shiftSince) ? time : shiftSince, time, modes.Gear + 1, null));
                gear = modes.Gear;
                shiftSince = double.NaN;
            }

            if (modes.Shifting && double.IsNaN(shiftSince))
            {
                shiftSince = time;
            }
        }

        for (int i = 0; i < Watches.Length; i++)
        {
            if (!double.IsNaN(since[i]))
            {
                found.Add(new(Watches[i].Kind, since[i], null, null, null));
            }
        }

        if (!double.IsNaN(shiftSince))
        {
            found.Add(new(LaunchEventKind.Shift, shiftSince, null, gear + 2, null));
        }

        Sort(found);
    }

    /// <summary>All events with their amounts.</summary>
    /// <param name="launch">The launch.</param>
    /// <param name="spells">What <see cref="ReadSpells"/> found.</param>
    public static LaunchEvents All(LaunchReading launch, LaunchEvents spells)
    {
        var events = new List<LaunchEvent>(spells.Count);
        foreach (LaunchEvent spell in spells)
        {
            events.Add(WithAmount(launch, spell));
        }

        AddSlip(launch, events);
        Sort(events);
        return new LaunchEvents(events);
    }

    /// <summary>The same event with its amount.</summary>
    public static LaunchEvent WithAmount(LaunchReading launch, LaunchEvent spell)
    {
        if (AmountOf(spell.Kind) is not { } signal)
        {
            return spell;
        }

        Extremum largest = launch.Largest(signal, spell.Time, spell.Until ?? double.PositiveInfinity);
        return spell with { Amount = largest.Value, AmountTime = largest.Time };
    }

    private static Signal? AmountOf(LaunchEventKind kind)
    {
        foreach (Watch watch in Watches)
        {
            if (watch.Kind == kind)
            {
                return watch.Amount;
            }
        }

        return null;
    }

    /// <summary>By time, and at one time in the order of the kinds, so that the list is the same whatever read it.</summary>
    private static void Sort(List<LaunchEvent> events) =>
        events.Sort((a, b) => a.Time != b.Time ? a.Time.CompareTo(b.Time) : a.Kind.CompareTo(b.Kind));

    private static void AddSlip(LaunchReading launch, List<LaunchEvent> found)
    {
        double peak = launch.Solution.Car.Model.RearTire.PeakSlip;
        int node = 0;
        while (launch.NextAbove(Signal.RearSlip, peak, ref node, out (double From, double To) spell))
        {
            double? until = double.IsNaN(spell.To) ? null : spell.To;
            Extremum largest = launch.Largest(Signal.RearSlip, spell.From, until ?? double.PositiveInfinity);
            found.Add(new(LaunchEventKind.RearSlipPastPeak, spell.From, until, largest.Value, largest.Time));
        }
    }

    private delegate bool Condition(in Modes modes);

    /// <summary>A kind of event, the mode in which it holds, and the signal whose largest value is its amount.</summary>
    private readonly record struct Watch(LaunchEventKind Kind, Condition Holds, Signal? Amount);
}
