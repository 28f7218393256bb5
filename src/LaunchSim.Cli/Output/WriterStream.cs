using System.Text;

namespace LaunchSim.Cli.Output;

/// <summary>A stream of UTF-8 that ends in a text writer, so that a long document need not be held whole.</summary>
/// <param name="output">The writer.</param>
internal sealed class WriterStream(TextWriter output) : Stream
{
    // A character may be parted between two pieces.
    private readonly Decoder _decoder = Encoding.UTF8.GetDecoder();

    /// <inheritdoc/>
    public override bool CanRead => false;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => true;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <inheritdoc/>
    public override void Flush()
    {
        // The writer is flushed by who owns it.
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<byte> buffer)
    {
        char[] text = new char[Encoding.UTF8.GetMaxCharCount(buffer.Length)];
        output.Write(text, 0, _decoder.GetChars(buffer, text, false));
    }
}
