using LaunchSim.Scenarios.Units;

namespace LaunchSim.Charts.Measure;

/// <summary>The units that stand after the lines to write on, as the scenario file takes them.</summary>
/// <param name="system">Whose units.</param>
internal sealed class MeasureUnits(UnitSystem system)
{
    private readonly bool _isShop = system == UnitSystem.Shop;

    /// <summary>Whose units.</summary>
    public UnitSystem System { get; } = system;

    /// <summary>Lengths.</summary>
    public string Length => _isShop ? "in" : "mm";

    /// <summary>Scale readings.</summary>
    public string Force => _isShop ? "lb" : "kgf";

    /// <summary>Pressures.</summary>
    public string Pressure => _isShop ? "psi" : "bar";

    /// <summary>How much left and right may differ before something is wrong.</summary>
    public string Slack => _isShop ? "1/8 in" : "3 mm";
}
