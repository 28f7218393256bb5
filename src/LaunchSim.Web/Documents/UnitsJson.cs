using System.Text.Json;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Web.Documents;

/// <summary>The units in which the front end writes numbers.</summary>
internal static class UnitsJson
{
    /// <summary>Writes the object of units.</summary>
    /// <param name="json">The writer, within the document's object.</param>
    /// <param name="readout">The units.</param>
    public static void Write(Utf8JsonWriter json, Readout readout)
    {
        json.WriteString("unitSystem", readout.IsShop ? "shop" : "si");
        json.WriteStartObject("units");
        Unit("travel", readout.Travel);
        Unit("place", readout.Place);
        Unit("distance", readout.Distance);
        Unit("speed", readout.Speed);
        Unit("shaftSpeed", readout.ShaftSpeed);
        Unit("acceleration", Readout.Acceleration);
        Unit("force", readout.Force);
        Unit("torque", readout.Torque);
        Unit("angle", Readout.Angle);
        Unit("time", Readout.Time);
        Unit("lag", Readout.Lag);
        Unit("rotation", Readout.Rotation);
        Unit("percent", Readout.Percent);
        json.WriteEndObject();

        void Unit(string name, Scale scale)
        {
            json.WriteStartObject(name);
            json.WriteString("unit", scale.Unit);
            json.WriteNumber("factor", scale.Factor);
            json.WriteNumber("decimals", scale.Decimals);
            json.WriteEndObject();
        }
    }
}
