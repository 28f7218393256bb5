using LaunchSim.Reports.Numbers;
using LaunchSim.Vehicle;

namespace LaunchSim.Studies.Comparing;

/// <summary>Why a set-up launches differently: one or two plain sentences with numbers.</summary>
public static class CauseWords
{
    /// <summary>The sentences.</summary>
    /// <param name="difference">The two set-ups.</param>
    /// <param name="readout">The units.</param>
    public static IReadOnlyList<string> Of(SetUpDifference difference, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(difference);
        ArgumentNullException.ThrowIfNull(readout);
        Cause cause = difference.Cause;
        if (!cause.IsOfNote)
        {
            return [$"Nothing of note changes from {difference.First.Letter} to {difference.Other.Letter}: the rear tyres' load by less than {readout.Force.Text(cause.LeastLoad)}, the travel of both ends by less than {Apart(readout)}, the dampers' force on the mean by less than {readout.Force.Text(cause.LeastDamperForce)}."];
        }

        string[] clauses = [Loads(difference, readout), string.Join("; ", new[] { Parts(cause, readout), Dampers(cause, readout) }.Where(text => text.Length > 0))];
        return [.. clauses.Where(text => text.Length > 0).Select(text => $"{char.ToUpperInvariant(text[0])}{text[1..]}.")];
    }

    private static string Loads(SetUpDifference difference, Readout readout)
    {
        LoadChange[] noted = [.. difference.Cause.NotedLoads];
        LoadChange? hit = Array.Find(noted, load => load.Moment == LoadMoment.Hit), first = Array.Find(noted, load => load.Moment == LoadMoment.First), low = Array.Find(noted, load => load.Moment == LoadMoment.LowPoint);
        var said = new List<string>();
        string other = difference.Other.Letter;
        Scale force = readout.Force;
        if (hit is not null)
        {
            said.Add($"the rear tyres of {other} are hit {(hit.Change > 0 ? "harder" : "softer")}, {force.Text(hit.After.Load)} for {force.Text(hit.Before.Load)}, because {Because(hit)}");
        }
        else if (first is not null)
        {
            said.Add($"in the first {Readout.Time.With(2).Text(difference.Cause.FirstPart)} the rear tyres of {other} carry {Amount(first.Change, force)} on the mean, because {Because(first)}");
        }

        if (low is not null)
        {
            string tires = said.Count > 0 ? "they carry" : $"the rear tyres of {other} carry";
            said.Add($"at the low point {tires} {Amount(low.Change, force)}, {Load(low.After.Load, force)} for {Load(low.Before.Load, force)}, because {Because(low)}");
        }

        return string.Join("; ", said);

        string Because(LoadChange load)
        {
            string reason = Path(load, load.Reason);
            double against = load.Of(load.Against);
            return Math.Sign(against) != Math.Sign(load.Change) && Math.Abs(against) >= Math.Max(difference.Cause.LeastLoad, 0.5 * Math.Abs(load.Of(load.Reason)))
                ? $"{reason}, although {Path(load, load.Against)}"
                : reason;
        }

        string Path(LoadChange load, LoadPath path) => CauseWords.Path(load, path, difference.Other.Run.Solution.Car.Car, force);
    }

    private static string Path(LoadChange load, LoadPath path, Car car, Scale force)
    {
        double before = load.Before[path], after = load.After[path], change = after - before;
        if (path == LoadPath.Standing)
        {
            return $"the car stands with {Amount(change, force)} on them";
        }

        (string name, bool isOne) = path switch
        {
            LoadPath.Links => (car.Rear.Linkage is LadderBar ? "the ladder bars" : "the links", false),
            LoadPath.Springs => ("the springs", false),
            LoadPath.Dampers => (load.Before.Stops + load.After.Stops > 0 ? "the dampers with their stops" : "the dampers", false),
            _ => car.Rear.WheelieBar is null ? ("the axle's inertia", true) : ("the wheelie bar and the axle's inertia", false),
        };
        string give = isOne ? "gives" : "give", take = isOne ? "takes" : "take", they = isOne ? "it" : "they";
        bool gave = force.IsZero(before) ? after > 0 : before > 0, gives = force.IsZero(after) ? before > 0 : after > 0;
        return (gave, gives) switch
        {
            (true, true) => $"{name} {give} {Amount(change, force)}",
            (false, false) => $"{name} {take} {Amount(-change, force)}",
            (false, true) => $"{name} {give} {force.Text(after)} where {they} took {force.Text(-before)}",
            (true, false) => $"{name} {take} {force.Text(-after)} where {they} gave {force.Text(before)}",
        };
    }

    private static string Parts(Cause cause, Readout readout)
    {
        if (cause.Parting is not { } parting)
        {
            return "";
        }

        Scale travel = readout.Travel;
        string end = parting.IsRear ? "rear" : "front";
        return $"the two part first at {Readout.Time.Text(parting.Time)}, with the {end} {(parting.IsOpening ? "opening" : "closing")}, {Gap(parting.After)} for {Gap(parting.Before)}";

        string Gap(double gap) => travel.IsZero(gap) ? "not open" : gap > 0 ? $"{travel.Text(gap)} open" : $"{travel.Text(-gap)} closed";
    }

    private static string Dampers(Cause cause, Readout readout)
    {
        if (cause.NotedDamper is not { } damper)
        {
            return "";
        }

        string which = damper.Motion is DamperMotion.RearOpening or DamperMotion.RearClosing ? "rear" : "front";
        string way = damper.Motion is DamperMotion.RearOpening or DamperMotion.FrontOpening ? "opening" : "closing";
        Scale time = Readout.Time.With(2);
        string when = damper.From > 0 ? $"from {time.Text(damper.From)} to {time.Text(damper.Until)}" : $"in the first {time.Text(damper.Until)}";
        string energy = Readout.Energy.With(0).IsZero(damper.Energy) ? "" : $" and take {Readout.Energy.With(0).Text(Math.Abs(damper.Energy))} {(damper.Energy > 0 ? "more" : "less")}";
        return $"{when} the {which} dampers, {way}, hold against it with {Amount(damper.MeanForce, readout.Force)} on the mean{energy}";
    }

    private static string Apart(Readout readout) => readout.IsShop ? "1/16 in" : readout.Travel.Text(Parting.Apart);

    private static string Load(double load, Scale force) => load <= 0 ? "nothing" : force.Text(load);

    private static string Amount(double change, Scale force) => $"{force.Text(Math.Abs(change))} {(change > 0 ? "more" : "less")}";
}
