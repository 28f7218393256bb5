using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;

namespace LaunchSim.Studies.Running;

/// <summary>
/// Runs the launches of one thread and reads the figures that its study asks for. A launch that fails is a result with its
/// reason, never an exception. Not shared between threads.
/// </summary>
/// <param name="keys">Keys of the figures that are wanted.</param>
/// <param name="settings">Duration, marks and tolerance of all launches.</param>
public sealed class LaunchWorker(IReadOnlyList<string> keys, RunSettings settings) : IDisposable
{
    private readonly FigureReader _reader = new(FigureSelection.Of(settings.Marks.Count, keys));
    private readonly int _mostSteps = MostSteps(settings);
    private LaunchSolution? _solution;

    /// <summary>Keys of the figures that are read.</summary>
    public IReadOnlyList<string> Keys { get; } = keys;

    /// <summary>A scenario's car with some values put in.</summary>
    /// <param name="scenario">The scenario, read for a run.</param>
    /// <param name="edits">The values.</param>
    /// <param name="trouble">Why there is none, a plain sentence; null when there is one.</param>
    public static Car? Edited(Scenario scenario, IReadOnlyList<ScenarioEdit> edits, out string? trouble)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(edits);
        ReadResult? read = edits.Count == 0 ? null : scenario.With(edits, putsTogether: false);
        Scenario? edited = read is null ? scenario : read.Scenario;
        trouble = edited is null ? $"refused: found {read!.Errors[0].Message}" : null;
        return edited is null ? null : edited.Car ?? throw new InvalidOperationException("The scenario was not read for a run.");
    }

    /// <summary>Runs a changed car with the grip of the pressures that are set now.</summary>
    /// <param name="now">The car as it stands.</param>
    /// <param name="changed">The changed car.</param>
    /// <param name="figures">Receives the figures in the order of <see cref="Keys"/>; not a number where there is none.</param>
    /// <param name="cancellation">Asked once a step.</param>
    /// <returns>Null when the launch came to its end; else why not, a plain sentence.</returns>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public string? RunHeld(Car now, Car changed, Span<double> figures, CancellationToken cancellation) =>
        Run(GripHeld.Of(now, changed), figures, cancellation) is { } trouble ? $"with the grip of the present pressures: {trouble}" : null;

    /// <summary>Runs one car.</summary>
    /// <param name="car">The car.</param>
    /// <param name="figures">Receives the figures in the order of <see cref="Keys"/>; not a number where there is none.</param>
    /// <param name="cancellation">Asked once a step.</param>
    /// <returns>Null when the launch came to its end; else why not, a plain sentence.</returns>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public string? Run(Car car, Span<double> figures, CancellationToken cancellation)
    {
        figures.Fill(double.NaN);
        if (!StandingCar.TryFind(car, out StandingCar? standing, out IReadOnlyList<StandingProblem> problems))
        {
            return $"does not stand: {problems[0].Found}";
        }

        return Run(standing!, figures, cancellation);
    }

    /// <summary>Runs one car that stands already.</summary>
    /// <param name="standing">The car.</param>
    /// <param name="figures">Receives the figures in the order of <see cref="Keys"/>; not a number where there is none.</param>
    /// <param name="cancellation">Asked once a step.</param>
    /// <returns>Null when the launch came to its end; else why not, a plain sentence.</returns>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public string? Run(StandingCar standing, Span<double> figures, CancellationToken cancellation)
    {
        _solution = LaunchRunner.Create(standing, settings.Tolerance, _mostSteps).Solve(settings, _solution, cancellation);
        cancellation.ThrowIfCancellationRequested();
        _reader.Read(_solution, settings, figures);
        return LaunchFailure.Of(_solution) is { } failure ? $"stopped at {failure.Time:0.000} s, {failure.Part}: {failure.Found}" : null;
    }

    /// <summary>
    /// Steps after which a launch of a study is given up: some ten times what a car takes, less than a single run may. A
    /// study has thousands to run, and one that stands still over a hopeless car helps nobody.
    /// </summary>
    /// <param name="settings">How long the launch is.</param>
    public static int MostSteps(RunSettings settings) =>
        Math.Min(LaunchFailure.MostSteps, Math.Max(FewestMostSteps, (int)(StepsASecond * (settings.Duration ?? RunSettings.LongestDuration))));

    private const int FewestMostSteps = 10_000;
    private const double StepsASecond = 4_000;

    /// <summary>Hands the memory back.</summary>
    public void Dispose() => _reader.Dispose();
}
