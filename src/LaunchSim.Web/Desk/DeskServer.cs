using System.Globalization;
using System.Text;
using System.Text.Json;
using LaunchSim.Web.Pages;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.AspNetCore.Server.Kestrel.Transport.Sockets;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace LaunchSim.Web.Desk;

/// <summary>The live desk: a web server for this machine's own user, with the pages, the socket and the files.</summary>
public sealed class DeskServer : IAsyncDisposable
{
    private static readonly TimeSpan BodyPatience = TimeSpan.FromSeconds(10), Closing = TimeSpan.FromSeconds(5);

    private readonly WebApplication _app;
    private readonly CancellationTokenSource _stop = new();
    private readonly SemaphoreSlim _writing = new(DeskLimits.Writing);
    private readonly DeskSettings _settings;
    private readonly DeskLog _log;
    private readonly DeskFolder _folder;
    private readonly DeskReading _reading;
    private readonly DeskWork _work;
    private readonly DeskFiles _files;
    private readonly DeskToken _token = DeskToken.Draw();
    private readonly RequestGate _gate;
    private readonly DeskPages _pages;
    private int _sockets;

    private DeskServer(DeskSettings settings, LoopbackSockets sockets)
    {
        (_settings, Port) = (settings, sockets.Port);
        _log = new DeskLog(settings.Log);
        _folder = new DeskFolder(settings.Folder, settings.File);
        _reading = new DeskReading(_folder);
        _work = new DeskWork(settings, _folder, _log);
        _files = new DeskFiles(_folder, _reading, _log);
        _gate = new RequestGate(Port, _token);
        _pages = new DeskPages(_work, _reading, _token);
        _app = Build(sockets);
    }

    /// <summary>The port that it listens on.</summary>
    public int Port { get; }

    /// <summary>The address to open in a browser, with the token in it.</summary>
    public string Address => string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{Port}/?token={_token.Text}");

    /// <summary>What is served, for tests to look at.</summary>
    internal DeskWork Work => _work;

    internal DeskFiles Files => _files;

    internal DeskLog Log => _log;

    internal DeskToken Token => _token;

    /// <summary>How many sockets are open.</summary>
    internal int Sockets => Volatile.Read(ref _sockets);

    /// <summary>Opens a desk; when this comes back it answers.</summary>
    /// <param name="settings">What is served, and where.</param>
    /// <exception cref="DeskException">The port is taken, or may not be had.</exception>
    /// <exception cref="IOException">The folder cannot be looked at.</exception>
    public static async Task<DeskServer> StartAsync(DeskSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        using var sockets = LoopbackSockets.Bind(settings.Port);
        var server = new DeskServer(settings, sockets);
        try
        {
            await server._app.StartAsync().ConfigureAwait(false);
            return server;
        }
        catch
        {
            await server.DisposeAsync().ConfigureAwait(false);
            throw;
        }
    }

    /// <summary>Closes it: whoever is connected is told, studies are cancelled.</summary>
    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync().ConfigureAwait(false);
        using (var limit = new CancellationTokenSource(Closing))
        {
            await _app.StopAsync(limit.Token).ConfigureAwait(false);
        }

