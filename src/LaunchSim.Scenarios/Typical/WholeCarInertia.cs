namespace LaunchSim.Scenarios.Typical;

/// <summary>
/// Pitch inertia of a whole car about its centre of gravity, from the open measurements behind SAE 1999-01-1336, refitted
/// for this project: I = 1.042·m·a·b with a standard deviation of 0.091 on the factor (cars), a and b the distances of the
/// centre of gravity from the axles.
/// </summary>
public static class WholeCarInertia
{
    /// <summary>k²/(a·b) of cars, without unit.</summary>
    public const double Factor = 1.042;

    /// <summary>Its standard deviation, without unit.</summary>
    public const double FactorDeviation = 0.091;

    /// <summary>The whole car, kg·m².</summary>
    /// <param name="mass">The whole car's mass m, kg.</param>
    /// <param name="fromRear">Distance a of the centre of gravity from the rear axle, m.</param>
    /// <param name="fromFront">Distance b of the centre of gravity from the front axle, m.</param>
    public static double Of(double mass, double fromRear, double fromFront) => Factor * mass * fromRear * fromFront;

    /// <summary>
    /// What is left for the sprung body about its own centre of gravity when the unsprung masses are taken out at their wheel
    /// centres by parallel axes, and what they have of their own, kg·m².
    /// </summary>
    /// <param name="whole">The whole car about its centre of gravity, kg·m².</param>
    /// <param name="mass">The whole car's mass, kg.</param>
    /// <param name="front">The front unsprung parts.</param>
    /// <param name="rear">The rear unsprung parts.</param>
    public static double Sprung(double whole, double mass, UnsprungPart front, UnsprungPart rear)
    {
        double sprung = mass - front.Mass - rear.Mass;
        double ahead = -((front.Mass * front.Ahead) + (rear.Mass * rear.Ahead)) / sprung;
        double up = -((front.Mass * front.Up) + (rear.Mass * rear.Up)) / sprung;
        return whole - Own(front) - Own(rear) - (sprung * ((ahead * ahead) + (up * up)));

        static double Own(UnsprungPart part) => part.Inertia + (part.Mass * ((part.Ahead * part.Ahead) + (part.Up * part.Up)));
    }
}

/// <summary>Unsprung parts of one axle, both sides, seen from the whole car's centre of gravity.</summary>
/// <param name="Mass">Mass, kg.</param>
/// <param name="Ahead">How far ahead of the centre of gravity, m.</param>
/// <param name="Up">How far above it, m.</param>
/// <param name="Inertia">Their own pitch inertia about the wheel centre, wheels included, kg·m².</param>
public readonly record struct UnsprungPart(double Mass, double Ahead, double Up, double Inertia);
