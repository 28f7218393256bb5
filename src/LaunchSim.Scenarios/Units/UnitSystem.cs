namespace LaunchSim.Scenarios.Units;

/// <summary>Whose units a number is written in.</summary>
public enum UnitSystem
{
    /// <summary>Inches, feet, pounds, psi, mph.</summary>
    Shop,

    /// <summary>Metres, kilograms, newtons, pascals and their multiples.</summary>
    Si,
}
