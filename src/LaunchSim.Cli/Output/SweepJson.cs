using System.Text.Json;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Sweeps;

namespace LaunchSim.Cli.Output;

/// <summary>A sweep as a JSON document: what was varied, what was wanted, every row, the conclusion. Written as rows are read.</summary>
internal static class SweepJson
{
    private const int RowsAtATime = 64;

    /// <summary>Writes the document to a stream, ended by a line feed.</summary>
    /// <param name="tally">What came of the sweep.</param>
    /// <param name="rows">All its rows in order.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(SweepTally tally, IEnumerable<GridRow> rows, Stream stream)
    {
        GridPlan plan = tally.Plan;
        using (Utf8JsonWriter json = ResultJson.Writer(stream))
        {
            json.WriteStartObject();
            ResultJson.Head(json, plan.Study.Scenario);
            json.WriteString("conclusion", SweepConclusion.Of(tally));
            json.WriteStartArray("notes");
            foreach (string note in SweepConclusion.Notes(tally))
            {
                json.WriteStringValue(note);
            }

            json.WriteEndArray();
            json.Aims(plan.Aims);
            json.WriteStartArray("settings");
            foreach (var variation in plan.Grid.Variations)
            {
                json.WriteStartObject();
                json.WriteString("path", variation.Path);
                json.WriteStartArray("values");
                foreach (var value in variation.Values)
                {
                    json.WriteStringValue(value.Value);
                }

                json.WriteEndArray();
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.Number("tolerance", plan.Settings.Tolerance);
            json.WriteNumber("launches", tally.Count);
            json.WriteNumber("failed", tally.Failed);
            Optional(json, "best_set_up", tally.Best?.SetUp);
            Optional(json, "present_set_up", plan.Grid.Present);
            json.WritePropertyName("present");
            if (tally.Present is { } now)
            {
                Row(json, plan, now);
            }
            else
            {
                json.WriteNullValue();
            }

            json.WriteStartArray("rows");
            int written = 0;
            foreach (GridRow row in rows)
            {
                Row(json, plan, row);
                if (++written % RowsAtATime == 0)
                {
                    json.Flush();
                }
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }

    private static void Row(Utf8JsonWriter json, GridPlan plan, GridRow row)
    {
        json.WriteStartObject();
        if (row.SetUp >= 0)
        {
            json.WriteNumber("set_up", row.SetUp);
            json.WriteStartArray("values");
            for (int i = 0; i < plan.Grid.Variations.Count; i++)
            {
                json.WriteStringValue(plan.Grid.Variations[i].Values[plan.Grid.Place(row.SetUp, i)].Value);
            }

            json.WriteEndArray();
        }

        json.WriteStartObject("figures");
        for (int i = 0; i < plan.Figures.Count; i++)
        {
            json.Number(plan.Figures[i], row.Figures[i]);
        }

        json.WriteEndObject();
        json.Number("score_points", row.Score.Points);
        json.Number("beyond_limits_points", row.Score.Beyond);
        if (plan.HoldsGrip)
        {
            json.Number("score_with_grip_slope_points", row.WithSlope.Points);
            json.Number("beyond_limits_with_grip_slope_points", row.WithSlope.Beyond);
        }

        json.WriteString("trouble", row.Trouble);
        json.WriteEndObject();
    }

    private static void Optional(Utf8JsonWriter json, string key, long? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(key, number);
        }
        else
        {
            json.WriteNull(key);
        }
    }
}
