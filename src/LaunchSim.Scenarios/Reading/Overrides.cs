using LaunchSim.Scenarios.Paths;

namespace LaunchSim.Scenarios.Reading;

/// <summary>Values given beside the file, by path, in the file's notation.</summary>
internal static class Overrides
{
    /// <summary>The tree with the values put in; what cannot be put in is among the findings.</summary>
    public static MapNode Apply(MapNode root, IEnumerable<(string Path, string Value)> overrides, Findings findings)
    {
        foreach ((string path, string value) in overrides)
        {
            string origin = Shown.Plain($"--set {path}={value}");
            if (origin.Length > 120)
            {
                origin = origin[..120] + "…";
            }

            var place = new Place(origin, 0, 0);
            string text = value.Trim();
            if (text.Length == 0)
            {
                findings.Error(place, path, "nothing after the =", "the new value", "write --set path=value");
                continue;
            }

            if (!ScenarioText.Accept(value, origin, findings))
            {
                continue;
            }

            Node? node = text[0] is '{' or '[' ? NodeReader.Read(text, origin, findings) : new ScalarNode(place, text, -1);
            if (node is not null)
            {
                root = TreeEdit.Set(root, path, place, node, findings);
            }
        }

        return root;
    }
}
