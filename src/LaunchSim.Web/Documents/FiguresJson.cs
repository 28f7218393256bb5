using System.Text.Json;
using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Web.Documents;

/// <summary>The figures for the front end: family by family, each as a person reads it and in SI.</summary>
internal static class FiguresJson
{
    /// <summary>Writes the families.</summary>
    /// <param name="json">The writer, within the launch's object.</param>
    /// <param name="figures">The figures.</param>
    /// <param name="readout">The units.</param>
    public static void Write(Utf8JsonWriter json, FigureSet figures, Readout readout)
    {
        json.WriteStartArray("figures");
        foreach (IFigureFamily family in figures.Catalog.Families)
        {
            json.WriteStartObject();
            json.WriteString("title", family.Title);
            json.WriteStartArray("rows");
            foreach (FigureDefinition definition in family.Definitions)
            {
                Row(json, definition, figures.Get(definition.Key), readout);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Row(Utf8JsonWriter json, FigureDefinition definition, Figure figure, Readout readout)
    {
        json.WriteStartObject();
        json.WriteString("key", definition.Key);
        json.WriteString("name", definition.Name);
        if (figure.Value is { } value)
        {
            (string number, string unit) = FigureFormat.Of(definition, value, readout);
            json.WriteString("number", number);
            json.WriteString("unit", unit);
            if (double.IsFinite(value))
            {
                json.WriteNumber("value", value);
            }
        }
        else
        {
            json.WriteString("reason", figure.Reason ?? "no value in this run");
        }

        json.WriteEndObject();
    }
}
