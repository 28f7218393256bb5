using System.Reflection;
using System.Text.RegularExpressions;
using LaunchSim.Web.Pages;

namespace LaunchSim.Web.Tests.Front;

public class FrontRulesTests
{
    [Fact]
    public void Files_OfTheFrontEnd_KeepTheRules()
    {
        string[] breaches = [.. FrontBundle.Names.SelectMany(name => FrontRules.Breaches(name, Source(name)))];
        Assert.True(breaches.Length == 0, string.Join('\n', breaches));
    }

    [Fact]
    public void Modules_OfTheFrontEnd_AreTypeChecked()
    {
        foreach (string name in FrontBundle.Names.Where(name => name.EndsWith(".js", StringComparison.Ordinal)))
        {
            Assert.StartsWith("// @ts-check\n", Source(name), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Properties_ThatAStyleUses_AreDeclaredSomewhere()
    {
        string all = string.Join('\n', FrontBundle.Names.Select(Source));
        string[] used = [.. Regex.Matches(all, @"var\(\s*(--[\w-]+)").Select(match => match.Groups[1].Value).Distinct()];
        string[] declared = [.. Regex.Matches(all, @"(--[\w-]+)\s*:|setProperty\(\s*'(--[\w-]+)'").Select(match => match.Groups[1].Value + match.Groups[2].Value).Distinct()];
        Assert.Contains("--ink", used);
        Assert.Empty(used.Except(declared));
    }

    [Theory]
    [InlineData("box.innerHTML = name;")]
    [InlineData("box.insertAdjacentHTML('beforeend', name);")]
    [InlineData("document.write(name);")]
    [InlineData("eval(text);")]
    [InlineData("const f = new Function('a', text);")]
    [InlineData("setTimeout('go()', 1);")]
    [InlineData("box.setAttribute('style', 'color: var(--ink)');")]
    [InlineData("const text = `<p style=\"color: var(--ink)\">`;")]
    [InlineData("button.onclick = go;")]
    [InlineData("box.setAttribute('onclick', 'go()');")]
    [InlineData("fetch('https://example.org/a.json');")]
    [InlineData("image.src = '//example.org/a.png';")]
    [InlineData("// @ts-ignore")]
    [InlineData("const late = await import('./late.js');")]
    [InlineData("const end = '</script>';")]
    [InlineData("console.log(time);")]
    [InlineData("debugger;")]
    public void Breaches_OfALineThatIsForbidden_NamePlaceAndMend(string line)
    {
        string breach = Assert.Single(FrontRules.Breaches("page.js", $"const a = 1;\n{line}\n"));
        Assert.Matches(@"^page\.js:2:\d+: found `.+`; .+$", breach);
    }

    [Theory]
    [InlineData("box.textContent = name;")]
    [InlineData("const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');")]
    [InlineData("box.style.setProperty('--x', `${x}px`);")]
    [InlineData("if (event.onset === 1) { evaluate(text); }")]
    [InlineData("const half = width / 2; // the middle")]
    [InlineData("setTimeout(go, 1);")]
    [InlineData("/** @type {import('./x.js').Launch} */")]
    [InlineData("/** @param {Map<string, import('./x.js').Launch>} launches @param {(import('./x.js').Launch)[]} all */")]
    [InlineData("const styles = { style: 'dashed' };")]
    [InlineData("fetch('/api/run');")]
    [InlineData("link.href = URL.createObjectURL(new Blob([text]));")]
    public void Breaches_OfALineThatIsAllowed_AreNone(string line) => Assert.Empty(FrontRules.Breaches("page.js", $"{line}\n"));

    [Theory]
    [InlineData("p { color: #c00 }")]
    [InlineData("p { border: 1px solid rgb(0 0 0 / 50%) }")]
    [InlineData("p { background: white }")]
    [InlineData("@import 'other.css';")]
    [InlineData("p { background: url(a.png) }")]
    [InlineData("p::after { content: '</style>' }")]
    public void Breaches_OfAStyleThatIsForbidden_AreTold(string line) => Assert.Single(FrontRules.Breaches("style/plot.css", line));

    [Theory]
    [InlineData("p { color: var(--ink); white-space: nowrap }")]
    [InlineData("#facade { fill: url(#hatch) }")]
    [InlineData("p { color: currentColor; background: transparent }")]
    public void Breaches_OfAStyleThatIsAllowed_AreNone(string line) => Assert.Empty(FrontRules.Breaches("style/plot.css", line));

    [Fact]
    public void Breaches_OfColoursInTheBase_AreNone() => Assert.Empty(FrontRules.Breaches("style/base.css", ":root { --ink: #222 }"));

    private static string Source(string name)
    {
        Assembly web = typeof(FrontBundle).Assembly;
        string resource = web.GetManifestResourceNames().Single(candidate => candidate.Replace('\\', '/') == $"front/{name}");
        using var reader = new StreamReader(web.GetManifestResourceStream(resource)!);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
