using LaunchSim.Cli.Commands;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;
using LaunchSim.Scenarios.Writing;
using Spectre.Console;

namespace LaunchSim.Cli.Terminal;

/// <summary>Asks for what a starter scenario needs, one thing after the other, each answer looked at before the next question.</summary>
/// <param name="console">Where it is asked.</param>
/// <param name="cancellation">Ends it.</param>
internal sealed class Interview(IAnsiConsole console, CancellationToken cancellation)
{
    /// <summary>Asks for what is not known yet.</summary>
    /// <param name="car">What is known.</param>
    /// <param name="isGiven">Whether units, linkage or driveline were given.</param>
    /// <returns>The car with the answers.</returns>
    public async Task<StarterCar> AskAsync(StarterCar car, Func<string, bool> isGiven)
    {
        console.WriteLine("What you measured, one thing after the other. Enter alone takes what stands in brackets; a number that you are not sure of may carry its doubt, as in 21 ±1 in. Ctrl-C ends it, nothing is written then.");
        console.WriteLine();
        if (!isGiven("units"))
        {
            car = car with { Units = await ChoiceAsync("Units", "in which you measure", "shop", "si") == "si" ? UnitSystem.Si : UnitSystem.Shop };
        }

        if (!isGiven("linkage"))
        {
            car = car with { Linkage = await ChoiceAsync("Rear linkage", "two bars a side, or one bar rigid with the axle", "four-link", "ladder-bar") };
        }

        if (!isGiven("driveline"))
        {
            string word = await ChoiceAsync("Torque", "no more than a 60 ft time is known, or an engine's sheet with a clutch or a converter", "axle-torque", "clutch", "converter");
            car = car with { Driveline = NewCommand.Driveline(word) };
        }

        car = await MeasuredAsync(car);
        car = await HintsAsync(car);
        while (StarterScenario.Write(car, "the file") is { Text: null } bad)
        {
            car = await AgainAsync(car, bad);
        }

        return car;
    }

    private async Task<StarterCar> MeasuredAsync(StarterCar car)
    {
        foreach (StarterQuestion question in StarterQuestion.For(car))
        {
            bool isShift = question.Path == "driveline.gears.shift_at";
            bool isKnown = car.Entered.Any(pair => pair.Path == question.Path);
            bool isAsked = !isShift || StarterScenario.Write(car, "the file").Missing.Contains(question);
            if (!isKnown && isAsked)
            {
                car = await AskAsync(car, question);
            }
        }

        return car;
    }

    private async Task<StarterCar> AskAsync(StarterCar car, StarterQuestion question)
    {
        console.MarkupLineInterpolated($"[bold]{question.What}[/]");
        console.WriteLine("  " + question.How);
        string? otherwise = question.IsOfAnOptionalPart ? "none on this car" : Typical(car, question) is { } typical ? $"{typical}, typical" : null;
        var prompt = new TextPrompt<string>($"  as in {Markup.Escape(question.Example(car.Units))}{(otherwise is null ? "" : $" [[{Markup.Escape(otherwise)}]]")}:")
        {
            AllowEmpty = otherwise is not null,
            Validator = answer => Complaint(car, question, answer),
        };
        string answer = (await prompt.ShowAsync(console, cancellation)).Trim();
        return answer.Length == 0 ? car : car with { Entered = [.. car.Entered, (question.Path, answer)] };
    }

    private static string? Typical(StarterCar car, StarterQuestion question)
    {
        if (TypicalRegister.Find(question.Path) is not TypicalValue typical)
        {
            return null;
        }

        // Only what was answered so far is known; a value that needs more says that it is worked out later.
        return StarterScenario.Typical(car, typical)?.Text(car.Units) ?? "worked out from the rest";
    }

    private static ValidationResult Complaint(StarterCar car, StarterQuestion question, string answer)
    {
        if (answer.Trim().Length == 0)
        {
            return question.IsNeeded ? ValidationResult.Error("  nothing can stand in its place") : ValidationResult.Success();
        }

        IReadOnlyList<Diagnostic> errors = StarterScenario.Check(car, question.Path, answer.Trim());
        return errors.Count == 0 ? ValidationResult.Success() : ValidationResult.Error(Markup.Escape("  " + string.Join("\n  ", errors.Select(Said))));
    }

    private static string Said(Diagnostic error) =>
        $"found {error.Message}{(error.Allowed.Length > 0 ? $"; allowed: {error.Allowed}" : "")}{(error.Mend.Length > 0 ? $"; {error.Mend}" : "")}";

