namespace LaunchSim.PackageCheck;

/// <summary>Looks into every package of a folder and tells what a stranger would miss in it.</summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        if (args is not [var folder, var version] || !Directory.Exists(folder))
        {
            Console.Error.WriteLine("found no folder of packages and version; write: LaunchSim.PackageCheck FOLDER VERSION");
            return 2;
        }

        string[] packages = [.. Directory.EnumerateFiles(folder, "*.nupkg").Order(StringComparer.Ordinal)];
        if (packages.Length == 0)
        {
            Console.Error.WriteLine($"`{folder}` holds no package");
            return 1;
        }

        bool good = true;
        foreach (string path in packages)
        {
            using var package = new Package(path);
            List<string> problems = [.. PackageRules.Of(package, version)];
            Console.WriteLine(FormattableString.Invariant($"{package.FileName}: {package.Size / 1e6:F2} MB, {(problems.Count == 0 ? "good" : $"{problems.Count} wrong")}"));
            problems.ForEach(problem => Console.WriteLine($"  {problem}"));
            good &= problems.Count == 0;
        }

        return good ? 0 : 1;
    }
}
