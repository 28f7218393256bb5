using System.Text.Json;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Searching;

namespace LaunchSim.Cli.Output;

/// <summary>A search for the best set-up as a document, SI units.</summary>
internal static class BestJson
{
    /// <summary>Writes the document.</summary>
    /// <param name="result">What came of it.</param>
    /// <param name="present">The score of the set-up as it stands; null when its launch fails.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(BestResult result, AimScore? present, Stream stream)
    {
        GridPlan plan = result.Plan;
        using Utf8JsonWriter json = ResultJson.Writer(stream);
        json.WriteStartObject();
        ResultJson.Head(json, plan.Study.Scenario);
        json.WriteString("conclusion", BestWords.Conclusion(result, present));
        json.Aims(plan.Aims);
        json.WriteString("set_ups_in_the_grid", plan.Grid.Size.ToString(System.Globalization.CultureInfo.InvariantCulture));
        json.WriteNumber("set_ups_run", result.Tried);
        json.WriteNumber("failed", result.Failed);
        json.WriteNumber("keep_all_limits", result.KeepLimits);
        json.WriteBoolean("is_proven", result.IsProven);
        json.Score("present_score", present);
        json.WriteStartArray("best");
        foreach (RankedSetUp setUp in result.Best)
        {
            json.WriteStartObject();
            Row(json, plan, setUp.Row);
            json.WriteBoolean("is_fragile", setUp.IsFragile);
            json.Score("worst_next_door", setUp.NextDoor.Worst is null ? null : setUp.NextDoor.WorstScore);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Rows(json, "rise_lag_against_load_unrest", plan, result.LagAgainstUnrest);
        Rows(json, "rise_lag_against_separation", plan, result.LagAgainstSeparation);
        if (result.Top is { } top)
        {
            json.WriteStartObject("top");
            json.Number("within_points", top.Within);
            json.WriteNumber("set_ups", top.Count);
            json.WriteStartObject("values");
            for (int i = 0; i < plan.Grid.Variations.Count; i++)
            {
                json.WriteStartArray(plan.Grid.Variations[i].Path);
                foreach (int place in top.Values[i])
                {
                    json.WriteStringValue(plan.Grid.Variations[i].Values[place].Value);
                }

                json.WriteEndArray();
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.Flush();
        stream.WriteByte((byte)'\n');
    }

    private static void Rows(Utf8JsonWriter json, string key, GridPlan plan, IReadOnlyList<GridRow> rows)
    {
        json.WriteStartArray(key);
        foreach (GridRow row in rows)
        {
            json.WriteStartObject();
            Row(json, plan, row);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Row(Utf8JsonWriter json, GridPlan plan, GridRow row)
    {
        json.WriteNumber("set_up", row.SetUp);
        json.WriteStartObject("settings");
        for (int i = 0; i < plan.Grid.Variations.Count; i++)
        {
            json.WriteString(plan.Grid.Variations[i].Path, plan.Grid.Variations[i].Values[plan.Grid.Place(row.SetUp, i)].Value);
        }

        json.WriteEndObject();
        json.Score("score", row.Score);
        json.Parts(plan.Aims, row.Held.AsSpan(0, plan.Aims.Keys.Count));
        json.WriteStartObject("figures");
        for (int i = 0; i < plan.Figures.Count; i++)
        {
            json.Number(plan.Figures[i], row.Figures[i]);
        }

        json.WriteEndObject();
    }
}
