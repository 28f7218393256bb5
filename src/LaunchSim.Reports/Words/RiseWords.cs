using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>Which end of the body comes up first over the ground, and by how much.</summary>
internal static class RiseWords
{
    // Nobody sees less than this on a video, s.
    private const double Together = 0.005;

    public static void Say(FigureSet figures, Readout readout, List<Sentence> said)
    {
        string opening = Opening.Of(figures, 0.4);
        double? rear = figures["rear_rise_t50_s"], front = figures["front_rise_t50_s"];
        string rearRise = readout.Travel.Text(figures["rear_rise_peak_m"] ?? 0), frontRise = readout.Travel.Text(figures["front_rise_peak_m"] ?? 0);
        string heights = $"at most {rearRise} at the rear and {frontRise} at the front {opening}";
        (string key, string text) = (rear, front) switch
        {
            ({ } r, { } f) when Math.Abs(f - r) < Together => ("rise.together", $"Both ends come up together: each has half its rise at {Readout.Time.Text(r)}; {heights}."),
            ({ } r, { } f) when f > r => ("rise.rear_first", $"The rear comes up first: it has half its rise at {Readout.Time.Text(r)}, the front {Readout.Time.Text(f - r)} later; {heights}."),
            ({ } r, { } f) => ("rise.front_first", $"The front comes up first: it has half its rise at {Readout.Time.Text(f)}, the rear {Readout.Time.Text(r - f)} later; {heights}."),
            (null, { } f) => ("rise.only_front", $"Only the front comes up: it has half its rise of {frontRise} at {Readout.Time.Text(f)}; the rear does not rise over the ground {opening}."),
            ({ } r, null) => ("rise.only_rear", $"Only the rear comes up: it has half its rise of {rearRise} at {Readout.Time.Text(r)}; the front does not rise over the ground {opening}."),
            _ => ("rise.neither", $"Neither end rises over the ground {opening}."),
        };
        said.Add(new(key, text));
    }
}
