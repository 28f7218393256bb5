using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Comparing;
using LaunchSim.Passes.Seasons;
using LaunchSim.Passes.Seen;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Cli.Output.Seasons;

/// <summary>One pass, predicted beside seen.</summary>
internal static class SeasonShowText
{
    public static string Of(SeasonEntry entry, Readout readout, Screen screen)
    {
        PassFile pass = entry.Pass;
        Page page = new Page(screen).Heading(pass.Name).Blank();
        var about = new TextTable(false, false);
        foreach ((string name, string text) in About(pass))
        {
            about.Add(name, text);
        }

        _ = page.Table(about);
        if (entry.Predicted.Failure is { } failure)
        {
            _ = page.Blank().Line($"The predicted launch did not come to its end. {FailureWords.Of(failure)}");
        }

        Seen(page, entry, readout);
        Logged(page, entry, readout);
        if (pass.Corrections.Count > 0)
        {
            var corrections = new TextTable(false, false, false, false, false).Named("corrected", "value", "was", "is", "why");
            foreach (PassCorrection one in pass.Corrections)
            {
                corrections.Add(one.When, one.Path, one.Was ?? "", one.Is ?? "", one.Why);
            }

            _ = page.Blank().Table(corrections);
        }

        return pass.Notes.Length == 0 ? page.ToString() : page.Blank().Line(pass.Notes).ToString();
    }

    private static IEnumerable<(string Name, string Text)> About(PassFile pass)
    {
        string state = pass.Closed is { } day ? pass.IsSealWhole == false ? $", closed {day} and changed by hand since" : $", closed {day}" : "";
        yield return ("when", SeasonWords.When(pass) is { Length: > 0 } when ? when + state : "not noted" + state);
        yield return ("car", pass.CarFile);
        for (int i = 0; i < pass.Changed.Count; i++)
        {
            yield return (i == 0 ? "changed" : "", $"{pass.Changed[i].Path} {pass.Changed[i].Value}");
        }

        if (pass.Track.Length > 0)
        {
            yield return ("track", pass.Track);
        }

        if (pass.Weather.Length > 0)
        {
            yield return ("weather", pass.Weather);
        }

        for (int i = 0; i < pass.Logs.Count; i++)
        {
            yield return (i == 0 ? "logs" : "", pass.Logs[i].File);
        }
    }

    private static void Logged(Page page, SeasonEntry entry, Readout readout)
    {
        if (entry.Figures.Count == 0)
        {
            return;
        }

        var table = new TextTable(false, true, true, true, false).Named("", "logged", "predicted", "logged less predicted", "");
        foreach (PassFigure figure in entry.Figures)
        {
            Scale scale = FigureFormat.ScaleOf(figure.Definition, readout);
            table.Add(figure.Definition.Name, $"{scale.Number(figure.Measured)} ±{scale.Text(SeenDoubt.HalfWidth(figure.Sd))}", figure.Predicted is { } value ? scale.Text(value) : "none", figure.Difference is { } difference ? scale.WithSign(difference) : "", figure.IsBeyondDoubt == true ? "beyond doubt" : "");
        }

        _ = page.Blank().Table(table);
    }

    private static void Seen(Page page, SeasonEntry entry, Readout readout)
    {
        IReadOnlyList<SeenComparison> facts = entry.Predicted.Comparisons;
        if (facts.Count == 0 && entry.Pass.Seen.Shake is null)
        {
            _ = page.Blank().Line("Nothing was seen of this pass, so that there is nothing to set beside the prediction.");
            return;
        }

        bool isFitted = entry.Fitted is not null;
        var table = new TextTable([false, false, true, true, false, .. isFitted ? [true, true] : Array.Empty<bool>()])
            .Named(["", "seen", "predicted", "predicted less seen", "", .. isFitted ? ["fitted", "fitted less seen"] : Array.Empty<string>()]);
        for (int i = 0; i < facts.Count; i++)
        {
            SeenComparison fact = facts[i];
            SeenComparison? fitted = entry.Fitted?.Comparisons.FirstOrDefault(one => one.Key == fact.Key);
            table.Add([SeenText.Name(fact, readout), SeenText.WithDoubt(fact), SeenText.Predicted(fact), SeenText.Difference(fact), fact.Agrees ? "" : "beyond doubt", .. isFitted ? [fitted is null ? "" : SeenText.Predicted(fitted), fitted is null ? "" : SeenText.Difference(fitted)] : Array.Empty<string>()]);
        }

        if (entry.Pass.Seen.Shake is { } shake)
        {
            table.Add("tyre shake", SeasonWords.Of(shake), "not in it");
        }

        int apart = facts.Count(fact => !fact.Agrees);
        string verdict = facts.Count == 0 ? "" : apart == 0
            ? "Prediction and sight agree within the doubt of what was seen."
            : facts.Count == 1 ? "What was seen differs from the prediction by more than its doubt, nineteen times in twenty."
            : $"{apart} of {facts.Count} seen facts differ{(apart == 1 ? "s" : "")} from the prediction by more than {(apart == 1 ? "its" : "their")} doubt, nineteen times in twenty.";
        _ = page.Blank().Table(table);
        if (verdict.Length > 0)
        {
            _ = page.Blank().Line(verdict);
        }
    }
}
