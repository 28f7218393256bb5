using System.Globalization;
using System.Text.Json;
using LaunchSim.Studies.Doubting;

namespace LaunchSim.Cli.Output;

/// <summary>In what share of plausible cars changes help, as text and in documents.</summary>
internal static class HelpText
{
    /// <summary>Adds the part of a report.</summary>
    /// <param name="page">The page.</param>
    /// <param name="changes">What each change is called, in the order of the shares.</param>
    /// <param name="help">The shares.</param>
    public static void Add(Page page, IReadOnlyList<string> changes, HelpResult help)
    {
        string whose = help.UsesTypical ? "the usual doubts of such numbers, since the file has none or they were asked for" : "the doubts in the file";
        _ = page.Blank().Heading(string.Create(CultureInfo.InvariantCulture, $"How sure: on {help.Cars:#,0} plausible cars, drawn from {whose}"));
        var table = new TextTable(false, true, true, true, true);
        _ = table.Named("change", "helps in", "surely between", "hurts in", "gain, 5 to 95 %");
        for (int i = 0; i < changes.Count; i++)
        {
            HelpShare share = help.Changes[i];
            if (share.Told == 0)
            {
                table.Add(changes[i], "no car came to its end");
                continue;
            }

            if (double.IsNaN(share.Gain.Median))
            {
                table.Add(changes[i], Percent(share.Helps.Share), $"{Percent(share.Helps.Low)} and {Percent(share.Helps.High)}", Percent(share.Hurts.Share), "on no car did both come to their end");
                continue;
            }

            table.Add(changes[i], Percent(share.Helps.Share), $"{Percent(share.Helps.Low)} and {Percent(share.Helps.High)}", Percent(share.Hurts.Share),
                string.Create(CultureInfo.InvariantCulture, $"{share.Gain.Low:+0.00;-0.00;0.00} to {share.Gain.High:+0.00;-0.00;0.00}"));
        }

        _ = page.Table(table).Line("Each is compared with the set-up as it stands on the same car, in points towards the aims; less than 0.1 points is neither. The limits hold the true share in 95 draws of 100.", 2);
        if (help.Redrawn > 0)
        {
            _ = page.Line(string.Create(CultureInfo.InvariantCulture, $"{help.Redrawn:#,0} impossible cars were drawn again{(help.GivenUp > 0 ? $", {help.GivenUp:#,0} given up" : "")}."), 2);
        }
    }

    /// <summary>Adds the member <c>doubt</c> of a document.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="changes">What each change is called, in the order of the shares.</param>
    /// <param name="help">The shares.</param>
    public static void Add(Utf8JsonWriter json, IReadOnlyList<string> changes, HelpResult help)
    {
        json.WriteStartObject("doubt");
        json.WriteNumber("cars", help.Cars);
        json.WriteNumber("redrawn", help.Redrawn);
        json.WriteNumber("given_up", help.GivenUp);
        json.WriteBoolean("uses_typical", help.UsesTypical);
        json.WriteStartArray("changes");
        for (int i = 0; i < changes.Count; i++)
        {
            HelpShare share = help.Changes[i];
            json.WriteStartObject();
            json.WriteString("change", changes[i]);
            json.Number("helps_share", share.Helps.Share);
            json.Number("helps_share_low", share.Helps.Low);
            json.Number("helps_share_high", share.Helps.High);
            json.Number("hurts_share", share.Hurts.Share);
            json.Number("gain_low_points", share.Gain.Low);
            json.Number("gain_median_points", share.Gain.Median);
            json.Number("gain_high_points", share.Gain.High);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static string Percent(double share) => (100 * share).ToString("0", CultureInfo.InvariantCulture) + " %";
}
