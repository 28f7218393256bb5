using Jint;
using LaunchSim.Web.Pages;

namespace LaunchSim.Web.Tests.Pages;

public class FrontBundleTests
{
    private static string Bundle(params (string Name, string Source)[] modules)
    {
        var sources = modules.ToDictionary(module => module.Name, module => module.Source);
        return FrontBundle.Script(modules[0].Name, name => sources.TryGetValue(name, out string? source) ? source : throw new InvalidOperationException($"There is no module `{name}`."));
    }

    private static string Refusal(params (string Name, string Source)[] modules) => Assert.Throws<InvalidOperationException>(() => Bundle(modules)).Message;

    [Fact]
    public void Script_OfModulesThatImportEachOther_PutsEachBeforeItsUserAndOnce()
    {
        string script = Bundle(
            ("entry.js", "import { car } from './car.js';\nimport { wheel } from './wheel.js';\ndraw(car, wheel);\n"),
            ("car.js", "import { wheel } from './wheel.js';\nexport const car = [wheel];\n"),
            ("wheel.js", "export const wheel = 'round';\n"));
        Assert.Equal(
            """
            'use strict';
            const m0 = (() => {
            const wheel = 'round';
            return { wheel };
            })();
            const m1 = (() => {
            const { wheel } = m0;
            const car = [wheel];
            return { car };
            })();
            const m2 = (() => {
            const { car } = m1;
            const { wheel } = m0;
            draw(car, wheel);
            return {  };
            })();

            """,
            script);
    }

    [Fact]
    public void Script_WithAs_GivesTheOtherName()
    {
        string script = Bundle(
            ("entry.js", "import { one, two as zwei, three as drei } from './numbers.js';\n"),
            ("numbers.js", "export const one = 1;\nexport const two = 2;\nexport const three = 3;\n"));
        Assert.Contains("const { one, two: zwei, three: drei } = m0;", script, StringComparison.Ordinal);
    }

