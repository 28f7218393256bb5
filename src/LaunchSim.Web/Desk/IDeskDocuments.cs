using System.Text.Json;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Studies.Doubting;
using LaunchSim.Web.Pages;

namespace LaunchSim.Web.Desk;

/// <summary>What launches become for the browser: the seam between the desk and the drawing.</summary>
internal interface IDeskDocuments
{
    /// <summary>Writes the document of a launch, one value.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="run">The launch.</param>
    /// <param name="readout">The units.</param>
    void Launch(Utf8JsonWriter json, LaunchOutcome run, Readout readout);

    /// <summary>Writes what doubts do to it, one value.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="result">The study of doubts.</param>
    /// <param name="readout">The units.</param>
    void Doubt(Utf8JsonWriter json, DoubtResult result, Readout readout);

    /// <summary>The page to send to a friend.</summary>
    /// <param name="runs">The launches with their names, the present one first.</param>
    /// <param name="readout">The units.</param>
    HtmlPage Page(IReadOnlyList<(string Name, LaunchOutcome Run)> runs, Readout readout);
}
