using System.Globalization;
using LaunchSim.Scenarios.Schema;

namespace LaunchSim.Scenarios.Reading;

/// <summary>Bound values → the aims as entered.</summary>
internal static class AimReading
{
    /// <summary>The aims; null when there is no section <c>aims</c>.</summary>
    public static EnteredAims? Of(BoundValues values) => !values.HasSection("aims") ? null : new EnteredAims(
        values.Find("aims.profile")?.Text,
        [.. AimKeys.Names.Where(name => values.HasSection($"aims.{name}")).Select(name => One(values, name))]);

    private static EnteredAim One(BoundValues values, string name)
    {
        string at = $"aims.{name}";
        Place place = values.PlaceOf(at, new Place("", 0, 0));
        return new EnteredAim
        {
            Name = name,
            Near = values.FindNumber($"{at}.near"),
            Within = values.FindNumber($"{at}.within"),
            From = values.FindNumber($"{at}.from") ?? values.FindNumber($"{at}.least"),
            To = values.FindNumber($"{at}.to") ?? values.FindNumber($"{at}.most"),
            Point = values.FindNumber($"{at}.point"),
            Weight = values.FindNumber($"{at}.weight"),
            IsLimit = values.Find($"{at}.limit")?.Text is { } word ? word == "yes" : null,
            Place = place.Line > 0 ? string.Create(CultureInfo.InvariantCulture, $"{place.Origin}:{place.Line}:{place.Column}") : place.Origin,
        };
    }
}
