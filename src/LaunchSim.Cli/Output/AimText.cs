using LaunchSim.Reports.Numbers;
using LaunchSim.Studies.Aims;

namespace LaunchSim.Cli.Output;

/// <summary>What is wanted, as every study prints it.</summary>
internal static class AimText
{
    /// <summary>Adds the aims in force.</summary>
    /// <param name="page">The page.</param>
    /// <param name="aims">The aims.</param>
    /// <param name="readout">The units.</param>
    public static void Add(Page page, AimSet aims, Readout readout)
    {
        string from = aims.IsEntered ? $"of the file, beginning from the profile {aims.Profile.Name}" : $"of the profile {aims.Profile.Name} ({aims.Profile.Words}), since the file has none";
        var table = new TextTable(false, false);
        foreach (Aim aim in aims.Aims)
        {
            table.Add(AimWords.Heading(aim), AimWords.Wanted(aim, readout));
        }

        _ = page.Heading("Aims").Line($"They are those {from}.", 2).Table(table)
            .Line("A score is the sum of weight times points; 0 is all that was asked for. What breaks a limit comes last.", 2);
    }
}
