using System.Reflection;

namespace LaunchSim.Cli.Output;

/// <summary>Which program wrote a result.</summary>
internal static class ProgramVersion
{
    /// <summary>The program's name.</summary>
    public const string Name = "LaunchSim";

    /// <summary>The version, as in <c>0.1.0</c>.</summary>
    public static string Text { get; } =
        typeof(ProgramVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0";
}