    [Fact]
    public void Script_WithAnImportOverSeveralLines_ReadsItWhole()
    {
        string script = Bundle(
            ("entry.js", "import {\n  one,\n  two as\n    zwei,\n} from './numbers.js';\n"),
            ("numbers.js", "export const one = 1;\nexport const two = 2;\n"));
        Assert.Contains("const { one, two: zwei } = m0;", script, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("page/entry.js", "../charts/plot.js", "charts/plot.js")]
    [InlineData("page/entry.js", "./parts/bar.js", "page/parts/bar.js")]
    [InlineData("entry.js", "./a/b/c.js", "a/b/c.js")]
    [InlineData("a/b/entry.js", "../../top.js", "top.js")]
    [InlineData("a/b/entry.js", "./../c/./d.js", "a/c/d.js")]
    public void Script_OfModulesInFolders_FindsThem(string from, string import, string place) =>
        Assert.StartsWith("'use strict';\nconst m0 = (() => {\nconst found = 1;", Bundle((from, $"import {{ found }} from '{import}';\n"), (place, "export const found = 1;\n")), StringComparison.Ordinal);

    [Theory]
    [InlineData("export function draw() {}", "draw")]
    [InlineData("export async function load() {}", "load")]
    [InlineData("export class Cursor {}", "Cursor")]
    [InlineData("export const $ = 1;", "$")]
    public void Script_OfEachExportThatIsAllowed_HandsItOn(string export, string name) =>
        Assert.Contains($"{export["export ".Length..]}\nreturn {{ {name} }};", Bundle(("entry.js", $"{export}\n")), StringComparison.Ordinal);

    [Theory]
    [InlineData("export default function draw() {}", "export default function draw() {}")]
    [InlineData("export let time = 0;", "export let time = 0;")]
    [InlineData("export { time };", "export { time };")]
    [InlineData("export * from './other.js';", "export * from './other.js';")]
    [InlineData("export const { a, b } = c;", "export const { a, b } = c;")]
    [InlineData("export function* steps() {}", "export function* steps() {}")]
    [InlineData("import './other.js';", "import './other.js';")]
    [InlineData("import * as other from './other.js';", "import * as other from './other.js';")]
    [InlineData("import other from './other.js';", "import other from './other.js';")]
    [InlineData("import { a } from \"./other.js\";", "import { a } from \"./other.js\";")]
    [InlineData("import { a } from './other.js'", "import { a } from './other.js'")]
    [InlineData("import { a } from 'other';", "import { a } from 'other';")]
    public void Script_WithAnotherForm_IsRefusedWithPlaceFindingAndMend(string line, string found)
    {
        string refusal = Refusal(("parts/entry.js", $"const c = 1;\n{line}\n"), ("parts/other.js", "export const a = 1;\n"));
        Assert.StartsWith($"parts/entry.js: found `{found}`; allowed: import", refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void Script_OfACircle_IsRefusedWithItsWay() =>
        Assert.Equal(
            "The modules import each other in a circle: entry.js → a.js → b.js → a.js.",
            Refusal(
                ("entry.js", "import { a } from './a.js';\n"),
                ("a.js", "import { b } from './b.js';\nexport const a = 1;\n"),
                ("b.js", "import { a } from './a.js';\nexport const b = 1;\n")));

    [Fact]
    public void Script_OfAModuleThatImportsItself_IsRefused() =>
        Assert.Equal("The modules import each other in a circle: entry.js → entry.js.", Refusal(("entry.js", "import { a } from './entry.js';\nexport const a = 1;\n")));

    [Fact]
    public void Script_WithAModuleThatIsNotThere_IsRefusedByName() =>
        Assert.Equal("There is no module `parts/bar.js`.", Refusal(("entry.js", "import { bar } from './parts/bar.js';\n")));

    [Fact]
    public void Script_WithAnImportFromAboveTheFolder_IsRefused() =>
        Assert.Equal("page/entry.js: `../../secret.js` leads out of the front end's folder.", Refusal(("page/entry.js", "import { a } from '../../secret.js';\n")));

    [Fact]
    public void Script_WithANameThatIsNotExported_IsRefusedByName() =>
        Assert.Equal(
            "entry.js: `./numbers.js` exports one, and not two.",
            Refusal(("entry.js", "import { one, two as zwei } from './numbers.js';\n"), ("numbers.js", "export const one = 1, two = 2;\n")));

    [Fact]
    public void Script_OfModulesWithTheSameNames_KeepsThemApart()
    {
        string script = Bundle(
            ("entry.js", "import { left } from './left.js';\nimport { right } from './right.js';\nconst size = left + right;\n"),
            ("left.js", "const size = 1;\nexport const left = size;\n"),
            ("right.js", "const size = 2;\nexport const right = size;\n"));
        Assert.Equal(3, script.Split("= (() => {").Length - 1);
        Assert.Equal(3, script.Split("const size").Length - 1);
    }

    [Fact]
    public void Script_WithWordsInCommentsAndTexts_LeavesThemAlone()
    {
        const string Source = "/** Import { a } from './x.js'; @typedef {import('./x.js').X} X */\nconst told = \"export const a\";\n";
        Assert.Contains(Source.Trim(), Bundle(("entry.js", Source)), StringComparison.Ordinal);
    }

    [Fact]
    public void Script_OfEveryModuleThatIsShipped_CanBeRead()
    {
        string[] modules = [.. FrontBundle.Names.Where(name => name.EndsWith(".js", StringComparison.Ordinal))];
        Assert.Contains("page.js", modules);
        foreach (string name in modules)
        {
            _ = Engine.PrepareScript(FrontBundle.Script(name), name);
        }
    }

    [Fact]
    public void Style_OfSheets_HoldsThemInTheirOrder() =>
        Assert.Equal(FrontBundle.Style("style/page.css") + FrontBundle.Style("style/base.css"), FrontBundle.Style("style/page.css", "style/base.css"));

    [Fact]
    public void Style_OfASheetThatIsNotThere_IsRefusedByName() =>
        Assert.Equal("There is no module `style/none.css`.", Assert.Throws<InvalidOperationException>(() => FrontBundle.Style("style/none.css")).Message);
}
