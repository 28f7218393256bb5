namespace LaunchSim.Passes.Seen;

/// <summary>What kind of statement a seen fact is.</summary>
public enum SeenKind
{
    /// <summary>A time.</summary>
    Time,

    /// <summary>It had happened by then.</summary>
    Before,

    /// <summary>It had not happened by then.</summary>
    After,

    /// <summary>It did not happen.</summary>
    Never,

    /// <summary>Which end is first, or that both are together.</summary>
    Order,
}

/// <summary>One seen fact beside the prediction.</summary>
/// <param name="Key">Its key in the pass file, such as <c>rear_moves</c>; <c>times[0]</c> for a time at a beam.</param>
/// <param name="Words">What it is called, such as <c>Rear moves</c>.</param>
/// <param name="Kind">What kind of statement it is.</param>
/// <param name="Written">As it stands in the pass file.</param>
/// <param name="Seen">The seen time, s; of a bound the bound; not a number for an order and for never.</param>
/// <param name="Predicted">
/// The predicted time, s; for an order by how much the front comes after the rear; not a number for what the prediction never
/// does.
/// </param>
/// <param name="Difference">
/// Predicted less seen, s: positive when the prediction is late. Of a bound or an order, only as far as it is broken, 0 while it is kept.
/// Where the one happens and the other never does it is no time between two instants but says how far they are apart: what
/// was never seen counts by how long the prediction does it, with a minus; what the prediction never does counts as done at its end.
/// </param>
/// <param name="Sd">One standard deviation of what was seen, s, above 0.</param>
public sealed record SeenComparison(string Key, string Words, SeenKind Kind, string Written, double Seen, double Predicted, double Difference, double Sd)
{
    /// <summary>Where the beam is, m; null for what is no time at a beam.</summary>
    public double? Mark { get; init; }

    /// <summary>Whether other facts of the same pass say it already, and better: it then adds nothing to a fit.</summary>
    public bool IsRepeated { get; init; }

    /// <summary>Whether the prediction does it at all.</summary>
    public bool Happens => !double.IsNaN(Predicted);

    /// <summary>The difference in standard deviations of what was seen.</summary>
    public double Residual => Difference / Sd;

    /// <summary>Whether prediction and sight agree within two standard deviations of what was seen.</summary>
    public bool Agrees => Math.Abs(Residual) <= 2;
}
