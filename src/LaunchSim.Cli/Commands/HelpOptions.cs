using System.CommandLine;
using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Studies.Doubting;

namespace LaunchSim.Cli.Commands;

/// <summary>Options that ask in what share of plausible cars a change helps; shared by the commands that look at changes.</summary>
internal sealed class HelpOptions
{
    // Each car is launched with every set-up.
    private const int UsualCars = 500;

    public Option<bool> Doubt { get; } = new("--doubt") { Description = "Also say in what share of plausible cars each change helps" };

    public Option<string> Cars { get; } = new("--cars") { HelpName = "count", Description = $"How many plausible cars --doubt draws; {UsualCars} when left out" };

    public Option<bool> Typical { get; } = new("--typical") { Description = "Let --doubt also draw numbers without a ± from their usual doubt" };

    /// <summary>How cars are to be drawn; null when nobody asked.</summary>
    /// <param name="parsed">What was parsed.</param>
    /// <exception cref="InputException">The options contradict each other, or a count is out of range.</exception>
    public DoubtSettings? Read(ParseResult parsed)
    {
        bool asked = parsed.GetValue(Doubt), typical = parsed.GetValue(Typical);
        string? cars = parsed.GetValue(Cars);
        if (!asked && (cars is not null || typical))
        {
            throw new InputException($"{(cars is not null ? "--cars" : "--typical")}: found no --doubt; it says how --doubt draws cars");
        }

        int count = UsualCars;
        if (cars is not null && (!int.TryParse(cars, NumberStyles.None, CultureInfo.InvariantCulture, out count) || count is < DoubtSettings.FewestCars or > DoubtSettings.MostCars))
        {
            throw new InputException($"--cars {cars}: found no such count; allowed: a whole number from {DoubtSettings.FewestCars} to {DoubtSettings.MostCars:#,0}");
        }

        return asked ? new DoubtSettings { Cars = count, WithTypical = typical } : null;
    }
}
