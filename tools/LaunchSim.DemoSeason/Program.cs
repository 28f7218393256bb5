using System.Text;
using LaunchSim.DemoSeason;
using LaunchSim.Scenarios;

// Writes the invented season anew: dotnet run --project tools/LaunchSim.DemoSeason -- scenarios/season
string folder = args is [var one] ? one : "scenarios/season";
ReadResult read = StandingCheck.Reader(ReadPurpose.Run).Read(Path.Combine(folder, SeasonFiles.Car));
foreach (Diagnostic error in read.Errors)
{
    Console.Error.WriteLine(error);
}

if (read.Scenario is not { } file)
{
    return 2;
}

foreach ((string name, string text) in SeasonFiles.Of(file))
{
    File.WriteAllText(Path.Combine(folder, name), text, new UTF8Encoding(false));
    Console.WriteLine($"wrote {Path.Combine(folder, name)}");
}

return 0;
