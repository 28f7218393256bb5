using System.Net;
using System.Net.Http.Json;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using LaunchSim.Web.Desk;

namespace LaunchSim.Web.Tests.Desk;

/// <summary>A desk in this process over a folder of its own, with real sockets.</summary>
internal sealed class DeskHost : IAsyncDisposable
{
    private readonly DirectoryInfo _outer = Directory.CreateTempSubdirectory("launchsim-desk");
    private readonly StringWriter _log = new() { NewLine = "\n" };
    private readonly TextWriter _shared;

    private DeskHost() => _shared = TextWriter.Synchronized(_log);

    public DeskServer Server { get; private set; } = null!;

    public HttpClient Http { get; private set; } = null!;

    /// <summary>The folder that is served.</summary>
    public string Folder { get; private set; } = "";

    /// <summary>A folder beside it, of which nothing may be seen.</summary>
    public string Outside { get; private set; } = "";

    public string Token => Server.Token.Text;

    public string Origin => $"http://127.0.0.1:{Server.Port}";

    public string Log
    {
        get
        {
            lock (_shared)
            {
                return _log.ToString();
            }
        }
    }

    /// <summary>Opens one over copies of shipped scenarios.</summary>
    /// <param name="scenarios">Their names; the first is the door car unless others are named.</param>
    public static Task<DeskHost> OpenAsync(params string[] scenarios) => WithAsync(null, null, scenarios.Length == 0 ? ["door-car"] : scenarios);

    /// <summary>Opens one over copies of all shipped scenarios.</summary>
    public static Task<DeskHost> OpenAllAsync() => OpenAsync([.. Directory.EnumerateFiles(Shipped.Folder, "*.yaml").Select(path => Path.GetFileNameWithoutExtension(path))]);

    public static async Task<DeskHost> WithAsync(string? file, TimeSpan? patience, params string[] scenarios)
    {
        var host = new DeskHost();
        host.Folder = host._outer.CreateSubdirectory("served").FullName;
        host.Outside = host._outer.CreateSubdirectory("outside").FullName;
        foreach (string scenario in scenarios)
        {
            File.Copy(Shipped.PathOf(scenario), Path.Combine(host.Folder, scenario + ".yaml"));
        }

        var settings = new DeskSettings { Folder = host.Folder, File = file, Log = host._shared, Program = "LaunchSim test" };
        host.Server = await DeskServer.StartAsync(patience is { } time ? settings with { Patience = time } : settings);
        host.Http = new HttpClient(new SocketsHttpHandler { UseCookies = false, UseProxy = false, AllowAutoRedirect = false }) { BaseAddress = new Uri(host.Origin), Timeout = TimeSpan.FromSeconds(60) };
        return host;
    }

    public string PathOf(string name) => Path.Combine(Folder, name);

    public string Write(string name, string text)
    {
        File.WriteAllText(PathOf(name), text);
        return PathOf(name);
    }

    public string WriteOutside(string name, string text)
    {
        string path = Path.Combine(Outside, name);
        File.WriteAllText(path, text);
        return path;
    }

    public Task<HttpResponseMessage> GetAsync(string path) => Http.GetAsync(new Uri(path, UriKind.Relative));

    public Task<HttpResponseMessage> DeskAsync(string file) => GetAsync($"/desk?file={Uri.EscapeDataString(file)}&token={Token}");

    /// <summary>Sends a body as the desk's own page does.</summary>
    public Task<HttpResponseMessage> PostAsync(string path, object body) => SendAsync(path, request => request.Content = JsonContent.Create(body));

    public async Task<HttpResponseMessage> SendAsync(string path, Action<HttpRequestMessage> change)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, path);
        request.Headers.Add("Origin", Origin);
        request.Headers.Add("Desk-Token", Token);
        request.Content = new StringContent("{}", Encoding.UTF8, "application/json");
        change(request);

        // A chunked body has no length; everything else of these tests has.
        if (request.Headers.TransferEncodingChunked != true && request.Content is not null)
        {
            await request.Content.LoadIntoBufferAsync();
        }

        return await Http.SendAsync(request);
    }

    public Task<LiveClient> ConnectAsync(string file = "door-car.yaml") => LiveClient.OpenAsync(this, file);

    /// <summary>Sends bytes as they are, and reads what comes until the other end closes or nothing comes any more.</summary>
    public async Task<string> RawAsync(byte[] bytes, bool closes = false)
    {
        using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(20));
        var text = new StringBuilder();
        try
        {
            await socket.ConnectAsync(new IPEndPoint(IPAddress.Loopback, Server.Port), limit.Token);
            await socket.SendAsync(bytes, limit.Token);
            if (closes)
            {
                socket.Shutdown(SocketShutdown.Send);
            }

            byte[] buffer = new byte[4096];
            while (await socket.ReceiveAsync(buffer, limit.Token) is > 0 and var count)
            {
                text.Append(Encoding.Latin1.GetString(buffer, 0, count));
            }
        }
        catch (SocketException)
        {
            // It may have been cut off.
        }

        return text.ToString();
    }

    /// <summary>Waits until something holds.</summary>
    public static async Task UntilAsync(Func<bool> holds, string what)
    {
        for (int i = 0; i < 600; i++)
        {
            if (holds())
            {
                return;
            }

            await Task.Delay(50);
        }

        Assert.Fail($"not within 30 s: {what}");
    }

    public static async Task<JsonElement> JsonAsync(HttpResponseMessage response)
    {
        using JsonDocument document = JsonDocument.Parse(await response.Content.ReadAsStringAsync());
        return document.RootElement.Clone();
    }

    public async ValueTask DisposeAsync()
    {
        Http.Dispose();
        await Server.DisposeAsync();
        try
        {
            _outer.Delete(true);
        }
        catch (IOException)
        {
            // A left-over folder in the temporary one does no harm.
        }
    }
}
