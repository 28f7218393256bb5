using LaunchSim.Passes.Fitting;
using LaunchSim.Scenarios;

namespace LaunchSim.DemoSeason;

/// <summary>
/// The car that the invented season was driven with: by how many standard deviations of what the file knows each number is off.
/// Whoever fits the season should find these, within the intervals that the fit states.
/// </summary>
internal static class HiddenCar
{
    private static readonly Dictionary<string, double> Off = new()
    {
        ["car.cg_height"] = 0.8,
        ["car.pitch_inertia"] = -0.9,
        ["front.tire.vertical_rate"] = 0.6,
        ["rear.tire.vertical_rate"] = -1.1,
        ["rear.tire.grip"] = -0.4,
        ["driveline.torque"] = -0.7,
        ["rear.damper.extension.set"] = 1.2,
    };

    /// <summary>The true car of a season's file.</summary>
    /// <param name="file">The file, read for a run.</param>
    public static TrueCar Of(Scenario file)
    {
        IReadOnlyList<FitParameter> parameters = FitParameters.Default(file);
        string[] unknown = [.. Off.Keys.Where(path => parameters.All(parameter => parameter.Path != path))];
        return unknown.Length == 0
            ? new TrueCar(parameters, [.. parameters.Select(parameter => Off.GetValueOrDefault(parameter.Path))])
            : throw new InvalidOperationException($"The file does not doubt {string.Join(", ", unknown)}.");
    }
}
