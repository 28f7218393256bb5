using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;

namespace LaunchSim.Web.Pages;

/// <summary>
/// One script made of the front end's modules, so that a page is one file. Modules are plain JavaScript in <c>Front/</c>;
/// an entry's imports, and theirs, come before it, each in a function of its own, so that names cannot collide.
/// </summary>
/// <remarks>
/// Two forms are allowed, each on one line of its own or (imports) over several: <c>import { a, b as c } from './x.js';</c>
/// and <c>export</c> before <c>function</c>, <c>async function</c>, <c>class</c> or <c>const</c>. Anything else, an unknown
/// module or a circle is refused, when the tests run and not when somebody opens the page.
/// </remarks>
public static partial class FrontBundle
{
    private const string Root = "front/";
    private static readonly Assembly Here = typeof(FrontBundle).Assembly;

    /// <summary>The script of an entry module and all that it imports.</summary>
    /// <param name="entry">The entry's place below <c>Front/</c>, such as <c>page.js</c>.</param>
    /// <exception cref="InvalidOperationException">A module is not there, is in a circle, or has a form that is not allowed.</exception>
    public static string Script(string entry) => Script(entry, Text);

    /// <summary>Style sheets one after another.</summary>
    /// <param name="sheets">Their places below <c>Front/</c>.</param>
    /// <exception cref="InvalidOperationException">One is not there.</exception>
    public static string Style(params ReadOnlySpan<string> sheets)
    {
        var text = new StringBuilder();
        foreach (string sheet in sheets)
        {
            text.Append(Text(sheet)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>The places of all modules and style sheets below <c>Front/</c>.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. Here.GetManifestResourceNames().Where(name => name.StartsWith(Root, StringComparison.Ordinal)).Select(name => name[Root.Length..].Replace('\\', '/')).Order(StringComparer.Ordinal)];

    internal static string Script(string entry, Func<string, string> read)
    {
        var text = new StringBuilder("'use strict';\n");
        var done = new Dictionary<string, Module>(StringComparer.Ordinal);
        Add(entry, [], done, text, read);
        return text.ToString();
    }

    private static Module Add(string name, List<string> way, Dictionary<string, Module> done, StringBuilder text, Func<string, string> read)
    {
        if (done.TryGetValue(name, out Module? added))
        {
            return added;
        }

        if (way.Contains(name))
        {
            throw new InvalidOperationException($"The modules import each other in a circle: {string.Join(" → ", way.Append(name))}.");
        }

        string source = read(name);
        way.Add(name);
        string body = Import().Replace(source, match =>
        {
            string from = match.Groups["from"].Value;
            Module other = Add(Place(name, from), way, done, text, read);
            string[][] names = [.. match.Groups["names"].Value.Split(',').Select(part => part.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Where(part => part.Length > 0)];
            foreach (string[] wanted in names)
            {
                if (!other.Exports.Contains(wanted[0]))
                {
                    // It would be undefined, and only seen when somebody uses it.
                    throw new InvalidOperationException($"{name}: `{from}` exports {string.Join(", ", other.Exports)}, and not {wanted[0]}.");
                }
            }

            return $"const {{ {string.Join(", ", names.Select(wanted => string.Join(' ', wanted).Replace(" as ", ": ", StringComparison.Ordinal)))} }} = m{other.Number};";
        });
        way.RemoveAt(way.Count - 1);
        var exports = new List<string>();
        body = Export().Replace(body, match =>
        {
            exports.Add(match.Groups["name"].Value);
            return match.Value["export ".Length..];
        });
        if (Odd().Match(body) is { Success: true } odd)
        {
            throw new InvalidOperationException($"{name}: found `{odd.Value.Trim()}`; allowed: import {{ … }} from './x.js'; and export before function, async function, class or const.");
        }

        var module = new Module(done.Count, exports);
        done.Add(name, module);
        text.Append("const m").Append(module.Number).Append(" = (() => {\n").Append(body.Trim()).Append("\nreturn { ").AppendJoin(", ", exports).Append(" };\n})();\n");
        return module;
    }

    private static string Place(string from, string to)
    {
        var parts = new List<string>(from.Split('/')[..^1]);
        foreach (string part in to.Split('/'))
        {
            switch (part)
            {
                case ".":
                    break;
                case ".." when parts.Count == 0:
                    throw new InvalidOperationException($"{from}: `{to}` leads out of the front end's folder.");
                case "..":
                    parts.RemoveAt(parts.Count - 1);
                    break;
                default:
                    parts.Add(part);
                    break;
            }
        }

        return string.Join('/', parts);
    }

    private static string Text(string name)
    {
        Stream? found = Here.GetManifestResourceStream(Root + name) ?? Here.GetManifestResourceStream(Root + name.Replace('/', '\\'));
        if (found is null)
        {
            throw new InvalidOperationException($"There is no module `{name}`.");
        }

        using var reader = new StreamReader(found, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    [GeneratedRegex(@"^import \{(?<names>[^}]*)\} from '(?<from>\.[^']*)';$", RegexOptions.Multiline)]
    private static partial Regex Import();

    [GeneratedRegex(@"^export (?:async function|function|class|const) (?<name>[A-Za-z_$][\w$]*)", RegexOptions.Multiline)]
    private static partial Regex Export();

    [GeneratedRegex(@"^(?:import|export)\b.*$", RegexOptions.Multiline)]
    private static partial Regex Odd();

    private sealed record Module(int Number, IReadOnlyList<string> Exports);
}
