namespace LaunchSim.Fuzz.Mutations;

/// <summary>A way of spoiling a scenario's text. What comes out may by chance still be good.</summary>
/// <param name="Name">What it does, in a few words.</param>
/// <param name="Weight">How often it is taken, against the others.</param>
/// <param name="Apply">From a text to the spoilt one.</param>
internal sealed record Mutation(string Name, int Weight, Func<string, Dice, string> Apply)
{
    /// <summary>The register: one line a family.</summary>
    public static IReadOnlyList<Mutation> All { get; } =
    [
        .. StructureMutations.All,
        .. SyntaxMutations.All,
        .. NumberMutations.All,
        .. UnitMutations.All,
    ];
}
