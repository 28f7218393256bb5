using LaunchSim.Dynamics;
using LaunchSim.Launch;

namespace LaunchSim.Figures;

/// <summary>Reads what happened off the modes that held in the steps: their changes are located events of the launch.</summary>
internal static class EventReader
{
    private static readonly Watch[] Watches =
    [
        new(LaunchEventKind.RearTopStop, m => m.RearTop != ContactMode.Apart, Signal.RearTopForce),
        new(LaunchEventKind.RearBottomStop, m => m.RearBottom != ContactMode.Apart, Signal.RearBottomForce),
        new(LaunchEventKind.FrontTopStop, m => m.FrontTop != ContactMode.Apart, Signal.FrontTopForce),
        new(LaunchEventKind.FrontBottomStop, m => m.FrontBottom != ContactMode.Apart, Signal.FrontBottomForce),
        new(LaunchEventKind.FrontTireOff, m => m.FrontTire != ContactMode.Pressing, Signal.FrontClearance),
        new(LaunchEventKind.RearTireOff, m => m.RearTire != ContactMode.Pressing, Signal.RearClearance),
        new(LaunchEventKind.RearSpringLoose, m => m.RearSpringLoose, null),
        new(LaunchEventKind.FrontSpringLoose, m => m.FrontSpringLoose, null),
        new(LaunchEventKind.WheelieBar, m => m.WheelieBar != ContactMode.Apart, Signal.WheelieBar),
        new(LaunchEventKind.ClutchLocked, m => !m.Shifting && m.Clutch == ClutchMode.Locked, null),
        new(LaunchEventKind.RearGripFloor, m => m.RearOnFloor, null),
        new(LaunchEventKind.FrontGripFloor, m => m.FrontOnFloor, null),
    ];

    /// <summary>What happened and when, without amounts other than a shift's.</summary>
    /// <param name="launch">The launch.</param>
    /// <param name="found">Memory for the events, which goes on holding them.</param>
    public static LaunchEvents Spells(LaunchReading launch, List<LaunchEvent> found)
    {
        LaunchSolution solution = launch.Solution;
        found.Clear();
        Span<double> since = stackalloc double[Watches.Length];
        since.Fill(double.NaN);
        double shiftSince = double.NaN;
        int gear = 0;
        for (int step = 0; step < solution.Steps; step++)
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

        AddSlip(launch, found);

        // By time, and at one time in the order of the kinds, so that the list is the same whatever read it.
        found.Sort((a, b) => a.Time != b.Time ? a.Time.CompareTo(b.Time) : a.Kind.CompareTo(b.Kind));
        return new LaunchEvents(found);
    }

    /// <summary>The same events with their amounts.</summary>
    public static LaunchEvents WithAmounts(LaunchReading launch, LaunchEvents spells)
    {
        var events = new List<LaunchEvent>(spells.Count);
        foreach (LaunchEvent spell in spells)
        {
            events.Add(WithAmount(launch, spell));
        }

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
        if (kind == LaunchEventKind.RearSlipPastPeak)
        {
            return Signal.RearSlip;
        }

        foreach (Watch watch in Watches)
        {
            if (watch.Kind == kind)
            {
                return watch.Amount;
            }
        }

        return null;
    }

    private static void AddSlip(LaunchReading launch, List<LaunchEvent> found)
    {
        double peak = launch.Solution.Car.Model.RearTire.PeakSlip;
        int node = 0;
        while (launch.NextAbove(Signal.RearSlip, peak, ref node, out (double From, double To) spell))
        {
            found.Add(new(LaunchEventKind.RearSlipPastPeak, spell.From, double.IsNaN(spell.To) ? null : spell.To, null, null));
        }
    }

    /// <summary>A kind of event, the mode in which it holds, and the signal whose largest value is its amount.</summary>
    private readonly record struct Watch(LaunchEventKind Kind, Func<Modes, bool> Holds, Signal? Amount);
}
