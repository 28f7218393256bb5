using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Vehicle;

namespace LaunchSim.Charts.Launch;

/// <summary>The register of a launch's charts: one line a chart; and the sheet that shows the most telling of them at once.</summary>
public static class LaunchCharts
{
    /// <summary>All charts in the order in which they are best looked at.</summary>
    internal static IReadOnlyList<LaunchChart> All { get; } =
    [
        new RiseChart(),
        new TireLoadChart(),
        new LoadPathChart(),
        new DamperSpeedChart(),
        new DamperTableChart(),
        new GripChart(),
        new LinkForceChart(),
        new InstantCentreChart(),
        new DrivelineChart(),
    ];

    /// <summary>Plain names of the charts that there are for a car, for file names.</summary>
    /// <param name="car">The car.</param>
    public static IReadOnlyList<string> Names(Car car) => [.. All.Where(chart => chart.IsFor(car)).Select(chart => chart.Name)];

    /// <summary>One chart of a launch.</summary>
    /// <param name="name">One of <see cref="Names"/> of its car.</param>
    /// <param name="run">The launch; not read by another thread while the picture is drawn.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version, for the foot.</param>
    /// <exception cref="ArgumentException">There is no such chart for the car.</exception>
    public static Picture Chart(string name, LaunchOutcome run, Readout readout, string program) =>
        Charts(run, readout, program).FirstOrDefault(chart => chart.Name == name) is { Picture: { } picture }
            ? picture
            : throw new ArgumentException($"There is no chart '{name}' for this car.", nameof(name));

    /// <summary>All charts of a launch; what they have in common is read once.</summary>
    /// <param name="run">The launch; not read by another thread while a picture is drawn.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version, for the foot.</param>
    public static IReadOnlyList<(string Name, Picture Picture)> Charts(LaunchOutcome run, Readout readout, string program)
    {
        ArgumentNullException.ThrowIfNull(run);
        var view = new LaunchView(run, readout, program);
        return [.. All.Where(chart => chart.IsFor(view.Car)).Select(chart => (chart.Name, Picture(chart, view)))];
    }

    /// <summary>What each chart shows, in one sentence without a full stop, by the chart's plain name: without drawing.</summary>
    /// <param name="run">The launch; not read by another thread meanwhile.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version, for the foot.</param>
    public static IReadOnlyList<(string Name, string Title)> Titles(LaunchOutcome run, Readout readout, string program)
    {
        ArgumentNullException.ThrowIfNull(run);
        var view = new LaunchView(run, readout, program);
        return [.. All.Where(chart => chart.IsFor(view.Car)).Select(chart => (chart.Name, chart.Title(view)))];
    }

    /// <summary>The sheet: what the car is, what it does, and why, on one page.</summary>
    /// <param name="run">The launch; not read by another thread while the picture is drawn.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version, for the foot.</param>
    public static Picture Sheet(LaunchOutcome run, Readout readout, string program)
    {
        ArgumentNullException.ThrowIfNull(run);
        var view = new LaunchView(run, readout, program);
        return new Picture(LaunchSheet.Title(view), ChartPage.Width, ChartPage.Height, canvas => LaunchSheet.Draw(canvas, view));
    }

    private static Picture Picture(LaunchChart chart, LaunchView view)
    {
        string title = chart.Title(view);
        return new Picture(title, ChartPage.Width, ChartPage.Height, canvas => chart.Draw(new ChartPage(canvas, view, title, chart.Explanation(view))));
    }
}
