namespace LaunchSim.Figures;

/// <summary>One figure that can be read off a launch.</summary>
/// <param name="Key">Fixed key with the SI unit as its last part, the same in every output.</param>
/// <param name="Name">Short name in the trade's words, without a unit.</param>
/// <param name="Unit">What it measures.</param>
/// <param name="Description">How it is defined: sign, window, per side or per axle.</param>
public sealed record FigureDefinition(string Key, string Name, FigureUnit Unit, string Description);

/// <summary>A figure's value in one launch.</summary>
/// <param name="Definition">What it is.</param>
/// <param name="Value">Value in SI units; null when it has no meaning in this launch or was not reached.</param>
/// <param name="Reason">Why there is no value, in plain words; null when there is one.</param>
public readonly record struct Figure(FigureDefinition Definition, double? Value, string? Reason)
{
    /// <summary>The figure's key.</summary>
    public string Key => Definition.Key;
}
