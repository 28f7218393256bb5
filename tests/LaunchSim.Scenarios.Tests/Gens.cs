using CsCheck;

namespace LaunchSim.Scenarios.Tests;

internal static class Gens
{
    /// <summary>Texts out of a few letters that matter.</summary>
    public static Gen<string> Text(string letters, int longest) =>
        Gen.Int[0, letters.Length - 1].Select(at => letters[at]).Array[0, longest].Select(chosen => new string(chosen));

    public static Gen<T> From<T>(IReadOnlyList<T> items) => Gen.Int[0, items.Count - 1].Select(at => items[at]);
}