    private async Task<StarterCar> HintsAsync(StarterCar car)
    {
        TypicalHints hints = car.Hints;
        hints = hints with
        {
            RearTire = hints.RearTire ?? await TireAsync("Size of the rear tyres", "275/60R15"),
            FrontTire = hints.FrontTire ?? await TireAsync("Size of the front tyres", "205/60R15"),
        };
        const string Feel = "push the corner down and let go: swings on, stops, or creeps back";
        if (hints.RearDampers == DamperFamily.Medium)
        {
            hints = hints with { RearDampers = NewCommand.Family(await ChoiceAsync("Rear dampers", Feel, "medium", "soft", "firm")) };
        }

        if (hints.FrontDampers == DamperFamily.Medium)
        {
            hints = hints with { FrontDampers = NewCommand.Family(await ChoiceAsync("Front dampers", Feel, "medium", "soft", "firm")) };
        }

        if (car.Driveline == StarterDriveline.AxleTorque)
        {
            hints = hints with { SixtyFootTime = hints.SixtyFootTime ?? await NumberAsync("60 ft time on the slip", "1.50 s", QuantityKind.Time) };
        }
        else if (car.Driveline == StarterDriveline.Converter)
        {
            hints = hints with { FlashSpeed = hints.FlashSpeed ?? await NumberAsync("Engine speed to which the converter flashes", "4200 rpm", QuantityKind.AngularSpeed) };
        }

        return car with { Hints = hints };
    }

    // Whatever is wrong with the car as a whole is asked again; what else was answered stays.
    private async Task<StarterCar> AgainAsync(StarterCar car, StarterResult bad)
    {
        console.WriteLine();
        foreach (Diagnostic error in bad.Errors)
        {
            console.WriteLine($"{(error.Path.Length > 0 ? error.Path + ": " : "")}{Said(error)}");
        }

        StarterQuestion[] asked = [.. StarterQuestion.For(car)];
        StarterQuestion[] doubtful = [.. asked.Where(question => bad.Errors.Any(error => Meets(error.Path, question.Path)))];
        foreach (StarterQuestion question in doubtful.Length > 0 ? doubtful : asked)
        {
            car = await AskAsync(car with { Entered = [.. car.Entered.Where(pair => pair.Path != question.Path)] }, question);
        }

        return car;
    }

    private static bool Meets(string path, string other) =>
        path.Length > 0 && (path == other || path.StartsWith(other + ".", StringComparison.Ordinal) || other.StartsWith(path + ".", StringComparison.Ordinal));

    private async Task<string> ChoiceAsync(string what, string explanation, params string[] words)
    {
        console.MarkupLineInterpolated($"[bold]{what}[/]: {explanation}");
        TextPrompt<string> prompt = new TextPrompt<string>("  ").AddChoices(words).DefaultValue(words[0]);
        return await prompt.ShowAsync(console, cancellation);
    }

    private async Task<TireSize?> TireAsync(string what, string example)
    {
        string text = await OptionalAsync(what, example, answer => TireSize.Parse(answer) is null ? $"found `{answer}`; allowed: a size as on the sidewall, as in {example}" : null);
        return text.Length == 0 ? null : TireSize.Parse(text);
    }

    private async Task<double?> NumberAsync(string what, string example, QuantityKind kind)
    {
        string text = await OptionalAsync(what, example, answer =>
            !Quantity.TryParse(answer, kind, out Quantity? read, out string problem) ? problem
            : read!.Count != 1 || read.Si() <= 0 ? $"found `{answer}`; allowed: one number above 0" : null);
        return text.Length > 0 && Quantity.TryParse(text, kind, out Quantity? quantity, out _) ? quantity!.Si() : null;
    }

    private async Task<string> OptionalAsync(string what, string example, Func<string, string?> complaint)
    {
        console.MarkupLineInterpolated($"[bold]{what}[/]");
        var prompt = new TextPrompt<string>($"  as in {Markup.Escape(example)} [[not known]]:")
        {
            AllowEmpty = true,
            Validator = answer => answer.Trim().Length == 0 || complaint(answer.Trim()) is not { } said ? ValidationResult.Success() : ValidationResult.Error(Markup.Escape("  " + said)),
        };
        return (await prompt.ShowAsync(console, cancellation)).Trim();
    }
}
