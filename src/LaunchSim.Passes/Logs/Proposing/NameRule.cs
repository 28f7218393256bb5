namespace LaunchSim.Passes.Logs.Proposing;

/// <summary>How a quantity is usually named: one line each in <see cref="All"/>. Common practice, no source.</summary>
/// <param name="Quantity">The quantity's key.</param>
/// <param name="IsMeant">Whether a name is one of it.</param>
internal sealed record NameRule(string Quantity, Func<HeaderWords, bool> IsMeant)
{
    /// <summary>All of them; the first that holds is taken, so what is narrower comes first.</summary>
    public static IReadOnlyList<NameRule> All { get; } =
    [
        new("driveshaft_speed", name => name.HasAny("driveshaft", "propshaft", "tailshaft", "cardan", "ds") || (name.HasAny("shaft", "prop") && name.HasAny("drive", "prop", "output", "speed", "rpm"))),
        new("pitch_rate", name => name.HasAny("pitch") && (name.HasAny("rate", "gyro", "dot", "vel", "velocity") || name.IsOf(Scenarios.Units.QuantityKind.AngularSpeed))),
        new("pitch", name => name.HasAny("pitch")),
        new("front_ride_height", name => IsHeight(name) && IsFront(name)),
        new("rear_ride_height", name => IsHeight(name) && IsRear(name)),
        new("front_gap", name => name.HasAny("gap", "opening") && IsFront(name)),
        new("rear_gap", name => name.HasAny("separation") || (name.HasAny("gap", "opening") && IsRear(name))),
        new("front_damper_travel", name => IsDamper(name) && IsFront(name)),
        new("rear_damper_travel", name => IsDamper(name) && IsRear(name)),
        new("front_wheel_speed", name => IsWheel(name) && IsFront(name)),
        new("wheel_speed", name => IsWheel(name) && IsRear(name)),
        new("engine_speed", name => name.HasAny("engine", "eng", "motor", "crank") && (name.HasAny("rpm", "speed", "revs") || name.Unit == "rpm")),
        new("engine_speed", name => name.Words is ["rpm"]),
        new("acceleration", name => IsForward(name) && (name.HasAny("acc", "accel", "acceleration", "accelerometer", "g", "force") || name.IsOf(Scenarios.Units.QuantityKind.Acceleration))),
        new("acceleration", name => name.HasAny("ax", "accx", "glong", "longg", "gx", "longacc", "accelx")),
        new("speed", name => name.HasAny("gps", "ground", "vehicle", "car") && name.HasAny("speed", "vel", "velocity")),
        new("speed", name => name.Words is ["speed"] or ["velocity"]),
    ];

    /// <summary>Names by which a quantity might be meant that do not say which end or direction, with what is missing.</summary>
    public static string? WhatIsMissing(HeaderWords name) =>
        name.HasAny("lat", "lateral", "vert", "vertical", "roll", "yaw") ? null
        : IsHeight(name) || IsDamper(name) || (IsWheel(name) && !name.HasAny("steering", "hand")) || name.HasAny("gap") ? "front or rear"
        : name.HasAny("acc", "accel", "acceleration") || name.IsOf(Scenarios.Units.QuantityKind.Acceleration) ? "whether it is along the car"
        : name.HasAny("gyro") ? "which axis"
        : null;

    private static bool IsFront(HeaderWords name) => name.HasAny("front", "frt", "f", "fl", "fr", "lf", "rf", "fa") && !name.HasAny("rear");

    private static bool IsRear(HeaderWords name) => name.HasAny("rear", "rr", "lr", "rl", "back", "ra", "axle", "driven") || (name.HasAny("r") && !name.HasAny("front", "f", "l", "left"));

    private static bool IsHeight(HeaderWords name) => name.HasAny("rideheight", "rh", "height", "laser") && !name.HasAny("gps", "altitude");

    private static bool IsDamper(HeaderWords name) =>
        (name.HasAny("damper", "dmp", "shock", "shk", "strut", "susp", "suspension") && !name.HasAny("force", "pressure", "temp", "temperature", "speed", "velocity", "click")) || name.HasAny("pot", "potentiometer", "linpot");

    private static bool IsWheel(HeaderWords name) => name.HasAny("wheel", "whl", "wspd", "ws", "tire", "tyre", "axle") && !name.HasAny("temp", "temperature", "pressure", "slip", "angle", "steering");

    private static bool IsForward(HeaderWords name) => name.HasAny("long", "lon", "longitudinal", "x", "forward", "fore", "inline", "accel", "acceleration") && !name.HasAny("lat", "lateral", "y", "vert", "vertical", "z", "pedal");
}
