using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios;

/// <summary>What the side view needs, as measured: enough for percent, instant centre and bars.</summary>
public sealed record GeometryPart
{
    /// <summary>Wheelbase, m; above 0.</summary>
    public required double Wheelbase { get; init; }

    /// <summary>Scale reading of the front axle, both tyres, N; above 0.</summary>
    public required double FrontScale { get; init; }

    /// <summary>Scale reading of the rear axle, both tyres, N; above 0.</summary>
    public required double RearScale { get; init; }

    /// <summary>Height of the whole car's centre of gravity above the floor, m; above 0.</summary>
    public required double CentreOfGravityHeight { get; init; }

    /// <summary>The rear linkage with the holes in use.</summary>
    public required Linkage Linkage { get; init; }

    /// <summary>Height of the rear wheel centre above the floor, m, above 0; null when the file does not have it.</summary>
    public double? RearLoadedRadius { get; init; }

    /// <summary>Pinion angle, rad, nose up positive; null when the file does not have it.</summary>
    public double? PinionAngle { get; init; }
}
