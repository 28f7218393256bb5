using System.Globalization;
using BenchmarkDotNet.Running;
using LaunchSim.Benchmarks;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
switch (args)
{
    case ["quick", string file]:
        return Quick.Run(file);
    case ["fixed-step", string file]:
        return FixedStep.Run(file);
    case ["stages", string file]:
        return Stages.Run(file);
    case ["studies", string file]:
        return StudyRates.Run(file);
    case ["desk", string file]:
        return DeskRates.Run(file, 1);
    case ["desk", string file, "--minutes", string minutes] when double.TryParse(minutes, CultureInfo.InvariantCulture, out double time) && time is > 0 and <= 1440:
        return DeskRates.Run(file, time);
    case ["quick" or "fixed-step" or "stages" or "studies" or "desk", ..]:
        Console.Error.WriteLine("usage: quick FILE | fixed-step FILE | stages FILE | studies FILE | desk FILE [--minutes N] | BenchmarkDotNet's own options");
        return 2;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Quick).Assembly).Run(args);
        return 0;
}
