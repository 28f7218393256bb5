using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>What a model in one plane cannot know, and the caution that belongs to every result.</summary>
public static class LimitWords
{
    /// <summary>The caution.</summary>
    public const string Caution =
        "Caution: a launch can hurt people. The rules of your class, rated parts and qualified people come first; a model is a guide, the pass is the judge.";

    /// <summary>What the model leaves out.</summary>
    /// <param name="figures">The launch's figures.</param>
    /// <param name="oneGrip">Whether the track has one grip everywhere.</param>
    /// <param name="readout">The units.</param>
    /// <param name="said">Takes the sentences.</param>
    public static void Say(FigureSet figures, bool oneGrip, Readout readout, List<string> said)
    {
        said.Add("Left and right are taken as equal.");
        said.Add($"Driveshaft twist, preload and anti-roll bar are not in it; {Torque(figures, readout)}.");
        said.Add("Tyre shake is not predicted: if the car shakes, lift.");
        said.Add(oneGrip ? "One grip is taken everywhere on the track; a table of grip by distance can be entered." : "Grip is that of the table by distance, the same on the left and on the right.");
        said.Add("Nothing is said of stability, braking and the shut-down.");
    }

    private static string Torque(FigureSet figures, Readout readout)
    {
        if (figures["driveshaft_torque_largest_nm"] is { } shaft)
        {
            return $"the driveshaft carries {readout.Torque.Text(shaft)} at its largest";
        }

        return figures["axle_torque_largest_nm"] is { } axle
            ? $"the axle shafts together carry {readout.Torque.Text(axle)} at their largest, the driveshaft that over the final drive"
            : "the driveline carried no torque in this run";
    }
}