        await _app.DisposeAsync().ConfigureAwait(false);
        _files.Dispose();
        _work.Dispose();
        _log.Dispose();
        _writing.Dispose();
        _stop.Dispose();
    }

    // Nothing is taken from files, variables or arguments: only what stands here.
    private WebApplication Build(LoopbackSockets sockets)
    {
        WebApplicationBuilder builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions { Args = [], ContentRootPath = AppContext.BaseDirectory, EnvironmentName = Environments.Production });
        _ = builder.Logging.ClearProviders().SetMinimumLevel(LogLevel.Debug).AddProvider(new LogBridge(_log));
        _ = builder.Services.AddSingleton<IHostLifetime, SilentLifetime>();
        _ = builder.WebHost.UseKestrelCore().ConfigureKestrel(options => Configure(options, sockets));
        _ = builder.Services.Configure<SocketTransportOptions>(options =>
        {
            options.CreateBoundListenSocket = sockets.Hand;
            options.Backlog = 128;
        });
        WebApplication app = builder.Build();
        _ = app.UseWebSockets(new WebSocketOptions { KeepAliveInterval = TimeSpan.FromSeconds(15), KeepAliveTimeout = TimeSpan.FromSeconds(15) });
        app.Run(AnswerAsync);
        return app;
    }

    private static void Configure(KestrelServerOptions options, LoopbackSockets sockets)
    {
        options.AddServerHeader = false;
        options.AllowSynchronousIO = false;
        KestrelServerLimits limits = options.Limits;
        limits.MaxConcurrentConnections = DeskLimits.Connections;

        // One more than the desk lets in, so that the one too many is told why.
        limits.MaxConcurrentUpgradedConnections = DeskLimits.Sockets + 1;
        limits.MaxRequestBodySize = DeskLimits.Bytes;
        limits.MaxRequestLineSize = DeskLimits.RequestLine;
        limits.MaxRequestHeadersTotalSize = DeskLimits.Headers;
        limits.MaxRequestHeaderCount = DeskLimits.HeaderCount;
        limits.RequestHeadersTimeout = TimeSpan.FromSeconds(5);
        limits.KeepAliveTimeout = TimeSpan.FromSeconds(30);
        foreach (System.Net.IPEndPoint endPoint in sockets.EndPoints)
        {
            options.Listen(endPoint, listen => listen.Protocols = HttpProtocols.Http1);
        }
    }

    private async Task AnswerAsync(HttpContext context)
    {
        Guard(context.Response.Headers);
        try
        {
            if (_gate.Look(context, out DeskRoute route) is { } refusal)
            {
                await RefuseAsync(context, refusal).ConfigureAwait(false);
            }
            else if (route == DeskRoute.Live)
            {
                await LiveAsync(context).ConfigureAwait(false);
            }
            else if (route.Writes)
            {
                await PostAsync(context, route).ConfigureAwait(false);
            }
            else
            {
                await PageAsync(context, route).ConfigureAwait(false);
            }
        }
        catch (Microsoft.AspNetCore.Http.BadHttpRequestException exception)
        {
            await RefuseAsync(context, new Refusal(exception.StatusCode, DeskLog.Plain(exception.Message))).ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
            // The browser was closed, or the desk is being stopped: nobody waits.
            context.Abort();
        }
#pragma warning disable CA1031 // One request's fault must not be the others'.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            _log.Fault(exception);
            if (!context.Response.HasStarted)
            {
                await TextAsync(context, 500, "a fault of the program itself; its terminal says more").ConfigureAwait(false);
            }
        }
    }

    private static void Guard(IHeaderDictionary headers)
    {
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers.CacheControl = "no-store";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.ContentSecurityPolicy = "default-src 'none'; frame-ancestors 'none'";
    }

    private async Task PageAsync(HttpContext context, DeskRoute route)
    {
        HtmlPage? page;
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, _stop.Token);
        if (route == DeskRoute.First && _settings.File is null)
        {
            page = await _work.Threads.Run(_ => _pages.List(), stop.Token).ConfigureAwait(false);
        }
        else
        {
            string? name = route == DeskRoute.First ? _settings.File : One(context.Request.Query["file"]);
            page = name is null ? null : await WithAsync(name, file => _work.Threads.Run(token => _pages.Desk(file, token), stop.Token)).ConfigureAwait(false);
        }

        if (page is null)
        {
            await RefuseAsync(context, NoFile).ConfigureAwait(false);
            return;
        }

        HttpResponse response = context.Response;
        response.Headers.ContentSecurityPolicy = $"{page.Policy}; frame-ancestors 'none'";
        response.ContentType = "text/html; charset=utf-8";
        await SendAsync(context, Encoding.UTF8.GetBytes(page.Text)).ConfigureAwait(false);
    }

    private async Task LiveAsync(HttpContext context)
    {
        if (!context.WebSockets.IsWebSocketRequest)
        {
            await RefuseAsync(context, new Refusal(400, "found no request for a socket")).ConfigureAwait(false);
            return;
        }

        if (One(context.Request.Query["file"]) is not { } name || !_folder.Has(name))
        {
            await RefuseAsync(context, NoFile).ConfigureAwait(false);
            return;
        }

        if (Interlocked.Increment(ref _sockets) > DeskLimits.Sockets)
        {
            _ = Interlocked.Decrement(ref _sockets);
            await RefuseAsync(context, new Refusal(429, string.Create(CultureInfo.InvariantCulture, $"found {DeskLimits.Sockets} desks open already; close one"))).ConfigureAwait(false);
            return;
        }

        try
        {
            DeskFile file = _files.Take(name);
            try
            {
                using System.Net.WebSockets.WebSocket socket = await context.WebSockets.AcceptWebSocketAsync().ConfigureAwait(false);
                using var connection = new LiveConnection(socket, file, _work, _stop.Token);
                await connection.RunAsync().ConfigureAwait(false);
            }
            finally
            {
                _files.Give(file);
            }
        }
        finally
        {
            _ = Interlocked.Decrement(ref _sockets);
        }
    }

    private async Task PostAsync(HttpContext context, DeskRoute route)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, _stop.Token);
        if (await BodyAsync(context, stop.Token).ConfigureAwait(false) is not { } body)
        {
            await RefuseAsync(context, new Refusal(408, "found a body that does not come")).ConfigureAwait(false);
            return;
        }

        if (!await _writing.WaitAsync(TimeSpan.Zero, stop.Token).ConfigureAwait(false))
        {
            context.Response.Headers.RetryAfter = "1";
            await RefuseAsync(context, new Refusal(429, "found too much in work; ask again in a second")).ConfigureAwait(false);
            return;
        }

        DeskAnswer? answer;
        try
        {
            using JsonDocument document = Sent.Read(body);
            JsonElement sent = document.RootElement;
            answer = await WithAsync(Sent.Text(sent, "file"), file => route == DeskRoute.Save
                ? _work.Threads.Run(token => SaveVariant.Answer(sent, file, _reading, _folder, token), stop.Token)
                : SentPage.AnswerAsync(sent, file, _work, stop.Token)).ConfigureAwait(false);
        }
        catch (MalformedException malformed)
        {
            answer = DeskAnswer.Refused(400, malformed.Message);
        }
        finally
        {
            _ = _writing.Release();
        }

        if (answer is null)
        {
            await RefuseAsync(context, NoFile).ConfigureAwait(false);
            return;
        }

        await SendAsync(context, answer).ConfigureAwait(false);
    }

    /// <summary>The body, which is as long as it was said to be; null when it does not come.</summary>
    private static async Task<byte[]?> BodyAsync(HttpContext context, CancellationToken stop)
    {
        byte[] body = new byte[(int)context.Request.ContentLength!.Value];
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(stop);
        limit.CancelAfter(BodyPatience);
        try
        {
            await context.Request.Body.ReadExactlyAsync(body, limit.Token).ConfigureAwait(false);
            return body;
        }
        catch (EndOfStreamException)
        {
            return null;
        }
        catch (OperationCanceledException) when (!stop.IsCancellationRequested)
        {
            return null;
        }
    }

    /// <summary>Does something with a file of the folder; null when there is none of that name.</summary>
    private async Task<T?> WithAsync<T>(string name, Func<DeskFile, Task<T>> work)
        where T : class
    {
        if (!_folder.Has(name))
        {
            return null;
        }

        DeskFile file = _files.Take(name);
        try
        {
            return await work(file).ConfigureAwait(false);
        }
        finally
        {
            _files.Give(file);
        }
    }

    private Task SendAsync(HttpContext context, DeskAnswer answer)
    {
        if (answer.Refusal is { } refusal)
        {
            _log.Refused($"{Words(context, answer.Status)}: {refusal}");
        }

        return WriteAsync(context, answer);
    }

    private static async Task WriteAsync(HttpContext context, DeskAnswer answer)
    {
        HttpResponse response = context.Response;
        response.StatusCode = answer.Status;
        response.ContentType = answer.Type;
        if (answer.Policy is { } policy)
        {
            response.Headers.ContentSecurityPolicy = $"{policy}; frame-ancestors 'none'";
        }

        if (answer.FileName is { } name)
        {
            response.Headers.ContentDisposition = $"attachment; filename=\"{Ascii(name)}\"; filename*=UTF-8''{Uri.EscapeDataString(name)}";
        }

        await SendAsync(context, answer.Content).ConfigureAwait(false);
    }

    private Task RefuseAsync(HttpContext context, Refusal refusal)
    {
        _log.Refused($"{Words(context, refusal.Status)}: {refusal.Reason}");
        if (context.Response.HasStarted)
        {
            return Task.CompletedTask;
        }

        if (refusal.Allow is { } allow)
        {
            context.Response.Headers.Allow = allow;
        }

        // A body that nobody reads would be taken for the next request.
        if (context.Request.ContentLength > 0 || context.Request.Headers.TransferEncoding.Count > 0)
        {
            context.Response.Headers.Connection = "close";
        }

        // Whoever posts reads JSON.
        return DeskRoute.All.Any(route => route.Writes && route.Path == context.Request.Path.Value)
            ? WriteAsync(context, DeskAnswer.Refused(refusal.Status, refusal.Reason))
            : TextAsync(context, refusal.Status, refusal.Reason);
    }

    private static Task TextAsync(HttpContext context, int status, string sentence)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return SendAsync(context, Encoding.UTF8.GetBytes($"{sentence}\n"));
    }

    private static async Task SendAsync(HttpContext context, ReadOnlyMemory<byte> content)
    {
        context.Response.ContentLength = content.Length;
        if (!HttpMethods.IsHead(context.Request.Method))
        {
            await context.Response.Body.WriteAsync(content, context.RequestAborted).ConfigureAwait(false);
        }
    }

    private static Refusal NoFile { get; } = new(404, "there is no such scenario in the folder");

    private static string Words(HttpContext context, int status) =>
        string.Create(CultureInfo.InvariantCulture, $"{status} {DeskLog.Plain(context.Request.Method)} {DeskLog.Plain(context.Request.Path.Value ?? "")}");

    private static string? One(Microsoft.Extensions.Primitives.StringValues values) => values.Count == 1 ? values[0] : null;

    // Other characters stand in the second form, which every browser prefers.
    private static string Ascii(string name) => string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.' ? c : '-'));

    /// <summary>Ctrl-C is the command line's business, and nothing is printed by the host.</summary>
    private sealed class SilentLifetime : IHostLifetime
    {
        public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

        public Task WaitForStartAsync(CancellationToken cancellationToken) => Task.CompletedTask;
    }
}
