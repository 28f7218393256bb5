using LaunchSim.DemoSeason;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Passes.Fitting;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;
using Xunit.Abstractions;

namespace LaunchSim.Passes.Tests.Fitting;

/// <summary>The invented season in scenarios/season: its files as they are shipped, through the whole way from text to fit.</summary>
public sealed class SeasonFitTests(ITestOutputHelper output)
{
    private static readonly string Folder = Files.Shipped("season");

    private static readonly ReadResult Car = StandingCheck.Reader(ReadPurpose.Run).Read(Path.Combine(Folder, SeasonFiles.Car));

    private static readonly string[] All = [.. Directory.EnumerateFiles(Folder, "0*.yaml").Order(StringComparer.Ordinal)];

    private static readonly Lazy<FitResult> Whole = new(() => Fitted(All));

    [Fact]
    public void Files_MadeAnew_AreThoseThatAreShipped()
    {
        foreach ((string name, string text) in SeasonFiles.Of(Car.Scenario!))
        {
            // Another processor may round the last figure of a logged value the other way.
            string[] made = text.Split('\n'), shipped = File.ReadAllText(Path.Combine(Folder, name)).ReplaceLineEndings("\n").Split('\n');
            Assert.Equal(shipped.Length, made.Length);
            int other = Enumerable.Range(0, made.Length).Count(i => made[i] != shipped[i]);
            Assert.True(name.EndsWith(".csv", StringComparison.Ordinal) ? other < 10 : other == 0, $"{name}: {other} lines differ; write the season anew with tools/LaunchSim.DemoSeason");
        }
    }

    [Fact]
    public void Truth_OfTheWholeSeason_LiesWithinTheStatedIntervals()
    {
        FitResult fit = Whole.Value;
        TrueCar truth = HiddenCar.Of(Car.Scenario!);
        Assert.True(fit.Converged, fit.Reason);
        Assert.InRange(fit.Misfit, 0.85, 1.15);
        int inside = 0;
        for (int i = 0; i < fit.Values.Count; i++)
        {
            FittedValue value = fit.Values[i];
            double off = (value.Deviations - truth.Deviations[i]) / value.Sd;
            output.WriteLine(FormattableString.Invariant($"{value.Parameter.Path}: {value.After}, {off:0.0} of its sd off the truth"));
            Assert.True(value.IsTold, value.Parameter.Path);
            Assert.True(value.Sd < 0.25, $"{value.Parameter.Path} is known no better than before");

            // Of seven intervals of nineteen in twenty one may miss (30 % of seasons have one); none by far.
            Assert.InRange(Math.Abs(off), 0, 3);
            inside += Math.Abs(off) <= 1.96 ? 1 : 0;
        }

        Assert.True(inside >= fit.Values.Count - 1, $"{inside} of {fit.Values.Count}");
    }

    [Fact]
    public void RiseLag_OfAPassLeftOut_IsPredicted()
    {
        FitResult logged = Fitted([.. All.Where((_, i) => SeasonPlan.Passes[i].Logger != Logger.None).Take(3)]);
        FitResult seen = Fitted([.. All.Where((_, i) => SeasonPlan.Passes[i].Logger == Logger.None)]);
        IReadOnlyList<(string, string)> last = SeasonPlan.Passes[^1].Changed;
        double truth = Lag(HiddenCar.Of(Car.Scenario!).Deviations, last);
        Assert.InRange(Lag([.. logged.Values.Select(value => value.Deviations)], last) - truth, -0.010, 0.010);
        Assert.InRange(Lag([.. seen.Values.Select(value => value.Deviations)], last) - truth, -0.025, 0.025);
    }

    [Fact]
    public void Fitted_WrittenAsAVariant_ReadsBackAsTheFit()
    {
        FitResult fit = Whole.Value;
        using var folder = new Folder();
        string text = FittedScenario.Text(fit, Car.Scenario!, Path.GetRelativePath(folder.At, Car.Scenario!.SourceFile), All.Length);
        ReadResult read = StandingCheck.Reader(ReadPurpose.Run).Read(folder.Write("fitted.yaml", text));
        Assert.Empty(read.Errors);
        Scenario fitted = read.Scenario!;
        FittedValue height = fit.Values.First(value => value.Parameter.Path == "car.cg_height");
        Assert.Equal(height.Value, fitted.Find("car.cg_height")!.Si(), 1e-4);
        Assert.Equal(height.HalfWidth, fitted.Doubts["car.cg_height"].HalfWidth, 0.1 * height.HalfWidth);

        // What is written in so many figures as the doubts leave moves the launch by nothing that anybody sees.
        double[] deviations = [.. fit.Values.Select(value => value.Deviations)];
        RunSettings settings = Car.Scenario!.Run with { Duration = 1, Marks = [] };
        LaunchSolution written = LaunchSimulation.Solve(fitted.Car!, settings, default);
        Assert.Equal(Lag(deviations, []), Figure(written, settings), 1e-3);
    }

    [Fact]
    public void Fit_OfPassesWithoutDataOnANumber_NamesItAndHoldsItWhereTheFileHasIt()
    {
        // A time slip says nothing of how the rear damper's clicks count.
        using var folder = new Folder();
        string pass = folder.Write("pass.yaml", $"car: {Car.Scenario!.SourceFile}\nseen: {{marks: 60 ft, times: 1.500 s}}\n");
        FitResult fit = Fitted([pass]);
        FittedValue clicks = fit.Values.First(value => value.Parameter.IsClicks);
        Assert.False(clicks.IsTold);
        Assert.Equal(0, clicks.Deviations);
        Assert.Equal(1, clicks.Sd);
        Assert.DoesNotContain(FittedScenario.Changes(fit, Car.Scenario!), change => change.Path.Contains("clicks", StringComparison.Ordinal));
    }

    [Fact]
    public void Fit_OfFewerThreads_GivesTheSameToTheBit()
    {
        FitModel Model() => FitModel.Of(FitParameters.Default(Car.Scenario!), [.. new FitPasses(Car).Read([All[2]], null, default).Passes]);
        FitResult one = Fit.Run(Model(), new FitSettings { Starts = 2, Threads = 1 }, default), two = Fit.Run(Model(), new FitSettings { Starts = 2, Threads = 2 }, default);
        Assert.Equal(one.Values.Select(value => value.Deviations), two.Values.Select(value => value.Deviations));
    }

    private static FitResult Fitted(IReadOnlyList<string> passes)
    {
        FitPassesResult read = new FitPasses(Car).Read(passes, null, default);
        Assert.Empty(read.Errors);
        return Fit.Run(FitModel.Of(FitParameters.Default(Car.Scenario!), read.Passes), new FitSettings(), default);
    }

    private static double Lag(IReadOnlyList<double> deviations, IReadOnlyList<(string, string)> changed)
    {
        RunSettings settings = Car.Scenario!.Run with { Duration = 1, Marks = [] };
        return Figure(new TrueCar(FitParameters.Default(Car.Scenario), deviations).Launch(Car.Scenario.With(changed).Scenario!, settings)!, settings);
    }

    private static double Figure(LaunchSolution launch, RunSettings settings)
    {
        using var reader = new FigureReader(FigureSelection.Of(0, ["rise_lag_s"]));
        double[] figures = new double[1];
        reader.Read(launch, settings, figures);
        return figures[0];
    }
}
