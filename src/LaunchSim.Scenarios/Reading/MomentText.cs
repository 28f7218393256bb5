using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Reading;

/// <summary>
/// The text of a moment taken apart: <c>0.12 s</c>, <c>0.12 ±0.02 s</c>, <c>frame 147 ±2</c>, <c>before frame 150</c>,
/// <c>after 0.4 s</c>, <c>never</c>. Capital letters count as small ones, since telephones begin a value with one.
/// </summary>
/// <param name="Bound">Whether it happened then, before, after, or never.</param>
/// <param name="IsFrame">Whether the number counts frames; otherwise seconds.</param>
/// <param name="Number">The frame, or the time in s; not a number for never.</param>
/// <param name="HalfWidth">The ± that was written, in the same; null when none was.</param>
/// <param name="NumberAt">Where the number stands in the text.</param>
internal sealed record MomentText(Recorded.SeenBound Bound, bool IsFrame, double Number, double? HalfWidth, int NumberAt)
{
    private const string Frame = "frame";

    public static MomentText? Read(ScalarNode node, bool never, out QuantityProblem? problem)
    {
        string text = node.Text;
        int at = text.Length - text.TrimStart().Length;
        problem = null;
        if (text.Trim().Equals("never", StringComparison.OrdinalIgnoreCase))
        {
            problem = never ? null : new(at, "`never` where it has to have happened", "leave the key away when it was not seen");
            return never ? new MomentText(Recorded.SeenBound.Never, false, double.NaN, null, at) : null;
        }

        Recorded.SeenBound bound = Takes(text, ref at, "before") ? Recorded.SeenBound.Before : Takes(text, ref at, "after") ? Recorded.SeenBound.After : Recorded.SeenBound.At;
        bool isFrame = Takes(text, ref at, Frame);
        QuantityText parts = QuantityText.Read(text[at..]);
        Quantity? quantity = null;
        if (parts.Problem is not null)
        {
            problem = parts.Problem with { Mend = $"{parts.Problem.Mend}; as in 0.12 s, 0.12 ±0.02 s or frame 147" };
        }
        else if (parts.Numbers.Length > 1 || parts.RowPercent is not null)
        {
            problem = new(0, $"{Shown.Quoted(text)}, more than one moment", "one number, with its ± before the unit: 0.12 ±0.02 s, or frame 147 ±2");
        }
        else if (!isFrame && parts.UnitText.Length == 0)
        {
            problem = new(0, $"{Shown.Quoted(text)}, neither a time nor a frame", $"write {text[at..].Trim()} s, or frame {text[at..].Trim()}");
        }
        else
        {
            quantity = QuantityReader.Read(parts, isFrame ? QuantityKind.Number : QuantityKind.Time, out problem);
        }

        if (quantity is null)
        {
            problem = problem! with { At = problem.At + at };
            return null;
        }

        if (bound != Recorded.SeenBound.At && quantity.SiDoubt() is not null)
        {
            problem = new(at, $"{Shown.Quoted(text)}, a bound with a ±", "write the bound alone: before and after say enough");
            return null;
        }

        return new MomentText(bound, isFrame, quantity.Si(), quantity.SiDoubt(), at + parts.NumbersAt[0]);
    }

    private static bool Takes(string text, ref int at, string word)
    {
        if (!text.AsSpan(at).StartsWith(word, StringComparison.OrdinalIgnoreCase) || at + word.Length >= text.Length || !char.IsWhiteSpace(text[at + word.Length]))
        {
            return false;
        }

        at += word.Length;
        while (at < text.Length && char.IsWhiteSpace(text[at]))
        {
            at++;
        }

        return true;
    }
}
