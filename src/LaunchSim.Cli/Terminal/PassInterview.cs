using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Writing;
using Spectre.Console;

namespace LaunchSim.Cli.Terminal;

/// <summary>Asks for a pass in a few questions, each answer looked at before the next; Enter alone passes one by.</summary>
/// <param name="console">Where it is asked.</param>
/// <param name="check">What is wrong with a pass as far as it is known.</param>
/// <param name="cancellation">Ends it.</param>
internal sealed class PassInterview(IAnsiConsole console, Func<PassDraft, IReadOnlyList<Diagnostic>> check, CancellationToken cancellation)
{
    private const string Frames = "frames_per_second";

    private static readonly (string Key, string What, string Example)[] Moments =
    [
        ("rear_moves", "When the rear moves", "frame 131"),
        ("front_moves", "When the front moves", "frame 147 ±2"),
        ("rear_open", "When the rear stops opening", "frame 170"),
        ("front_tires_leave", "When the front tyres leave the ground", "never"),
        ("front_tires_land", "When they land", "0.55 s"),
        ("spin_starts", "When the rear tyres begin to spin", "never"),
    ];

    /// <summary>Asks for what is not known yet.</summary>
    /// <param name="draft">What is known.</param>
    /// <param name="last">The pass before; null for none.</param>
    /// <param name="car">The car's file.</param>
    public async Task<PassDraft> AskAsync(PassDraft draft, PassFile? last, Scenario car)
    {
        console.WriteLine("The pass, one thing after the other. Enter alone passes a question by. A time is 0.12 s, 0.12 ±0.02 s, frame 147, before 0.3 s, after 0.3 s or never. Ctrl-C ends it, nothing is written then.");
        console.WriteLine();
        if (last is { Changed.Count: > 0 })
        {
            string set = string.Join(", ", last.Changed.Select(one => $"{one.Path} {one.Value}"));
            console.MarkupLineInterpolated($"[bold]Settings[/]: those of the pass before ({set}), or the car's file as it is");
            TextPrompt<string> prompt = new TextPrompt<string>("  ").AddChoices(["before", "file"]).DefaultValue("before");
            draft = await prompt.ShowAsync(console, cancellation) == "before" ? draft with { Changed = last.Changed } : draft;
        }

        string choices = car.Choices.Count > 0 ? $", such as {string.Join(", ", car.Choices.Take(3).Select(choice => choice.Path))}" : "";
        while (await AskAsync($"What was changed, path=value{choices}", "rear.tire.pressure.set=15 psi", draft, WithChange) is { } changed)
        {
            draft = changed;
        }

        draft = draft.Track is null ? await AskAsync("The track", "left lane, sprayed, cool", draft, (one, text) => one with { Track = text }) ?? draft : draft;
        draft = draft.Weather is null ? await AskAsync("The weather", "18 °C, dry, head wind", draft, (one, text) => one with { Weather = text }) ?? draft : draft;
        draft = await SeenAsync(draft, "first_up", "Which end is seen to move first: front, rear or together", "rear");
        draft = await SeenAsync(draft, Frames, "Frames a second of the video, if there is one", "240");
        if (draft.Seen.Any(one => one.Key == Frames))
        {
            draft = await SeenAsync(draft, "release_frame", "The frame of the release; frames count from 0 at the release without it", "118");
        }

        foreach ((string key, string what, string example) in Moments)
        {
            bool lands = key != "front_tires_land" || draft.Seen.Any(one => one is { Key: "front_tires_leave" } && !one.Value.Equals("never", StringComparison.OrdinalIgnoreCase));
            draft = lands ? await SeenAsync(draft, key, what, example) : draft;
        }

        draft = await SeenAsync(draft, "shake", "Tyre shake: none, light or hard", "none");
        if (car.Run.Marks.Count == 0)
        {
            // Places alone are no pass yet: they are looked at together with their times.
            string places = await TextAsync("Places of the timing beams", "60 ft");
            draft = places.Length == 0 ? draft
                : await AskAsync("Times there by the slip", "1.520 s", draft, (one, text) => one with { Seen = [.. one.Seen, ("marks", places), ("times", text)] }) ?? draft;
        }
        else
        {
            draft = await SeenAsync(draft, "times", $"Times by the slip at {car.Find("run.marks")}", "1.520 s");
        }

        return draft.Notes is null ? await AskAsync("Notes", "Shook a little at 60 ft.", draft, (one, text) => one with { Notes = text }) ?? draft : draft;
    }

    private static PassDraft WithChange(PassDraft draft, string text)
    {
        int equals = text.IndexOf('=', StringComparison.Ordinal);
        return draft with { Changed = [.. draft.Changed, equals > 0 ? (text[..equals].Trim(), text[(equals + 1)..].Trim()) : (text, "")] };
    }

    private async Task<PassDraft> SeenAsync(PassDraft draft, string key, string what, string example) =>
        await AskAsync(what, example, draft, (one, text) => one with { Seen = [.. one.Seen, (key, text)] }) ?? draft;

    private async Task<string> TextAsync(string what, string example)
    {
        console.MarkupLineInterpolated($"[bold]{what}[/]");
        return (await new TextPrompt<string>($"  as in {Markup.Escape(example)}:") { AllowEmpty = true }.ShowAsync(console, cancellation)).Trim();
    }

    /// <summary>The draft with an answer in it; null when it was passed by.</summary>
    private async Task<PassDraft?> AskAsync(string what, string example, PassDraft draft, Func<PassDraft, string, PassDraft> with)
    {
        console.MarkupLineInterpolated($"[bold]{what}[/]");
        var prompt = new TextPrompt<string>($"  as in {Markup.Escape(example)}:")
        {
            AllowEmpty = true,
            Validator = answer => answer.Trim().Length == 0 || check(with(draft, answer.Trim())) is not { Count: > 0 } errors
                ? ValidationResult.Success()
                : ValidationResult.Error(Markup.Escape("  " + string.Join("\n  ", errors.Select(Said)))),
        };
        string text = (await prompt.ShowAsync(console, cancellation)).Trim();
        return text.Length == 0 ? null : with(draft, text);
    }

    private static string Said(Diagnostic error) =>
        $"found {error.Message}{(error.Allowed.Length > 0 ? $"; allowed: {error.Allowed}" : "")}{(error.Mend.Length > 0 ? $"; {error.Mend}" : "")}";
}
