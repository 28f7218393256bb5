using System.Globalization;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Seen;

/// <summary>Seen facts and predicted ones as they are read.</summary>
public static class SeenText
{
    // Less than this nobody tells from together, s.
    private const double Together = 0.0005;

    /// <summary>What is compared, with the beam's place.</summary>
    /// <param name="fact">The fact.</param>
    /// <param name="readout">The units.</param>
    public static string Name(SeenComparison fact, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(fact);
        ArgumentNullException.ThrowIfNull(readout);
        return fact.Mark is { } place ? $"{fact.Words}, {readout.Distance.Text(place)}" : fact.Words;
    }

    /// <summary>What was seen, with the time that a frame stands for.</summary>
    /// <param name="fact">The fact.</param>
    public static string Seen(SeenComparison fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        bool isFrame = fact.Written.Contains("frame", StringComparison.Ordinal) && double.IsFinite(fact.Seen);
        return isFrame ? $"{fact.Written} ({Readout.Time.Text(fact.Seen)})" : fact.Written;
    }

    /// <summary>What is predicted.</summary>
    /// <param name="fact">The fact.</param>
    public static string Predicted(SeenComparison fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        return !fact.Happens ? fact.Kind == SeenKind.Order ? "one end never" : "never"
            : fact.Kind != SeenKind.Order ? Readout.Time.Text(fact.Predicted)
            : Math.Abs(fact.Predicted) < Together ? "together"
            : $"{(fact.Predicted > 0 ? "rear" : "front")}, by {Readout.Lag.Text(Math.Abs(fact.Predicted))}";
    }

    /// <summary>Whether both agree, else by how much.</summary>
    /// <param name="fact">The fact.</param>
    public static string Verdict(SeenComparison fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        if (fact.Agrees)
        {
            return "as seen";
        }

        bool isOnly = !fact.Happens || fact.Kind == SeenKind.Never;
        return isOnly ? "not as seen"
            : string.Create(CultureInfo.InvariantCulture, $"predicted {Readout.Lag.Text(Math.Abs(fact.Difference))} {(fact.Difference > 0 ? "late" : "early")}");
    }

    /// <summary>A fact as it was seen: in seconds with how far off it may be nineteen times in twenty, or in its words.</summary>
    /// <param name="fact">The fact.</param>
    public static string WithDoubt(SeenComparison fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        return fact.Kind switch
        {
            SeenKind.Time => $"{Readout.Time.Number(fact.Seen)} ±{Readout.Time.Text(SeenDoubt.HalfWidth(fact.Sd))}",
            SeenKind.Before => "before " + Readout.Time.Text(fact.Seen),
            SeenKind.After => "after " + Readout.Time.Text(fact.Seen),
            _ => fact.Written,
        };
    }

    /// <summary>By how much a prediction differs from what was seen, or that only one of them does it.</summary>
    /// <param name="fact">The fact.</param>
    public static string Difference(SeenComparison fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        return fact.Kind == SeenKind.Never ? fact.Happens ? "seen never" : "agree"
            : !fact.Happens ? "predicted never"
            : fact.Kind == SeenKind.Time ? Readout.Lag.WithSign(fact.Difference)
            : fact.Difference == 0 ? "agree" : $"off by {Readout.Lag.Text(Math.Abs(fact.Difference))}";
    }
}
