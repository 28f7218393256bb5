using System.Globalization;
using System.Text;

namespace LaunchSim.Web.Desk;

/// <summary>Which names a new file may get: plain ones that every system takes, in the folder itself.</summary>
internal static class VariantName
{
    private const string Ending = ".yaml";

    // Of one file, on every usual file system, with room for a temporary one's.
    private const int LongestBytes = 200;

    // Names of devices on one of the usual systems, whatever they end in.
    private static readonly string[] Devices =
        ["CON", "PRN", "AUX", "NUL", "CONIN$", "CONOUT$", .. Enumerable.Range(0, 10).SelectMany(i => new[] { $"COM{i.ToString(CultureInfo.InvariantCulture)}", $"LPT{i.ToString(CultureInfo.InvariantCulture)}" }), "COM¹", "COM²", "COM³", "LPT¹", "LPT²", "LPT³"];

    /// <summary>What is wrong with a name, in words that follow 'found'; null when nothing is.</summary>
    /// <param name="name">The name as it was sent.</param>
    public static string? Problem(string name)
    {
        if (!name.EndsWith(Ending, StringComparison.Ordinal) || name.Length == Ending.Length)
        {
            return $"the name `{DeskLog.Plain(name)}`; allowed: one that ends in {Ending}, as in my-car-stiffer.yaml";
        }

        string stem = name[..^Ending.Length];
        foreach (char c in stem)
        {
            if (!char.IsLetterOrDigit(c) && c is not ('-' or '_' or '.' or ' ' or '+' or ',' or '(' or ')'))
            {
                return $"`{DeskLog.Plain(c.ToString())}` in the name `{DeskLog.Plain(name)}`; allowed: letters, digits, blanks and - _ . + , ( )";
            }
        }

        return !char.IsLetterOrDigit(stem[0]) ? $"the name `{DeskLog.Plain(name)}`; allowed: one that begins with a letter or a digit"
            : stem[^1] is ' ' or '.' ? $"the name `{DeskLog.Plain(name)}`; allowed: one without a blank or a dot before {Ending}"
            : Devices.Contains(stem.Split('.')[0].TrimEnd(), StringComparer.OrdinalIgnoreCase) ? $"the name `{DeskLog.Plain(name)}`, which some systems keep for a device; choose another"
            : Encoding.UTF8.GetByteCount(name) > LongestBytes ? $"a name of more than {LongestBytes} bytes; choose a shorter one"
            : null;
    }
}
