using System.Globalization;

namespace LaunchSim.Scenarios.Reading;

/// <summary>A day as it is written in pass files: <c>2026-09-12</c>, <c>2026-09-12 14:10</c>; the clock is that of the place.</summary>
internal static class DateText
{
    private static readonly string[] Forms =
        ["yyyy-MM-dd", "yyyy-MM-dd H:mm", "yyyy-MM-dd HH:mm", "yyyy-MM-dd HH:mm:ss", "yyyy-MM-ddTHH:mm", "yyyy-MM-ddTHH:mm:ss"];

    public static bool TryRead(string text, out DateTime when) =>
        DateTime.TryParseExact(text.Trim(), Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out when);
}
