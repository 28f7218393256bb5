using LaunchSim.Charts;
using LaunchSim.Charts.Studies;
using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Next;
using LaunchSim.Studies.Searching;
using LaunchSim.Studies.Words;

namespace LaunchSim.Studies.Pictures;

/// <summary>Studies as pictures.</summary>
public static class StudyPictures
{
    private const int MostChanges = 14;

    /// <summary>The best set-ups with their scores, and what the rise lag costs.</summary>
    /// <param name="result">What came of the search.</param>
    /// <param name="present">The figures of the set-up as it stands, in the order of the plan; null when its launch fails.</param>
    /// <param name="presentScore">Its score.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">The program with its version.</param>
    public static Picture Best(BestResult result, double[]? present, AimScore? presentScore, Readout readout, string program)
    {
        ArgumentNullException.ThrowIfNull(result);
        GridPlan plan = result.Plan;
        int aims = plan.Aims.Keys.Count;
        // What all of them share is said once; what is left tells them apart.
        IReadOnlyList<string> names = SettingNames.Of(plan.Grid.Variations);
        bool[] shared = [.. plan.Grid.Variations.Select((_, k) => result.Best.Count > 1 && result.Best.All(best => plan.Grid.Place(best.Row.SetUp, k) == plan.Grid.Place(result.Best[0].Row.SetUp, k)))];
        string Values(long setUp, bool common) => string.Join(", ", names.Where((_, k) => shared[k] == common).Zip(plan.Grid.Variations.Where((_, k) => shared[k] == common).Select(variation => variation.Values[plan.Grid.Place(setUp, plan.Grid.Variations.TakeWhile(other => other != variation).Count())].Value), (name, value) => $"{name} {value}"));
        string all = result.Best.Count > 0 && shared.Any(one => one) ? $"; all of the best with {Values(result.Best[0].Row.SetUp, true)}" : "";
        List<ScoreBar> bars = [.. result.Best.Select((best, i) => new ScoreBar($"{i + 1}: {Values(best.Row.SetUp, false)}", Shares(plan.Aims, best.Row.Held.AsSpan(0, aims)), string.Join(", ", new[] { Limits(best.Row.Score), best.IsFragile ? "fragile" : "" }.Where(word => word.Length > 0)), best.Row.SetUp == plan.Grid.Present))];
        if (present is not null && !bars.Exists(bar => bar.IsPresent))
        {
            bars.Add(new ScoreBar("as it stands", Shares(plan.Aims, present.AsSpan(0, aims)), presentScore is { } score ? Limits(score) : "", true));
        }

        FrontCourse Front(string key, IReadOnlyList<GridRow> members)
        {
            FigureDefinition figure = Figure(plan, key);
            int lag = Place(plan, "rise_lag_s"), up = Place(plan, key);
            Scale scale = figure.Unit == FigureUnit.Force ? readout.Force : readout.Travel;
            FrontPoint? Of(double[]? figures) => figures is null || double.IsNaN(figures[lag]) || double.IsNaN(figures[up]) ? null : new FrontPoint(Math.Abs(figures[lag]) / Readout.Lag.Factor, figures[up] / scale.Factor);
            return new FrontCourse($"{figure.Name}, {scale.Unit}", "size of the rise lag, ms", [.. members.Select(row => Of(row.Held)).OfType<FrontPoint>()], Of(present), result.Best.Count > 0 ? Of(result.Best[0].Row.Held) : null);
        }

        string title = result.Best.Count == 0 ? "No launch came to its end" : result.IsProven ? $"The best of {result.Tried:#,0} set-ups, all of them run" : $"The best found in {result.Tried:#,0} launches, not proven";
        return ScorePicture.Of(
            title, $"{plan.Study.Name}: scores by the aims, smaller is better{all}; below, what a smaller rise lag costs: set-ups that none beats in both",
            Names(plan.Aims), bars,
            [Front("load_unrest_n", result.LagAgainstUnrest), Front("separation_peak_m", result.LagAgainstSeparation)], [program + ".", LimitWords.Caution]);
    }

    /// <summary>Changes with the scores that they lead to.</summary>
    /// <param name="result">What came of trying them.</param>
    /// <param name="scenario">The scenario as it stands.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">The program with its version.</param>
    public static Picture Next(NextResult result, Scenario scenario, Readout readout, string program)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(scenario);
        ScoreBar Of(NextChange change) => new(change.Changes.Count == 1 ? NextWords.Change(change, scenario) : Short(change), change.Trouble is null ? Shares(result.Aims, change.Figures) : [], change.Trouble is null ? Limits(change.Score) : "fails", false);
        List<ScoreBar> bars =
        [
            new ScoreBar("as it stands", result.Score.Exists ? Shares(result.Aims, result.Now) : [], Limits(result.Score), true),
            .. result.Pairs.Take(2).Select(Of),
            .. result.Singles.Take(MostChanges).Select(Of),
        ];
        string title = NextWords.Conclusion(result, scenario, readout).Split(". ")[0].TrimEnd('.');
        string left = result.Singles.Count > MostChanges ? $" {result.Singles.Count - MostChanges} worse ones are left out." : "";
        return ScorePicture.Of(title, $"{scenario.Name}: the score after each change, smaller is better; pairs of changes first", Names(result.Aims), bars, [], [$"{program}.{left}", LimitWords.Caution]);
    }

    // The points beyond limits close the bar: they rank, too.
    private static double[] Shares(AimSet aims, ReadOnlySpan<double> figures)
    {
        IReadOnlyList<AimPart> parts = aims.Parts(figures);
        return [.. parts.Where(part => !part.Aim.IsLimit).Select(part => part.Share), .. HasLimits(aims) ? [parts.Where(part => part.Aim.IsLimit).Sum(part => part.Points)] : Array.Empty<double>()];
    }

    private static string[] Names(AimSet aims) => [.. aims.Aims.Where(aim => !aim.IsLimit).Select(AimWords.Heading), .. HasLimits(aims) ? ["beyond limits"] : Array.Empty<string>()];

    private static bool HasLimits(AimSet aims) => aims.Aims.Any(aim => aim.IsLimit);

    private static string Short(NextChange change)
    {
        IReadOnlyList<string> names = SettingNames.Of([.. change.Changes.Select(one => one.Setting)]);
        return string.Join(" and ", change.Changes.Select((one, i) => $"{names[i]} → {one.Edit.Value}"));
    }

    private static string Limits(AimScore score) => score is { Exists: true, KeepsLimits: false } ? "breaks a limit" : "";

    private static int Place(GridPlan plan, string key) => plan.Figures.TakeWhile(figure => figure != key).Count();

    private static FigureDefinition Figure(GridPlan plan, string key)
    {
        var catalog = FigureCatalog.For(plan.Settings.Marks.Count);
        return catalog.TryFind(key, out int index) ? catalog.Definitions[index] : throw new ArgumentException($"There is no figure {key}.", nameof(key));
    }
}
