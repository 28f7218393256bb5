using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Typical.Mistakes;

/// <summary>An entered number outside what is usual.</summary>
/// <param name="Entry">What it is a number of.</param>
/// <param name="Quantity">What was entered.</param>
/// <param name="Span">What is usual.</param>
/// <param name="Both">All that is usual of it: of a point both parts.</param>
/// <param name="Value">The number that is judged, SI.</param>
internal sealed record Suspicion(RegisterEntry Entry, Quantity Quantity, UsualSpan Span, IReadOnlyList<UsualSpan> Both, double Value)
{
    /// <summary>Whether it would be usual as another number.</summary>
    public bool Fits(double value) => Span.Holds(value);

    /// <summary>How far a number is from the middle of what is usual: the nearer, the likelier that it was meant.</summary>
    public double Distance(double value) => Span.Low > 0 && value > 0
        ? Math.Abs(Math.Log(value / Math.Sqrt(Span.Low * Span.High)) / Math.Log(Span.High / Span.Low))
        : Math.Abs((value - ((Span.Low + Span.High) / 2)) / (Span.High - Span.Low));
}

/// <summary>What may have been meant.</summary>
/// <param name="Text">What it would say, as in <c>800 lb/in</c>.</param>
/// <param name="Why">Which mistake that would be.</param>
/// <param name="Value">The number that would be judged, SI.</param>
internal sealed record Guess(string Text, string Why, double Value);
