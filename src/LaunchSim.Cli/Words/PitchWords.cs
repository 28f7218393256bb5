using LaunchSim.Cli.Output;
using LaunchSim.Figures;

namespace LaunchSim.Cli.Words;

/// <summary>A car that goes over backwards; nothing for any other.</summary>
internal static class PitchWords
{
    // Further than this no wheelie comes down on its wheels again, rad.
    private const double Over = Math.PI / 4;

    public static void Say(FigureSet figures, Readout readout, List<string> said)
    {
        if (figures["pitch_nose_up_largest_rad"] is > Over and { } pitch && figures["pitch_nose_up_largest_time_s"] is { } at)
        {
            said.Add($"The car goes over: the body is pitched by {Readout.Angle.Text(pitch)} at {Readout.Time.Text(at)}, and nothing in the model hits the ground but the wheels; the numbers are no guide.");
        }
    }
}
