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
    case ["quick" or "fixed-step" or "stages" or "studies", ..]:
        Console.Error.WriteLine("usage: quick FILE | fixed-step FILE | stages FILE | studies FILE | BenchmarkDotNet's own options");
        return 2;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Quick).Assembly).Run(args);
        return 0;
}
