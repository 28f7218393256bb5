using System.Runtime.CompilerServices;
using LaunchSim.BrowserTests.Checks;
using LaunchSim.Web.Pages;
using Xunit.Abstractions;

namespace LaunchSim.BrowserTests.Browsers;

/// <summary>What tests in the browser have in common: a page that is opened here has to be clean at the test's end.</summary>
[Collection(Browser.Collection)]
public abstract class BrowserTest(Browser browser, ITestOutputHelper output) : IAsyncLifetime
{
    private readonly List<BrowserPage> _opened = [];

    /// <summary>The one browser, for pages that are meant to complain.</summary>
    protected Browser Browser => browser;

    /// <summary>What a reader of the results gets to know.</summary>
    protected ITestOutputHelper Output => output;

    /// <summary>Writes a page to its file and opens it from there, as a person does who was sent it.</summary>
    /// <param name="page">The page.</param>
    /// <param name="screen">On what it is looked at; a laptop unless told.</param>
    /// <param name="name">The file's name without its ending; that of the test unless told.</param>
    protected Task<BrowserPage> Open(HtmlPage page, Screen? screen = null, [CallerMemberName] string name = "") => Open(FileOf(page, name), screen);

    /// <summary>Opens what lies at an address.</summary>
    protected async Task<BrowserPage> Open(Uri address, Screen? screen = null)
    {
        BrowserPage opened = await browser.Open(address, screen ?? Screen.Laptop);
        _opened.Add(opened);
        return opened;
    }

    /// <summary>The address of the file that a page was written to.</summary>
    protected Uri FileOf(HtmlPage page, [CallerMemberName] string name = "") => FileOf(page.Text, name);

    /// <summary>The address of the file that a page's text was written to.</summary>
    protected Uri FileOf(string html, [CallerMemberName] string name = "")
    {
        string path = OutputFiles.Path("pages", $"{GetType().Name}.{name}.html");
        File.WriteAllText(path, html);
        return new Uri(path);
    }

    /// <summary>Tells on the terminal how long something took. It is never judged: a machine that is busy is no mistake of the page.</summary>
    /// <param name="what">What took so long.</param>
    /// <param name="milliseconds">The times in milliseconds.</param>
    protected void Tell(string what, params IReadOnlyCollection<double> milliseconds) => browser.Tell($"{what}: {Timings.Text(milliseconds)}");

    public Task InitializeAsync() => Task.CompletedTask;

    public virtual async Task DisposeAsync()
    {
        try
        {
            foreach (BrowserPage page in _opened)
            {
                await page.AssertClean();
            }
        }
        finally
        {
            foreach (BrowserPage page in _opened)
            {
                await page.DisposeAsync();
            }
        }
    }
}
