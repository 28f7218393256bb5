using System.Globalization;
using System.Text;

namespace LaunchSim.Web.Desk;

/// <summary>One plain line for each thing worth telling. Refusals are counted instead when there are many, so that a flood does not fill a terminal.</summary>
/// <param name="writer">Where to.</param>
/// <param name="window">How long a window is within which refusals are counted.</param>
internal sealed class DeskLog(TextWriter writer, TimeSpan window) : IDisposable
{
    // Enough to see what somebody is up to.
    private const int Shown = 20;
    private const int Longest = 200;

    private readonly Lock _lock = new();
    private Timer? _timer;
    private int _count;

    /// <summary>A log with windows of ten seconds.</summary>
    /// <param name="writer">Where to.</param>
    public DeskLog(TextWriter writer)
        : this(writer, TimeSpan.FromSeconds(10))
    {
    }

    /// <summary>How many refusals there were, told or counted.</summary>
    public long Refusals { get; private set; }

    /// <summary>Tells something.</summary>
    /// <param name="text">A sentence without its final stop.</param>
    public void Tell(string text)
    {
        lock (_lock)
        {
            Write(text);
        }
    }

    /// <summary>Tells of a fault of the program itself, which has ended no more than what it was met at.</summary>
    /// <param name="exception">What went wrong.</param>
    public void Fault(Exception exception) => Tell($"a fault of the program itself, please report it: {exception.GetType().Name}: {Plain(exception.Message)}");

    /// <summary>Tells of a refusal, or counts it.</summary>
    /// <param name="text">What was refused, and why.</param>
    public void Refused(string text)
    {
        lock (_lock)
        {
            Refusals++;
            if (++_count <= Shown)
            {
                Write($"refused {text}");
            }

            _timer ??= new Timer(_ => EndWindow(), null, window, Timeout.InfiniteTimeSpan);
        }
    }

    /// <summary>Text of a stranger made fit for a terminal: on one line, not too long, nothing that it would obey.</summary>
    /// <param name="text">The text.</param>
    public static string Plain(string text)
    {
        var plain = new StringBuilder(Math.Min(text.Length, Longest) + 1);
        foreach (char c in text.AsSpan(0, Math.Min(text.Length, Longest)))
        {
            _ = plain.Append(char.IsControl(c) || char.IsSurrogate(c) || char.GetUnicodeCategory(c) is UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator ? '?' : c);
        }

        return text.Length > Longest ? plain.Append('…').ToString() : plain.ToString();
    }

    /// <summary>Tells what was only counted so far.</summary>
    public void Dispose() => EndWindow();

    private void EndWindow()
    {
        lock (_lock)
        {
            if (_count > Shown)
            {
                Write(string.Create(CultureInfo.InvariantCulture, $"refused {_count - Shown:#,0} more in the last {window.TotalSeconds:0} s"));
            }

            _count = 0;
            _timer?.Dispose();
            _timer = null;
        }
    }

    private void Write(string text)
    {
        try
        {
            writer.WriteLine($"desk: {text}");
            writer.Flush();
        }
        catch (Exception exception) when (exception is IOException or ObjectDisposedException or UnauthorizedAccessException)
        {
            // Nobody listens any more; the desk goes on.
        }
    }
}
