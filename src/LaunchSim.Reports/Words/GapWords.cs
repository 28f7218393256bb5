using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>Which gap moves first: what the wheel openings show, before the body rises.</summary>
internal static class GapWords
{
    private const double Together = 0.002;

    public static void Say(FigureSet figures, Readout readout, List<Sentence> said)
    {
        string first = readout.IsShop ? "1/4 in" : "6.35 mm";
        (string key, string text) = (figures["rear_gap_6_35mm_s"], figures["front_gap_6_35mm_s"]) switch
        {
            ({ } r, { } f) when Math.Abs(f - r) < Together => ("gap.together", $"Both gaps move together: each has opened by {first} at {Readout.Time.Text(r)}."),
            ({ } r, { } f) when f > r => ("gap.rear_first", $"The rear gap moves first: it has opened by {first} at {Readout.Time.Text(r)}, the front gap {Readout.Time.Text(f - r)} later."),
            ({ } r, { } f) => ("gap.front_first", $"The front gap moves first: it has opened by {first} at {Readout.Time.Text(f)}, the rear gap {Readout.Time.Text(r - f)} later."),
            (null, { } f) => ("gap.only_front", $"Only the front gap opens by {first}, at {Readout.Time.Text(f)}; the rear gap never does."),
            ({ } r, null) => ("gap.only_rear", $"Only the rear gap opens by {first}, at {Readout.Time.Text(r)}; the front gap never does."),
            _ => ("gap.neither", $"Neither gap ever opens by {first}."),
        };
        said.Add(new(key, text));
    }
}
