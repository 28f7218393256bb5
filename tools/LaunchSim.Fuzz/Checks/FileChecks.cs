using LaunchSim.Fuzz.Cases;

namespace LaunchSim.Fuzz.Checks;

/// <summary>Files: nothing half-written is left, nothing of the user's is changed, and nothing is written when the input was refused.</summary>
internal static class FileChecks
{
    public static IEnumerable<string> Files(Outcome outcome)
    {
        foreach ((string name, _) in outcome.Written)
        {
            if (name.EndsWith(".tmp", StringComparison.Ordinal) || Path.GetFileName(name).StartsWith('.'))
            {
                yield return $"{name} is left behind";
            }

            // A file that cannot be read is drawn as far as it can: a mistyped number is seen there at once.
            if (outcome.Code == 2 && !(outcome.Case.Command == "check" && outcome.Arguments.Contains("--picture")))
            {
                yield return $"{name} was written although the input was refused";
            }
        }

        foreach (CaseFile file in outcome.Case.Files)
        {
            string path = Path.Combine(outcome.Folder, file.Name);
            if (file.IsFolder)
            {
                if (!Directory.Exists(path))
                {
                    yield return $"the folder {file.Name} is gone";
                }
            }
            else if (file.LinkTo is not null)
            {
                if (new FileInfo(path).LinkTarget != file.LinkTo)
                {
                    yield return $"the link {file.Name} was changed";
                }
            }
            else if (!file.IsEarlierResult && !(outcome.Code == 0 && file.Name == outcome.Case.Changes) && (!File.Exists(path) || !File.ReadAllBytes(path).AsSpan().SequenceEqual(file.Content)))
            {
                yield return $"{file.Name} was changed";
            }
        }
    }
}
