using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Writing;

/// <summary>One number that is asked of a person who begins a scenario.</summary>
public sealed record StarterQuestion
{
    private readonly SchemaKey _key;

    private StarterQuestion(string path, string option) => (Path, Option, _key) = (path, option, ScenarioPath.Known[path]);

    /// <summary>The path in the scenario.</summary>
    public string Path { get; }

    /// <summary>Its name among the options of a command, without dashes.</summary>
    public string Option { get; }

    /// <summary>What it is, in one sentence without the final stop.</summary>
    public string What => _key.What;

    /// <summary>How to measure it.</summary>
    public string How => TypicalRegister.Find(Path)?.HomeTest is { } test ? test.How : _key.Measure.Length > 0 ? _key.Measure + "." : "";

    /// <summary>Whether nothing can stand in its place.</summary>
    public bool IsNeeded => TypicalRegister.Find(Path) is not TypicalValue && _key.Need != Need.Optional && !IsOfAnOptionalPart;

    /// <summary>Whether it belongs to a part that a car may be without: no answer means that it is not there.</summary>
    public bool IsOfAnOptionalPart => Path.StartsWith("rear.wheelie_bar.", StringComparison.Ordinal);

    /// <summary>A value as it may be written.</summary>
    /// <param name="system">In whose units.</param>
    public string Example(UnitSystem system) => ExampleText.Of(_key, system);

    /// <summary>What is asked of a car, in the order in which a person goes around it.</summary>
    /// <param name="car">The car; what drives it and how its axle is guided decide.</param>
    public static IReadOnlyList<StarterQuestion> For(StarterCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        return [.. All.Where(question => !IsOtherForm(question.Path, car))];
    }

    /// <summary>Every question, whatever the car.</summary>
    public static IReadOnlyList<StarterQuestion> All { get; } =
    [
        new("car.wheelbase", "wheelbase"),
        new("car.scales.front", "front-scale"),
        new("car.scales.rear", "rear-scale"),
        new("car.cg_height", "cg-height"),
        new("rear.tire.loaded_radius", "rear-radius"),
        new("front.tire.loaded_radius", "front-radius"),
        new("rear.linkage.lower.axle", "lower-axle"),
        new("rear.linkage.lower.body", "lower-body"),
        new("rear.linkage.upper.axle", "upper-axle"),
        new("rear.linkage.upper.body", "upper-body"),
        new("rear.linkage.pivot", "pivot"),
        new("rear.tire.pressure.measured", "rear-pressure"),
        new("front.tire.pressure.measured", "front-pressure"),
        new("rear.spring.rate", "rear-spring"),
        new("front.spring.rate", "front-spring"),
        new("rear.wheelie_bar.wheel", "wheelie-bar"),
        new("driveline.engine.speed", "engine-speed"),
        new("driveline.engine.torque", "engine-torque"),
        new("driveline.engine.launch_speed", "launch-speed"),
        new("driveline.gears.ratios", "gears"),
        new("driveline.gears.shift_at", "shift-at"),
        new("driveline.final_drive", "final-drive"),
    ];

    private static bool IsOtherForm(string path, StarterCar car)
    {
        Section linkage = ((SectionKind)ScenarioPath.Known["rear.linkage"].Kind).Section;
        return (car.Driveline == StarterDriveline.AxleTorque && path.StartsWith("driveline.", StringComparison.Ordinal))
            || linkage.Forms.Any(form => form.Name != car.Linkage && form.Section.Keys.Any(key => path == key.Path || path.StartsWith(key.Path + ".", StringComparison.Ordinal)));
    }
}
