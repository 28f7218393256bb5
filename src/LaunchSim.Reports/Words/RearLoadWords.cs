using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>The hit and the low point after it, both rear tyres together, against the standing car.</summary>
internal static class RearLoadWords
{
    public static void Say(FigureSet figures, Readout readout, List<Sentence> said)
    {
        if (figures["rear_tire_load_static_n"] is not { } standing || figures["hit_n"] is not { } hit || figures["hit_time_s"] is not { } hitAt
            || figures["lowest_rear_load_after_hit_n"] is not { } low || figures["lowest_rear_load_after_hit_time_s"] is not { } lowAt)
        {
            return;
        }

        Scale force = readout.Force;
        string opening = Opening.Of(figures, 0.3), cut = InShift(figures, lowAt), inShift = cut.Length > 0 ? "_in_shift" : "";
        said.Add(force.IsZero(hit - standing)
            ? new("hit.none", $"The hit: there is none; {opening} the rear tyres never carry more than the {force.Text(standing)} of the standing car.")
            : new($"hit.{AgainstKey(hit, standing, force)}", $"The hit: the rear tyres carry {force.Text(hit)} at most {opening}, at {Readout.Time.Text(hitAt)}, which is {Against(hit, standing, force)} the standing car's {force.Text(standing)}."));
        said.Add(low <= 0
            ? new($"low.nothing{inShift}", $"The low point after it: the rear tyres carry nothing at {Readout.Time.Text(lowAt)}{cut}.")
            : new($"low.{AgainstKey(low, standing, force)}{inShift}", $"The low point after it: {force.Text(low)} at {Readout.Time.Text(lowAt)}{cut}, which is {Against(low, standing, force)} the standing car's."));
    }

    // Without torque the load goes back of itself: that low point is the gearbox's, not the launch's.
    private static string InShift(FigureSet figures, double time)
    {
        foreach (LaunchEvent shift in figures.Events)
        {
            if (shift.Kind == LaunchEventKind.Shift && shift.Time <= time && !(shift.Until < time))
            {
                return ", in the middle of a shift";
            }
        }

        return "";
    }

    private static string AgainstKey(double load, double standing, Scale force) =>
        force.IsZero(load - standing) ? "same" : load > standing ? "above" : "below";

    private static string Against(double load, double standing, Scale force) => force.IsZero(load - standing) ? "the same as"
        : load > standing ? $"{force.Text(load - standing)} above"
        : $"{force.Text(standing - load)} below";
}
