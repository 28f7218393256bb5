using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Writing;

/// <summary>What drives the car of a starter scenario.</summary>
public enum StarterDriveline
{
    /// <summary>Torque at the axle against time: what suits a person who knows a 60 ft time or less.</summary>
    AxleTorque,

    /// <summary>An engine with its sheet, a clutch and gears.</summary>
    Clutch,

    /// <summary>An engine with its sheet, a converter and gears.</summary>
    Converter,
}

/// <summary>What a person knows of a car whose scenario is to be begun.</summary>
public sealed record StarterCar
{
    /// <summary>What the car and set-up are called.</summary>
    public required string Name { get; init; }

    /// <summary>The linkage's word in the file, such as <c>four-link</c>.</summary>
    public required string Linkage { get; init; }

    /// <summary>What drives it.</summary>
    public StarterDriveline Driveline { get; init; }

    /// <summary>In whose units what is not entered is written.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>What was measured: whole values by path, in the notation of the file; later ones win.</summary>
    public IReadOnlyList<(string Path, string Value)> Entered { get; init; } = [];

    /// <summary>What is known besides and makes typical values better.</summary>
    public TypicalHints Hints { get; init; } = new();

    /// <summary>The words that the file begins with whatever is measured.</summary>
    internal IEnumerable<(string Path, string Value)> Words =>
    [
        ("rear.linkage.type", Linkage),
        ("driveline.type", Driveline == StarterDriveline.AxleTorque ? "axle-torque" : "engine"),
    ];
}
