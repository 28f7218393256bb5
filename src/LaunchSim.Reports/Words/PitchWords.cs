using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>A car that stands up so far that the model no longer holds; nothing below that.</summary>
internal static class PitchWords
{
    // Body and ground never meet in the model; long before this a real car's tail would be on the track.
    private const double TooFar = 30 * Math.PI / 180;

    public static void Say(FigureSet figures, Readout readout, List<Sentence> said)
    {
        if (figures["pitch_nose_up_largest_rad"] is > TooFar and var pitch)
        {
            said.Add(new("pitch.goes_over", $"The car goes over: it pitches up to {Readout.Angle.Text(pitch)} by {Readout.Time.Text(figures["pitch_nose_up_largest_time_s"] ?? 0)}. "
                + "The model lets no body touch the ground: from where the nose is far up, nothing that it says holds."));
        }
    }
}
