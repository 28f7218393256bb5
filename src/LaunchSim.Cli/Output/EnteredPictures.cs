using LaunchSim.Charts;
using LaunchSim.Charts.SideViews;
using LaunchSim.Cli.Terminal;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;

namespace LaunchSim.Cli.Output;

/// <summary>Pictures of the points as they were entered, of files with and without errors.</summary>
internal sealed class EnteredPictures
{
    private readonly Dictionary<string, OutputFile> _files = [];

    private EnteredPictures()
    {
    }

    /// <summary>Plans the files; nothing is made yet.</summary>
    /// <param name="inputs">The scenario files.</param>
    /// <param name="path">--picture: a file for one scenario, a folder for several; or none.</param>
    /// <exception cref="InputException">Two would be written to one place, or one cannot be written.</exception>
    public static EnteredPictures Plan(IReadOnlyList<string> inputs, string? path)
    {
        const string Option = "--picture";
        var pictures = new EnteredPictures();
        if (path is null)
        {
            return pictures;
        }

        Targets.RefuseNameless((Option, path));
        bool isFolder = Targets.IsFolder(Option, path, PictureTarget.Kinds, inputs.Count);
        OutputKind kind = isFolder ? PictureTarget.Named(null) : PictureTarget.KindOf(path, null);
        var taken = new Dictionary<string, string>(OutputFile.Comparer);
        foreach (string input in inputs.Distinct())
        {
            string place = isFolder ? Path.Combine(path, Path.GetFileNameWithoutExtension(input) + kind.Extension) : path;
            var file = OutputFile.Plan(place, kind, inputs, isFolder);
            if (!taken.TryAdd(file.Target, input))
            {
                throw new InputException($"{taken[file.Target]} and {input} would both be written to `{file.Shown}`; check them apart, or rename one");
            }

            pictures._files.Add(input, file);
        }

        return pictures;
    }

    /// <summary>Draws what was read of one file's side view, if a picture of it was asked for.</summary>
    /// <param name="input">The scenario file.</param>
    /// <param name="result">What came of reading it.</param>
    /// <param name="session">Takes the notice.</param>
    /// <exception cref="OutputException">It could not be written.</exception>
    public void Write(string input, ReadResult result, Session session)
    {
        if (!_files.Remove(input, out OutputFile? file))
        {
            return;
        }

        string name = Path.GetFileName(input);
        if (result.FindSideView() is not { } entries || EnteredPicture.Of(entries, entries.Name.Length > 0 ? entries.Name : name, new Readout(entries.UnitSystem)) is not { } picture)
        {
            session.Error.WriteLine($"not drawn: {file.Shown}; no point of the side view and no wheelbase could be read");
            return;
        }

        file.Write(stream => PictureTarget.Write(picture, file.Kind, stream), session.Cancellation);
        session.Error.WriteLine($"{(file.Replaces ? "replaced" : "wrote")} {file.Shown}");
    }
}
