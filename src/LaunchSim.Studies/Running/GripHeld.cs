using LaunchSim.Vehicle;

namespace LaunchSim.Studies.Running;

/// <summary>
/// Takes out what the entered grip-for-pressure slope does to a change of pressure: the tyres keep the grip that they have
/// at the pressure that is set now, while rates and radii follow the new one. The slope is the weakest of all entered
/// numbers; what is won by it alone must not decide what is changed.
/// </summary>
public static class GripHeld
{
    /// <summary>Whether a change touches a pressure at which the slope would count.</summary>
    public static bool Matters(Car now, Car changed) =>
        Factor(now.Front.Tire) != Factor(changed.Front.Tire) || Factor(now.Rear.Tire) != Factor(changed.Rear.Tire);

    /// <summary>The changed car with the grip of the present pressures.</summary>
    public static Car Of(Car now, Car changed) => changed with
    {
        Front = changed.Front with { Tire = Held(now.Front.Tire, changed.Front.Tire) },
        Rear = changed.Rear with { Tire = Held(now.Rear.Tire, changed.Rear.Tire) },
    };

    // Grip and slip stiffness go together, so that the curve keeps its shape, as it does with a slope.
    private static Tire Held(Tire now, Tire changed)
    {
        double factor = Factor(now);
        return factor == Factor(changed) ? changed : changed with
        {
            Grip = changed.Grip * factor,
            SlipStiffness = changed.SlipStiffness * factor,
            Pressure = changed.Pressure! with { GripSlope = 0 },
        };
    }

    private static double Factor(Tire tire) => tire.Pressure is { } pressure ? 1 + (pressure.GripSlope * (pressure.Set - pressure.Measured)) : 1;
}
