using System.Security.Cryptography;
using System.Text;
using LaunchSim.Scenarios.Reading;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>What tells that a closed pass was changed by hand: a digest of its values. It is no secret and no proof, only a reminder.</summary>
internal static class PassSeal
{
    /// <summary>As many characters of the digest are written.</summary>
    public const int Length = 16;

    // Notes grow, and a name is only a name.
    private static readonly string[] Free = ["seal", "notes", "name"];

    public static string Of(MapNode root) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(NodeText.Canonical(root, Free))))[..Length];
}
