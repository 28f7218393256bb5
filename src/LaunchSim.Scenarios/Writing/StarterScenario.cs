using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Writing;

/// <summary>A scenario that was begun: its text, or why there is none.</summary>
/// <param name="Text">The file's content; null when there are errors or something is missing.</param>
/// <param name="Errors">What is wrong with what was entered, or with the car that it makes.</param>
/// <param name="Missing">What has to be measured first.</param>
/// <param name="Typical">Paths of the values that are typical ones.</param>
public sealed record StarterResult(string? Text, IReadOnlyList<Diagnostic> Errors, IReadOnlyList<StarterQuestion> Missing, IReadOnlyList<string> Typical);

/// <summary>
/// Begins a scenario: what was measured, typical values with their doubt for the rest, and beside each how to measure it.
/// What it writes reads without an error and makes a car that stands.
/// </summary>
public static class StarterScenario
{
    private const string Height = "car.cg_height";
    private const string Gears = "driveline.gears.ratios", ShiftAt = "driveline.gears.shift_at";

    /// <summary>What is wrong with one value, before all the others are known; empty when nothing is.</summary>
    /// <param name="car">The car so far.</param>
    /// <param name="path">The value's path.</param>
    /// <param name="value">The value in the notation of the file.</param>
    public static IReadOnlyList<Diagnostic> Check(StarterCar car, string path, string value)
    {
        ArgumentNullException.ThrowIfNull(car);
        return [.. Read(car with { Entered = [.. car.Entered, (path, value)] }).Errors.Where(error => IsAt(error, path))];
    }

    /// <summary>The typical value for a car of which not everything is known yet.</summary>
    /// <param name="car">The car so far.</param>
    /// <param name="value">Which value.</param>
    /// <returns>The estimate; null when what it is worked out from is not known yet.</returns>
    public static TypicalEstimate? Typical(StarterCar car, TypicalValue value)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(value);
        var values = new Dictionary<string, Quantity>(StringComparer.Ordinal);
        foreach ((string path, string text) in car.Entered)
        {
            if (TypicalRegister.Find(path) is { } entry && Quantity.TryParse(text, entry.Kind, out Quantity? quantity, out _))
            {
                values[path] = quantity!;
            }
        }

        return value.For(new KnownCar(values, car.Words.ToDictionary(word => word.Path, word => word.Value, StringComparer.Ordinal), car.Hints));
    }

    /// <summary>Writes the scenario.</summary>
    /// <param name="car">What is known of the car.</param>
    /// <param name="displayName">What errors are to call the file.</param>
    public static StarterResult Write(StarterCar car, string displayName)
    {
        ArgumentNullException.ThrowIfNull(car);
        ReadResult entered = Read(car);
        StarterQuestion[] missing = [.. Missing(car)];

        // That something is missing is told as what has to be measured, with its option and how.
        Diagnostic[] errors = [.. entered.Errors.Where(error => car.Entered.Any(pair => IsAt(error, pair.Path)))];
        if (errors.Length > 0 || missing.Length > 0)
        {
            return new StarterResult(null, errors, missing, []);
        }

        if (entered.Scenario is not { } scenario)
        {
            return new StarterResult(null, entered.Errors, [], []);
        }

        var writer = new StarterWriter(car, KnownCar.Of(scenario, car.Hints));
        string text = writer.Write();
        ReadResult whole = StandingCheck.Reader(ReadPurpose.Run).ReadText(text, displayName);
        return new StarterResult(whole.Errors.Count == 0 ? text : null, whole.Errors, [], writer.Typical);
    }

    private static bool IsAt(Diagnostic error, string path) => error.Path == path || error.Path.StartsWith(path + ".", StringComparison.Ordinal);

    private static ReadResult Read(StarterCar car)
    {
        // What the side view cannot do without may be a typical value too.
        var filled = new List<(string, string)>(car.Words);
        if (TypicalRegister.Find(Height) is TypicalValue value && Typical(car, value) is { } height)
        {
            filled.Add((Height, height.Text(car.Units)));
        }

        return new ScenarioReader { Purpose = ReadPurpose.Check }.ReadText("name: begun\n", "entered", [.. filled, .. car.Entered]);
    }

    private static IEnumerable<StarterQuestion> Missing(StarterCar car)
    {
        string? gears = car.Entered.LastOrDefault(pair => pair.Path == Gears).Value;
        bool shifts = gears is not null && Quantity.TryParse(gears, QuantityKind.Number, out Quantity? ratios, out _) && ratios!.Count > 1;
        return StarterQuestion.For(car).Where(question => (question.IsNeeded || (question.Path == ShiftAt && shifts)) && !car.Entered.Any(pair => pair.Path == question.Path));
    }
}
