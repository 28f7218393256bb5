using System.Text.Json;
using LaunchSim.Studies.Doubting;

namespace LaunchSim.Web.Desk;

/// <summary>What a client asks for over the socket.</summary>
/// <param name="Number">The client's number for it; 0 for what has none.</param>
internal abstract record LiveAsk(long Number)
{
    // Doubts on the desk are looked at while somebody waits.
    private const int UsualCars = 500;

    /// <summary>Reads a message.</summary>
    /// <param name="utf8">Its text.</param>
    /// <exception cref="MalformedException">It is none of those below.</exception>
    public static LiveAsk Read(ReadOnlyMemory<byte> utf8)
    {
        using JsonDocument document = Sent.Read(utf8);
        JsonElement sent = document.RootElement;
        string ask = Sent.Text(sent, "ask");
        return ask switch
        {
            "solve" => new SolveAsk(NumberOf(sent), Sent.Edits(sent)),
            "pin" => new PinAsk(NumberOf(sent), Sent.OptionalEdits(sent, "edits")),
            "next" => new NextAsk(NumberOf(sent), Sent.Edits(sent)),
            "doubt" => new DoubtAsk(NumberOf(sent), Sent.Edits(sent), sent.TryGetProperty("cars", out _) ? (int)Sent.Whole(sent, "cars", DoubtSettings.FewestCars, DoubtSettings.UsualCars) : UsualCars),
            "cancel" => new CancelAsk(),
            _ => throw new MalformedException($"found `{DeskLog.Plain(ask)}` as `ask`; allowed: solve, pin, next, doubt, cancel"),
        };
    }

    private static long NumberOf(JsonElement sent) => Sent.Whole(sent, "number", 1, 1L << 53);
}

/// <summary>The launch of a set-up.</summary>
/// <param name="Number">The client's number.</param>
/// <param name="Edits">What was moved.</param>
internal sealed record SolveAsk(long Number, IReadOnlyList<(string Path, string Value)> Edits) : LiveAsk(Number);

/// <summary>A set-up to hold others against.</summary>
/// <param name="Number">The client's number.</param>
/// <param name="Edits">What was moved; null for none from now on.</param>
internal sealed record PinAsk(long Number, IReadOnlyList<(string Path, string Value)>? Edits) : LiveAsk(Number);

/// <summary>A study; one at a time.</summary>
/// <param name="Number">The client's number.</param>
/// <param name="Edits">What was moved before.</param>
internal abstract record StudyAsk(long Number, IReadOnlyList<(string Path, string Value)> Edits) : LiveAsk(Number);

/// <summary>What to change next.</summary>
/// <param name="Number">The client's number.</param>
/// <param name="Edits">What was moved before.</param>
internal sealed record NextAsk(long Number, IReadOnlyList<(string Path, string Value)> Edits) : StudyAsk(Number, Edits);

/// <summary>How sure the answer is.</summary>
/// <param name="Number">The client's number.</param>
/// <param name="Edits">What was moved before.</param>
/// <param name="Cars">How many plausible cars.</param>
internal sealed record DoubtAsk(long Number, IReadOnlyList<(string Path, string Value)> Edits, int Cars) : StudyAsk(Number, Edits);

/// <summary>An end to the study that is in work.</summary>
internal sealed record CancelAsk() : LiveAsk(0);
