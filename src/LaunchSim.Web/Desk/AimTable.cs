using System.Text.Json;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Comparing;
using LaunchSim.Web.Documents;

namespace LaunchSim.Web.Desk;

/// <summary>How a launch does by the aims of its file, and how it compares with one that was pinned.</summary>
internal static class AimTable
{
    /// <summary>A launch held against the aims of its file; null when these contradict themselves, which <c>check</c> tells.</summary>
    /// <param name="run">The launch.</param>
    /// <param name="name">What sentences call it.</param>
    public static (AimSet Aims, ComparedSetUp SetUp)? Of(LaunchOutcome run, string name)
    {
        if (AimSet.Of(run.Scenario.Aims, null, out _) is not { } aims)
        {
            return null;
        }

        double[] figures = [.. aims.Keys.Select(key => run.Figures[key] ?? double.NaN)];
        return (aims, new ComparedSetUp { Letter = name, Run = run, Parts = aims.Parts(figures), Score = run.Failure is null ? aims.Score(figures) : AimScore.None });
    }

    /// <summary>Writes score and aims, and the comparison when something is pinned.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="aims">What is wanted.</param>
    /// <param name="now">The present set-up.</param>
    /// <param name="pinned">The one that was pinned; null for none.</param>
    /// <param name="readout">The units.</param>
    public static void Write(Utf8JsonWriter json, AimSet aims, ComparedSetUp now, ComparedSetUp? pinned, Readout readout)
    {
        json.WriteString("score", AimWords.Score(now.Score));
        SetUpDifference? difference = pinned is null ? null : SetUpDifference.Of(pinned, now);
        json.WriteStartArray("aims");
        for (int i = 0; i < now.Parts.Count; i++)
        {
            AimPart part = now.Parts[i];
            json.WriteStartObject();
            json.WriteString("aim", AimWords.Heading(part.Aim));
            json.WriteString("wanted", AimWords.Wanted(part.Aim, readout));
            json.WriteString("value", AimWords.Cell(part.Aim, part.Value, readout));
            json.Number("points", part.Points);
            if (difference is not null)
            {
                json.WriteString("pinned", AimWords.Cell(part.Aim, pinned!.Parts[i].Value, readout));
                json.WriteString("verdict", VerdictWords.Of(difference.Aims[i].Verdict));
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (difference is not null)
        {
            string verdict = VerdictWords.Of(difference, aims, readout);
            json.WriteString("pinnedScore", AimWords.Score(pinned!.Score));
            IReadOnlyList<string> why = difference.IsSame ? [] : CauseWords.Of(difference, readout);
            json.Texts("compared", why.Prepend(verdict).Select(Capital));
        }
    }

    private static string Capital(string sentence) => sentence.Length == 0 ? sentence : char.ToUpperInvariant(sentence[0]) + sentence[1..];
}
