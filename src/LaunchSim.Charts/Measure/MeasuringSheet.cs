using LaunchSim.Charts.Drawing;
using LaunchSim.Scenarios.Units;
using OxyPlot;

namespace LaunchSim.Charts.Measure;

/// <summary>
/// Two pages to take to the car: where to measure, in which order, and lines to write on, with the scenario key of each
/// number beside it.
/// </summary>
public static class MeasuringSheet
{
    /// <summary>The pages.</summary>
    /// <param name="linkage">Which linkage there is to measure.</param>
    /// <param name="system">Whose units the lines have.</param>
    /// <param name="paper">The paper.</param>
    public static IReadOnlyList<Picture> Pages(LinkageKind linkage, UnitSystem system, Paper paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        var units = new MeasureUnits(system);
        string kind = linkage == LinkageKind.FourLink ? "four-link" : "ladder bars";
        var whole = new WholeCarPage(units, linkage);
        return
        [
            Page($"Measuring the car, page 1 of 2: the whole car ({kind})", paper, whole.Draw),
            Page($"Measuring the car, page 2 of 2: the rear end ({kind})", paper, new RearEndPage(units, linkage, whole.Items).Draw),
        ];
    }

    private static Picture Page(string title, Paper paper, Action<IRenderContext, OxyRect> draw) => new(title, paper.Width, paper.Height, canvas =>
    {
        (double width, double height) = Paper.Usable;
        var area = new OxyRect(0.5 * (paper.Width - width), 0.5 * (paper.Height - height), width, height);
        canvas.Text(title, new ScreenPoint(area.Left, area.Top), 19, OxyColors.Black, Theme.Bold);
        draw(canvas, new OxyRect(area.Left, area.Top + 34, area.Width, area.Height - 34));
    });
}
