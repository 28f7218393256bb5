using System.Text.Json;
using LaunchSim.Charts.SideViews;
using LaunchSim.Dynamics;
using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;

namespace LaunchSim.Web.Documents;

/// <summary>
/// The standing car from the side for the front end, m: ahead of the rear wheel centre and above the ground. The moving car
/// is this one turned and shifted: body points with the body, housing points with the axle.
/// </summary>
internal static class CarJson
{
    /// <summary>Writes the car's object.</summary>
    /// <param name="json">The writer, within the launch's object.</param>
    /// <param name="scenario">The scenario.</param>
    /// <param name="car">Its standing car.</param>
    public static void Write(Utf8JsonWriter json, Scenario scenario, StandingCar car)
    {
        var scene = SideViewScene.Of(scenario, car);
        Standing standing = car.Standing;
        LaunchModel model = car.Model;
        json.WriteStartObject("car");
        json.WriteNumber("wheelbase", standing.Wheelbase);
        Wheel(json, "rear", standing.RearWheelHeight, model.RearTire.FreeRadius, standing.RearLoad, model.RearTire.PeakSlip);
        Wheel(json, "front", standing.FrontWheelHeight, model.FrontTire.FreeRadius, standing.FrontLoad, model.FrontTire.PeakSlip);

        // The front wheel's path stands upright in the axes of the car as measured.
        json.WriteNumber("pitch", standing.Pitch);
        Point(json, "centreOfGravity", scene.CentreOfGravity);
        json.WriteStartArray("bars");
        foreach (SceneBar bar in scene.Bars)
        {
            json.WriteStartObject();
            json.WriteString("name", bar.Name);
            Point(json, "axle", bar.Axle);
            Point(json, "body", bar.Body);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("units");
        foreach (SceneUnit unit in scene.Units)
        {
            json.WriteStartObject();
            json.WriteString("name", unit.Name);
            Point(json, "axle", unit.Axle);
            Point(json, "body", unit.Body);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("holes");
        foreach (SceneHole hole in scene.Holes)
        {
            json.WriteStartObject();
            json.WriteString("bracket", hole.Bracket);
            json.WriteString("name", hole.Name);
            json.WriteBoolean("inUse", hole.IsInUse);
            json.WriteBoolean("onAxle", hole.Bracket.EndsWith(".axle", StringComparison.Ordinal));
            Point(json, "at", hole.At);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Point(json, "wheelieBar", scene.WheelieBar);
        Points(json, "ballast", scene.Ballast);
        Points(json, "outline", BodyShape.Outline(standing.Wheelbase));
        Line(json, car.Line);
        json.WriteEndObject();
    }

    private static void Wheel(Utf8JsonWriter json, string name, double height, double radius, double load, double peakSlip)
    {
        json.WriteStartObject(name);
        json.WriteNumber("height", height);
        json.WriteNumber("radius", radius);
        json.WriteNumber("load", load);
        json.WriteNumber("peakSlip", peakSlip);
        json.WriteEndObject();
    }

    private static void Line(Utf8JsonWriter json, StaticLine line)
    {
        json.WriteStartObject("line");
        json.Number("percent", line.Percent);
        json.Number("slope", line.Slope);
        json.Number("ahead", line.InstantCentreAhead);
        json.Number("up", line.InstantCentreUp);
        json.Number("neutralSlope", line.NeutralSlope);
        json.WriteEndObject();
    }

    private static void Point(Utf8JsonWriter json, string name, Point? point)
    {
        json.WritePropertyName(name);
        if (point is { } place)
        {
            Pair(json, place);
        }
        else
        {
            json.WriteNullValue();
        }
    }

    private static void Points(Utf8JsonWriter json, string name, IEnumerable<Point> points)
    {
        json.WriteStartArray(name);
        foreach (Point place in points)
        {
            Pair(json, place);
        }

        json.WriteEndArray();
    }

    private static void Pair(Utf8JsonWriter json, Point place)
    {
        json.WriteStartArray();
        json.WriteNumberValue(Math.Round(place.Ahead, 6));
        json.WriteNumberValue(Math.Round(place.Up, 6));
        json.WriteEndArray();
    }
}
