using LaunchSim.Figures;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Vehicle;

namespace LaunchSim.Charts.Launch;

/// <summary>What the pictures of one launch are drawn from.</summary>
/// <param name="run">The launch.</param>
/// <param name="readout">The units.</param>
/// <param name="program">Program and version, for the foot of each picture.</param>
internal sealed class LaunchView(LaunchOutcome run, Readout readout, string program)
{
    // A run that stopped is drawn with a little of the time that it did not reach.
    private const double Beyond = 1.2, NoRun = 1;

    private readonly Lazy<Course> _course = new(() => new Course(run.Solution));

    /// <summary>The launch.</summary>
    public LaunchOutcome Run => run;

    /// <summary>The units.</summary>
    public Readout Readout => readout;

    /// <summary>Program and version.</summary>
    public string Program => program;

    /// <summary>The car as entered.</summary>
    public Car Car => run.Solution.Car.Car;

    /// <summary>The course of the launch.</summary>
    public Course Course => _course.Value;

    /// <summary>What happened in it.</summary>
    public LaunchEvents Events => run.Figures.Events;

    /// <summary>Where the course ends, s.</summary>
    public double Duration => run.Solution.Duration;

    /// <summary>Where time axes end, s: behind the course's end when the run stopped before its own.</summary>
    public double End => Duration <= 0 ? NoRun : run.Failure is null ? Duration : Beyond * Duration;

    /// <summary>A figure in SI; null when it has no value.</summary>
    /// <param name="key">Its key.</param>
    public double? this[string key] => run.Figures[key];
}
