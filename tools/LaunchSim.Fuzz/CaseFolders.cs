using System.Globalization;

namespace LaunchSim.Fuzz;

/// <summary>
/// The folder in which cases are made, each in one named for its seed. Should the process itself be killed by a case, the
/// folders that are left tell which seeds were in work.
/// </summary>
internal sealed class CaseFolders : IDisposable
{
    /// <summary>How the folder's name begins.</summary>
    public const string Stem = "launchsim-fuzz-";

    /// <summary>Makes it.</summary>
    public CaseFolders() => Root = Directory.CreateTempSubdirectory(Stem).FullName;

    /// <summary>The folder of all cases.</summary>
    public string Root { get; }

    /// <summary>The folder of one case.</summary>
    /// <param name="seed">Its seed.</param>
    public string Of(long seed) => Path.Combine(Root, seed.ToString(CultureInfo.InvariantCulture));

    /// <summary>Takes a case's folder away.</summary>
    /// <param name="folder">The folder.</param>
    public static void Remove(string folder)
    {
        try
        {
            Directory.Delete(folder, true);
        }
        catch (IOException)
        {
            // A case that was given up may still write; what is left in the temporary folder does no harm.
        }
    }

    /// <summary>Takes all away.</summary>
    public void Dispose() => Remove(Root);
}
