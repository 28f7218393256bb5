using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>Which gap moves first: what the wheel openings show, before the body rises.</summary>
internal static class GapWords
{
    private const double Together = 0.002;

    public static void Say(FigureSet figures, Readout readout, List<string> said)
    {
        string first = readout.IsShop ? "1/4 in" : "6.35 mm";
        said.Add((figures["rear_gap_6_35mm_s"], figures["front_gap_6_35mm_s"]) switch
        {
            ({ } r, { } f) when Math.Abs(f - r) < Together => $"Both gaps move together: each has opened by {first} at {Readout.Time.Text(r)}.",
            ({ } r, { } f) when f > r => $"The rear gap moves first: it has opened by {first} at {Readout.Time.Text(r)}, the front gap {Readout.Time.Text(f - r)} later.",
            ({ } r, { } f) => $"The front gap moves first: it has opened by {first} at {Readout.Time.Text(f)}, the rear gap {Readout.Time.Text(r - f)} later.",
            (null, { } f) => $"Only the front gap opens by {first}, at {Readout.Time.Text(f)}; the rear gap never does.",
            ({ } r, null) => $"Only the rear gap opens by {first}, at {Readout.Time.Text(r)}; the front gap never does.",
            _ => $"Neither gap ever opens by {first}.",
        });
    }
}
