using LaunchSim.Scenarios.Units;
using static LaunchSim.Scenarios.Schema.Keys;

namespace LaunchSim.Scenarios.Schema;

/// <summary>Keys of the tyres.</summary>
internal static class TireKeys
{
    public static Section Tire(bool rear)
    {
        SchemaKey[] common =
        [
            Number("loaded_radius", QuantityKind.Length, Limits.Positive, rear ? "13.1 in" : "12.6 in", "Height of the wheel centre above the floor, measured", "Tape from the floor to the hub's middle, driver aboard"),
            Number("vertical_rate", QuantityKind.Rate, Limits.Positive, rear ? "800 lb/in" : "1100 lb/in", "Vertical rate at the measured pressure", "Change of scale reading over change of the hub's height; or the maker's"),
            Number("vertical_damping", QuantityKind.Damping, Limits.NotNegative, rear ? "1.5 lb·s/in" : "1 lb·s/in", "Vertical damping", "Rarely known; one or two lb·s/in"),
            Number("grip", QuantityKind.Number, Limits.Positive, rear ? "2.3" : "1.1", "Largest force over load, at the reference load and the measured pressure", "From the best passes: the car's acceleration tells"),
            Number("slip_stiffness", QuantityKind.Number, Limits.Positive, rear ? "40" : "20", "Slope of force over slip ratio at no slip, per unit load", "Tyre data; 15 to 25 for street tyres, more for slicks"),
            Number("peak_slip", QuantityKind.Number, Limits.Positive, rear ? "0.12" : "0.10", "Slip ratio at which the force is largest", "Wheel speed against car speed at the best acceleration"),
            Number("sliding_ratio", QuantityKind.Number, Limits.Between(0, 1, "above 0 and below 1"), rear ? "0.65" : "0.80", "Force at full spin over the largest force", "Tyre data; 0.6 to 0.85"),
            Number("load_sensitivity", QuantityKind.Number, Limits.NotNegative, rear ? "0.10" : "0.08", "Share of grip lost when the load doubles from the reference load", "Tyre data; 0.05 to 0.15"),
            Number("reference_load", QuantityKind.Force, Limits.Positive, rear ? "1000 lb" : "780 lb", "Load per tyre at which the grip was found", "The load on the tyre during the measurement"),
            Number("relaxation_length", QuantityKind.Length, Limits.Positive, rear ? "5 in" : "4 in", "How far the tyre rolls until its force has built up to 63 %", "Tyre data; about a third of the radius"),
            Number("rolling_resistance", QuantityKind.Number, Limits.NotNegative, rear ? "0.02" : "0.015", "Rolling resistance over load", "Tyre data; 0.01 to 0.02"),
        ];
        return rear
            ? new Section(
            [
                .. common,
                Pressure(true),
                Part("carcass", "The wind-up between rim and belt, and what spins", new Section(
                    Number("torsional_rate", QuantityKind.TorsionalRate, Limits.Positive, "14 kN·m/rad", "Torsional rate between rim and belt per tyre, at the measured pressure", "Lock the tyre on the floor, a bar on the wheel with a load, and read the angle"),
                    Number("torsional_damping", QuantityKind.TorsionalDamping, Limits.NotNegative, "12 N·m·s/rad", "Torsional damping between rim and belt per tyre", "Rarely known"),
                    Number("rim_inertia", QuantityKind.Inertia, Limits.Positive, "1.6 kg·m²", "Spin inertia of both rims, hubs, axle shafts, the ring gear, and N² times what turns with the driveshaft", "Bifilar swing of a wheel without tyre, or mass × radius²; N is the final drive"),
                    Number("belt_inertia", QuantityKind.Inertia, Limits.Positive, "2.6 kg·m²", "Spin inertia of both tyres' belts", "About the tyres' mass × (0.9 × radius)²"))),
            ])
            : new Section(
            [
                .. common,
                Number("spin_inertia", QuantityKind.Inertia, Limits.Positive, "1.6 kg·m²", "Spin inertia of both wheels and tyres", "Bifilar swing, or mass × (0.8 × radius)²"),
                Pressure(false),
            ]);
    }

    private static SchemaKey Pressure(bool rear)
    {
        const string Twice = "Measure at two pressures; the difference over the difference of pressure";
        SchemaKey[] torsional = rear
            ? [Number("torsional", QuantityKind.TorsionalRatePerPressure, Limits.Any, "0.4 kN·m/rad/psi", "Change of the torsional rate with pressure, per tyre", Twice)]
            : [];
        return Part("pressure", "The pressure, and what it changes", new Section(
        [
            Number("measured", QuantityKind.Pressure, Limits.Positive, "16 psi", "Pressure at which radius and rates were measured", "Gauge, cold, on the scales"),
            Number("set", QuantityKind.Pressure, Limits.Positive, "16 psi", "Pressure that is set now", "Gauge"),
            Number("vertical", QuantityKind.RatePerPressure, Limits.Any, "40 lb/in/psi", "Change of the vertical rate with pressure", Twice),
            .. torsional,
            Number("grip", QuantityKind.PerPressure, Limits.Any, "-0.01 /psi", "Relative change of grip with pressure", "From passes at two pressures"),
        ]), Need.Optional, "as measured");
    }
}
