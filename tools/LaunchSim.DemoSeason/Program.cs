using LaunchSim.DemoSeason;
using LaunchSim.Passes.Fitting;
using LaunchSim.Passes.Measured;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

var scenario = StandingCheck.Reader(ReadPurpose.Run).Read(args[0]).Scenario!;
var parameters = FitParameters.Default(scenario);
foreach (var p in parameters) Console.WriteLine($"{p.Path} {p.Number.Text} {p.Words}");
double misses = 0, total = 0; var watch = System.Diagnostics.Stopwatch.StartNew();
for (ulong seed = 0; seed < ulong.Parse(args[1]); seed++)
{
    var dice = new Dice(seed);
    var truth = TrueCar.Drawn(parameters, dice);
    var settings = scenario.Run with { Duration = 1.3, Tolerance = 1e-8 };
    var passes = new List<FitPass>();
    foreach (var sets in new[] { Array.Empty<(string, string)>(), [("rear.damper.extension.set", "9")], [("rear.tire.pressure.set", "15 psi")] })
    {
        Scenario? setUp = scenario.With(sets).Scenario;
        if (setUp is null) continue;
        if (truth.Launch(setUp, settings) is not { } launch) continue;
        double late = 0.002 * dice.Normal();
        var sensors = new[] { "front_ride_height", "rear_ride_height", "wheel_speed", "acceleration" }.Select(k => MeasuredQuantities.Find(k)!).Select(q => new Sensor(q, q.Noise, q.HasFreeZero ? 0.01 * dice.Normal() : 0));
        passes.Add(new FitPass($"pass {passes.Count + 1}", setUp, setUp.Run, [new FitLog("log", [.. sensors.Select(s => s.Series(launch, 200, 1.0, late, dice))], 0.002)], SeenFacts.None));
    }
    if (passes.Count == 0) { Console.WriteLine($"{seed}: impossible"); continue; }
    var model = FitModel.Of(parameters, passes);
    if (seed == 0 && args.Length > 3)
    {
        var u = new double[model.UnknownCount]; var r = new double[model.ResidualCount];
        for (int k = 0; k < 200; k++) { u[0] = 0.001 * k; model.Residuals(u, r); }
        var w = System.Diagnostics.Stopwatch.StartNew();
        for (int k = 0; k < 200; k++) { u[0] = 0.001 * k; model.Residuals(u, r); }
        Console.WriteLine($"residuals {w.Elapsed.TotalMilliseconds / 200:0.00} ms");
        w.Restart();
        for (int k = 0; k < 200; k++) { u[^1] = 0.001 * k; model.Residuals(u, r); }
        Console.WriteLine($"clock only {w.Elapsed.TotalMilliseconds / 200:0.00} ms");
        w.Restart();
        for (int k = 0; k < 200; k++) { u[0] = 0.001 * k; foreach (var p in model.Passes) { p.Pass.SetUp.With(FitModel.Edits(p.Own, p.Pass.SetUp, u), putsTogether: false); } }
        Console.WriteLine($"with {w.Elapsed.TotalMilliseconds / 200:0.00} ms");
    }
    var result = Fit.Run(model, new FitSettings { Starts = int.Parse(args[2]) }, default);
    Console.WriteLine($"{seed}: {watch.Elapsed.TotalSeconds:0.0}s launches {result.Launches} misfit {result.Misfit:0.00} {result.Reason} sums {string.Join(' ', result.SumsOfStarts.Select(s => s.ToString("0.0")))}");
    for (int i = 0; i < parameters.Count; i++)
    {
        var v = result.Values[i];
        if (!v.IsTold) { if (seed < 2) Console.WriteLine($"   {v.Parameter.Path} untold, true {truth.Deviations[i]:0.00}"); continue; }
        bool miss = Math.Abs(v.Deviations - truth.Deviations[i]) > 1.96 * v.Sd;
        total++; if (miss) misses++;
        if (seed < 2 || miss) Console.WriteLine($"   {v.Parameter.Path} true {truth.Deviations[i]:0.00} fit {v.Deviations:0.00} ±{1.96 * v.Sd:0.00} {(miss ? "MISS" : "")}   {v.Before} -> {v.After}");
    }
}
Console.WriteLine($"covered {100 * (1 - misses / total):0.0} % of {total}");
