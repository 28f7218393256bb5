using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.After;
using LaunchSim.Passes.Seen;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Studies.Doubting;
using LaunchSim.Studies.Next;

namespace LaunchSim.Cli.Output;

/// <summary>What is said between two passes: one screen.</summary>
internal static class AfterText
{
    /// <summary>The screen.</summary>
    /// <param name="result">What was worked out.</param>
    /// <param name="readout">The units.</param>
    /// <param name="screen">Where it is read.</param>
    public static string Of(AfterResult result, Readout readout, Screen screen)
    {
        Page page = new Page(screen).Heading($"{result.Pass.Name}: {AfterWords.Conclusion(result, readout)}");
        Seen(page, result, readout);
        if (result.Fit is { } fit)
        {
            _ = page.Line($"The pass says of the car: {AfterWords.Learned(fit)}.");
            foreach (string remark in fit.Remarks)
            {
                _ = page.Line(remark);
            }
        }

        _ = page.Blank();
        Change(page, result, readout);
        return page.Blank().Line(LimitWords.Caution).ToString();
    }

    private static void Seen(Page page, AfterResult result, Readout readout)
    {
        if (result.Seen.Count == 0)
        {
            return;
        }

        IReadOnlyList<SeenComparison>? after = result.Fit?.Seen is [var learned, ..] ? learned.After : null;
        var table = after is null ? new TextTable(false, false, false, false) : new TextTable(false, false, false, false, false);
        _ = table.Named(after is null ? ["seen of the pass", "seen", "predicted", ""] : ["seen of the pass", "seen", "predicted", "", "with what it taught"]);
        for (int i = 0; i < result.Seen.Count; i++)
        {
            SeenComparison fact = result.Seen[i];
            string[] cells = [SeenText.Name(fact, readout), SeenText.Seen(fact), SeenText.Predicted(fact), SeenText.Verdict(fact)];
            table.Add(after is null ? cells : [.. cells, after.FirstOrDefault(one => one.Key == fact.Key) is { } taught ? SeenText.Predicted(taught) : ""]);
        }

        _ = page.Table(table);
        if (result.Pass.Seen.Shake is { } shake && shake != Shake.None)
        {
            _ = page.Line($"The tyres shook ({shake.ToString().ToLowerInvariant()}): the model has no tyre shake, nothing here was made to suit it.");
        }
    }

    private static void Change(Page page, AfterResult result, Readout readout)
    {
        if (!result.Next.Score.Exists)
        {
            _ = page.Heading("The one change").Line($"The launch does not come to its end, so that nothing can be ranked against it: {result.Next.Trouble}", 2);
            return;
        }

        if (result.Change is not { } change || result.Help is not { } help)
        {
            _ = page.Heading("The one change").Line(AfterWords.NoChange, 2);
            return;
        }

        string time = change.Minutes is { } minutes ? $", {NextWords.Minutes(minutes)}" : "";
        _ = page.Heading($"The one change: {NextWords.Change(change, result.Learned)}{time}");
        foreach (string bar in NextWords.Bars(change, result.Learned, readout))
        {
            _ = page.Line(bar, 2);
        }

        _ = page.Line($"{Share(help, result.Cars)}", 2);
        _ = page.Heading(AfterWords.SignsHeading(result));
        foreach (VideoSign sign in result.Signs)
        {
            _ = page.Line(AfterWords.Sign(sign, result.Pass.Seen), 2);
        }

        _ = result.Signs.Count == 0 ? page.Line(AfterWords.NoSign, 2) : page;
        _ = page.Heading($"If it did not: {AfterWords.PutBack(change, result.Learned)}");
        if (result.Next.IsOffered)
        {
            _ = page.Line(NextWords.Offered);
        }
    }

    private static string Share(HelpShare help, int cars) => string.Create(CultureInfo.InvariantCulture,
        $"helps in {100 * help.Helps.Share:0} % of {cars} plausible cars (surely {100 * help.Helps.Low:0} to {100 * help.Helps.High:0} %), hurts in {100 * help.Hurts.Share:0} %");
}
