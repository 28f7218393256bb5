using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Dyno;

/// <summary>What a column of a dyno sheet holds.</summary>
/// <param name="Key">Its name on the command line.</param>
/// <param name="Kind">What kind of quantity it is.</param>
/// <param name="Names">Parts of column names by which it is known, the tellingest first.</param>
public sealed record DynoQuantity(string Key, QuantityKind Kind, IReadOnlyList<string> Names)
{
    /// <summary>Speed of the shaft, signed, or its size beside the two forces.</summary>
    public static DynoQuantity Velocity { get; } = new("velocity", QuantityKind.Speed, ["velocity", "speed", "vel"]);

    /// <summary>Force, signed.</summary>
    public static DynoQuantity Force { get; } = new("force", QuantityKind.Force, ["force", "load"]);

    /// <summary>Force while the damper gets longer, beside a speed without a sign.</summary>
    public static DynoQuantity Extension { get; } = new("extension", QuantityKind.Force, ["extension", "rebound"]);

    /// <summary>Force while it gets shorter.</summary>
    public static DynoQuantity Compression { get; } = new("compression", QuantityKind.Force, ["compression", "bump"]);

    /// <summary>Where the shaft is.</summary>
    public static DynoQuantity Displacement { get; } = new("displacement", QuantityKind.Length, ["displacement", "position", "stroke"]);

    /// <summary>The adjuster's click.</summary>
    public static DynoQuantity Click { get; } = new("click", QuantityKind.Number, ["click", "setting"]);

    /// <summary>All of them; those that name a side come before the plain force, which their names contain too.</summary>
    public static IReadOnlyList<DynoQuantity> All { get; } = [Velocity, Extension, Compression, Force, Displacement, Click];

    /// <summary>The quantity of a key, or null.</summary>
    /// <param name="key">Such as <c>velocity</c>.</param>
    public static DynoQuantity? Find(string key) => All.FirstOrDefault(quantity => quantity.Key == key);
}

/// <summary>What a person said of a sheet's columns.</summary>
/// <param name="Columns">Column names by quantity.</param>
/// <param name="Units">Units by quantity.</param>
public sealed record DynoMapping(IReadOnlyDictionary<DynoQuantity, string> Columns, IReadOnlyDictionary<DynoQuantity, string> Units)
{
    /// <summary>Nothing was said.</summary>
    public static DynoMapping None { get; } = new(new Dictionary<DynoQuantity, string>(), new Dictionary<DynoQuantity, string>());
}
