namespace LaunchSim.Scenarios.Reading;

/// <summary>
/// The grip table along the track may stand under <c>track</c> or one level deeper, under <c>track.grip</c>: people write
/// it in the place of the number that it replaces. Both come to the same tree.
/// </summary>
internal static class TrackTable
{
    public static MapNode Lift(MapNode root)
    {
        if (root.Get("track") is not MapNode track || track.Get("grip") is not MapNode table || track.Get("distance") is not null)
        {
            return root;
        }

        var entries = new List<KeyValuePair<ScalarNode, Node>>();
        foreach (KeyValuePair<ScalarNode, Node> entry in track.Entries)
        {
            if (entry.Key.Text == "grip")
            {
                entries.AddRange(table.Entries);
            }
            else
            {
                entries.Add(entry);
            }
        }

        return root.With(root.Entries.First(entry => entry.Key.Text == "track").Key, new MapNode(track.Place, entries, track.InBraces));
    }
}
