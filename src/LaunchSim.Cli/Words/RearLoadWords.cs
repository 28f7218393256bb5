using LaunchSim.Cli.Output;
using LaunchSim.Figures;

namespace LaunchSim.Cli.Words;

/// <summary>The hit and the low point after it, both rear tyres together, against the standing car.</summary>
internal static class RearLoadWords
{
    public static void Say(FigureSet figures, Readout readout, List<string> said)
    {
        if (figures["rear_tire_load_static_n"] is not { } standing || figures["hit_n"] is not { } hit || figures["hit_time_s"] is not { } hitAt
            || figures["lowest_rear_load_after_hit_n"] is not { } low || figures["lowest_rear_load_after_hit_time_s"] is not { } lowAt)
        {
            return;
        }

        Scale force = readout.Force;
        said.Add(force.IsZero(hit - standing)
            ? $"The hit: there is none; in the first 0.3 s the rear tyres never carry more than the {force.Text(standing)} of the standing car."
            : $"The hit: the rear tyres carry {force.Text(hit)} at most in the first 0.3 s, at {Readout.Time.Text(hitAt)}, which is {Against(hit, standing, force)} the standing car's {force.Text(standing)}.");
        said.Add(low <= 0
            ? $"The low point after it: the rear tyres carry nothing at {Readout.Time.Text(lowAt)}."
            : $"The low point after it: {force.Text(low)} at {Readout.Time.Text(lowAt)}, which is {Against(low, standing, force)} the standing car's.");
    }

    private static string Against(double load, double standing, Scale force) => force.IsZero(load - standing) ? "the same as"
        : load > standing ? $"{force.Text(load - standing)} above"
        : $"{force.Text(standing - load)} below";
}
