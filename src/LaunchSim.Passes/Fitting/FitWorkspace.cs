using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Running;

namespace LaunchSim.Passes.Fitting;

/// <summary>
/// What one thread of a fit works with: for each pass the latest launch. Where only a clock is moved, no car has changed, and the
/// launch is used again.
/// </summary>
internal sealed class FitWorkspace(int passes, Action launched)
{
    private readonly LaunchSolution?[] _launches = new LaunchSolution?[passes];
    private readonly double[]?[] _solved = new double[]?[passes];

    /// <summary>The launch of a pass with its numbers moved; null where there is none.</summary>
    public LaunchSolution? Launch(int index, PassModel pass, ReadOnlySpan<double> deviations)
    {
        if (_solved[index] is { } solved && deviations.SequenceEqual(solved))
        {
            return _launches[index];
        }

        _solved[index] = null;
        ReadResult read = pass.Pass.SetUp.With(FitModel.Edits(pass.Own, pass.Pass.SetUp, deviations), putsTogether: false);
        if (read.Scenario?.Car is not { } car || !StandingCar.TryFind(car, out StandingCar? standing, out _))
        {
            return null;
        }

        launched();
        LaunchSolution launch = LaunchRunner.Create(standing!, pass.Settings.Tolerance, LaunchWorker.MostSteps(pass.Settings)).Solve(pass.Settings, _launches[index]);
        _launches[index] = launch;
        if (LaunchFailure.Of(launch) is not null)
        {
            return null;
        }

        _solved[index] = deviations.ToArray();
        return launch;
    }
}
