using System.Globalization;
using LaunchSim.Scenarios.Reading;

namespace LaunchSim.Scenarios.Paths;

/// <summary>Puts a value at a path into a tree: a new tree that shares all that did not change.</summary>
internal static class TreeEdit
{
    /// <summary>The changed tree; the same one when the value cannot be put there, which is then among the findings.</summary>
    public static MapNode Set(MapNode root, string pathText, Place place, Node value, Findings findings)
    {
        if (ScenarioPath.Resolve(pathText, out string? nearest) is not { } path)
        {
            findings.Error(place, "", $"the path {Shown.Quoted(pathText)}, which no scenario has", "a path of the scenario file, such as rear.spring.rate", nearest is null ? "look the path up in the reference" : $"did you mean `{nearest}`?");
            return root;
        }

        return Put(root, path, 0, place, value, findings) as MapNode ?? root;
    }

    private static Node? Put(Node? node, ScenarioPath path, int step, Place place, Node value, Findings findings)
    {
        if (step == path.Steps.Count)
        {
            return PutTail(node, path, place, value, findings);
        }

        PathStep here = path.Steps[step];
        if (here.Index >= 0)
        {
            var list = node as ListNode;
            int count = list?.Items.Count ?? 0;
            if (list is null || here.Index > count || (here.Index == count && step + 1 < path.Steps.Count))
            {
                findings.Error(place, path.Text, $"item {here.Index} of a list of {count}", count == 0 ? "a list that has items" : $"items 0 to {count - 1}", "give the whole list first");
                return null;
            }

            Node? item = Put(here.Index < count ? list.Items[here.Index] : null, path, step + 1, place, value, findings);
            return item is null ? null : new ListNode(list.Place, [.. list.Items.Take(here.Index), item, .. list.Items.Skip(here.Index + 1)]);
        }

        // A section that is not there yet begins where the change stands.
        MapNode? map = node switch
        {
            null => new MapNode(place, [], false),
            MapNode present => present,
            _ => null,
        };
        if (map is null)
        {
            findings.Error(place, path.Text, "a path into something that is not a section", mend: "mend the value above it first");
            return null;
        }

        Node? inner = Put(map.Get(here.Key), path, step + 1, place, value, findings);
        return inner is null ? null : map.With(new ScalarNode(place, here.Key, -1), inner);
    }

    private static Node? PutTail(Node? node, ScenarioPath path, Place place, Node value, Findings findings)
    {
        switch (path.Tail)
        {
            case PathTail.Ahead or PathTail.Up:
                return PutPart(node, path, path.Tail == PathTail.Ahead, place, value, findings);
            case PathTail.Use:
                return node is MapNode bracket
                    ? bracket.With(new ScalarNode(place, "use", -1), value)
                    : Fail("a place without a bracket with holes", "write {holes: {NAME: point, …}, use: NAME} there first");
            case PathTail.Hole or PathTail.HoleAhead or PathTail.HoleUp:
                if (node is not MapNode bracketed || bracketed.Get("holes") is not MapNode holes)
                {
                    return Fail("a place without a bracket with holes", "write {holes: {NAME: point, …}, use: NAME} there first");
                }

                Node? hole = path.Tail == PathTail.Hole ? value : (Node?)PutPart(holes.Get(path.Name), path, path.Tail == PathTail.HoleAhead, place, value, findings);
                return hole is null ? null : bracketed.With(new ScalarNode(place, "holes", -1), holes.With(new ScalarNode(place, path.Name, -1), hole));
            case PathTail.Click:
                if (node is not MapNode rows)
                {
                    return Fail("a damper without clicks", "write clicks and set there first");
                }

                double click = double.Parse(path.Name, NumberStyles.Float, CultureInfo.InvariantCulture);
                string name = rows.Entries.Select(entry => entry.Key.Text)
                    .FirstOrDefault(text => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && number == click) ?? path.Name;
                return rows.With(new ScalarNode(place, name, -1), value);
            default:
                return value;
        }

        Node? Fail(string found, string mend)
        {
            findings.Error(place, path.Text, found, mend: mend);
            return null;
        }
    }

    private static PointNode? PutPart(Node? node, ScenarioPath path, bool ahead, Place place, Node value, Findings findings)
    {
        if (value is not ScalarNode part)
        {
            findings.Error(value.Place, path.Text, "something other than a length", "one length", "write it as in 21 in");
            return null;
        }

        switch (node)
        {
            case PointNode point:
                return new PointNode(point.Whole, ahead ? part : point.Ahead, ahead ? point.Up : part);
            case ScalarNode whole:
                return new PointNode(whole, ahead ? part : null, ahead ? null : part);
            case MapNode bracket:
                string use = (bracket.Get("use") as ScalarNode)?.Text ?? "NAME";
                string suffix = ahead ? "ahead" : "up";
                string stem = path.Text[..path.Text.LastIndexOf('.')];
                findings.Error(place, path.Text, "a part of a point where a bracket with holes stands", $"{stem}.use, or a hole's own point", $"write {stem}.holes.{use}.{suffix}");
                return null;
            default:
                findings.Error(place, path.Text, "a part of a point that is not there", "a point that is", "give the whole point");
                return null;
        }
    }
}
