using System.Globalization;
using System.Text.RegularExpressions;
using Jint;
using LaunchSim.Web.Pages;

namespace LaunchSim.Web.Tests.Front;

/// <summary>One module of the front end with its imports, run without a browser: for those that draw nothing.</summary>
internal sealed partial class FrontScript : IDisposable
{
    private readonly Engine _engine = new(options => options.Strict());

    /// <summary>Runs a module; what it exports is then called <c>tested</c>.</summary>
    /// <param name="entry">Its place below <c>Front/</c>.</param>
    public FrontScript(string entry)
    {
        string script = FrontBundle.Script(entry);
        string last = Module().Matches(script)[^1].Groups["name"].Value;

        // A byte a character, as browsers give it.
        _ = _engine.SetValue("atob", (Func<string, string>)(text => string.Concat(Convert.FromBase64String(text).Select(one => (char)one))));
        _ = _engine.Execute($"{script}\nglobalThis.tested = {last};");
    }

    /// <summary>Adds what another module exports, with its imports, under a name.</summary>
    /// <param name="name">The name.</param>
    /// <param name="entry">Its place below <c>Front/</c>.</param>
    public void Add(string name, string entry)
    {
        string script = FrontBundle.Script(entry);
        _ = _engine.Execute($"globalThis.{name} = (() => {{\n{script}\nreturn {Module().Matches(script)[^1].Groups["name"].Value};\n}})();");
    }

    /// <summary>Gives a text to the script.</summary>
    public void Set(string name, string text) => _engine.SetValue(name, text);

    /// <summary>Runs statements.</summary>
    public void Execute(string code) => _engine.Execute(code);

    /// <summary>A number that an expression gives.</summary>
    public double Number(string expression) => _engine.Evaluate(expression).AsNumber();

    /// <summary>The numbers of an array that an expression gives.</summary>
    public double[] Numbers(string expression) => [.. _engine.Evaluate(expression).AsArray().Select(value => value.AsNumber())];

    /// <summary>Whether an expression holds.</summary>
    public bool Holds(string expression) => _engine.Evaluate(expression).AsBoolean();

    /// <summary>The text that an expression gives.</summary>
    public string Text(string expression) => _engine.Evaluate(expression).AsString();

    /// <summary>A number as JavaScript writes it.</summary>
    public static string Of(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    public void Dispose() => _engine.Dispose();

    [GeneratedRegex(@"^const (?<name>m\d+) = ", RegexOptions.Multiline)]
    private static partial Regex Module();
}
