using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace LaunchSim.Web.Desk;

/// <summary>What tells the user's own pages from anybody else on the machine: drawn anew for each desk, 256 bits.</summary>
internal sealed class DeskToken
{
    private readonly byte[] _hash;

    private DeskToken(string text) => (Text, _hash) = (text, Hash(text));

    /// <summary>The token as it stands in addresses and headers.</summary>
    public string Text { get; }

    /// <summary>A new one.</summary>
    public static DeskToken Draw() => new(Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(32)));

    /// <summary>Whether a text is the token; takes the same time for every text of a length.</summary>
    /// <param name="text">What was sent; null when nothing was.</param>
    public bool IsOwn(string? text) => text is not null && CryptographicOperations.FixedTimeEquals(Hash(text), _hash);

    private static byte[] Hash(string text) => SHA256.HashData(Encoding.UTF8.GetBytes(text));
}
