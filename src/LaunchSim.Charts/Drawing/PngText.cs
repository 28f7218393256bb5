using System.Buffers.Binary;
using System.Text;

namespace LaunchSim.Charts.Drawing;

/// <summary>
/// Puts a text chunk into a PNG, right after its header, so that a file can be told from another program's
/// (ISO/IEC 15948, Portable Network Graphics: chunk layout and its cyclic redundancy code, from memory).
/// </summary>
internal static class PngText
{
    // The signature, and the header chunk with length, name, 13 bytes and code.
    private const int AfterHeader = 8 + 25;

    /// <summary>The PNG with the text.</summary>
    /// <param name="png">A whole PNG.</param>
    /// <param name="keyword">The chunk's keyword, such as Software.</param>
    /// <param name="text">The text, in Latin letters.</param>
    /// <param name="stream">Receives it.</param>
    public static void Write(ReadOnlySpan<byte> png, string keyword, string text, Stream stream)
    {
        byte[] body = Encoding.Latin1.GetBytes($"tEXt{keyword}\0{text}");
        Span<byte> number = stackalloc byte[4];
        stream.Write(png[..AfterHeader]);
        BinaryPrimitives.WriteInt32BigEndian(number, body.Length - 4);
        stream.Write(number);
        stream.Write(body);
        BinaryPrimitives.WriteUInt32BigEndian(number, Code(body));
        stream.Write(number);
        stream.Write(png[AfterHeader..]);
    }

    private static uint Code(ReadOnlySpan<byte> bytes)
    {
        uint code = uint.MaxValue;
        foreach (byte b in bytes)
        {
            code ^= b;
            for (int bit = 0; bit < 8; bit++)
            {
                code = (code >> 1) ^ (0xEDB88320u & (uint)-(int)(code & 1));
            }
        }

        return ~code;
    }
}
