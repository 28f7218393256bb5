using System.Globalization;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Primitives;

namespace LaunchSim.Web.Desk;

/// <summary>Why a request is refused.</summary>
/// <param name="Status">The status code.</param>
/// <param name="Reason">A plain sentence without its final stop, fit to be shown and logged.</param>
internal sealed record Refusal(int Status, string Reason)
{
    /// <summary>The methods that are allowed instead; null when it is not about the method.</summary>
    public string? Allow { get; init; }
}

/// <summary>What the desk answers at all: the address, by whom it may be asked and how.</summary>
/// <param name="Path">Such as <c>/desk</c>.</param>
/// <param name="Method">Its method; HEAD goes with GET.</param>
internal sealed record DeskRoute(string Path, string Method)
{
    /// <summary>The list, or the desk of the one file.</summary>
    public static DeskRoute First { get; } = new("/", HttpMethods.Get);

    /// <summary>The desk of a file.</summary>
    public static DeskRoute Desk { get; } = new("/desk", HttpMethods.Get);

    /// <summary>The socket.</summary>
    public static DeskRoute Live { get; } = new("/live", HttpMethods.Get);

    /// <summary>Saves a variant.</summary>
    public static DeskRoute Save { get; } = new("/save", HttpMethods.Post);

    /// <summary>The page to send to a friend.</summary>
    public static DeskRoute Page { get; } = new("/page", HttpMethods.Post);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<DeskRoute> All { get; } = [First, Desk, Live, Save, Page];

    /// <summary>Whether something is sent to it.</summary>
    public bool Writes => Method == HttpMethods.Post;
}

/// <summary>
/// Lets in only what the user's own pages ask for. A page of another site cannot name this host, does not know the token and
/// cannot hide where it comes from; another user of the machine does not know the token.
/// </summary>
/// <param name="port">The desk's port.</param>
/// <param name="token">Its token.</param>
internal sealed class RequestGate(int port, DeskToken token)
{
    /// <summary>The header in which what writes carries the token.</summary>
    public const string TokenHeader = "Desk-Token";

    // At port 80 a browser leaves the port away.
    private readonly string[] _hosts = [.. new[] { "127.0.0.1", "[::1]", "localhost" }.SelectMany(host => port == 80 ? new[] { host, $"{host}:80" } : [$"{host}:{port.ToString(CultureInfo.InvariantCulture)}"])];

    /// <summary>Looks at a request.</summary>
    /// <param name="context">The request.</param>
    /// <param name="route">What it asks for, when it is let in.</param>
    /// <returns>Why it is refused; null when it is let in.</returns>
    public Refusal? Look(HttpContext context, out DeskRoute route)
    {
        HttpRequest request = context.Request;
        route = DeskRoute.All.FirstOrDefault(one => one.Path == request.Path.Value) ?? DeskRoute.First;
        if (Host(request) is { } host)
        {
            return host;
        }

        if (Origin(request) is { } origin)
        {
            return origin;
        }

        if (!DeskRoute.All.Any(one => one.Path == request.Path.Value))
        {
            return new Refusal(404, "there is no such page here");
        }

        if (request.Method != route.Method && !(HttpMethods.IsHead(request.Method) && route.Method == HttpMethods.Get && route != DeskRoute.Live))
        {
            return new Refusal(405, $"found the method {DeskLog.Plain(request.Method)}; allowed: {route.Method}") { Allow = route == DeskRoute.Live || route.Writes ? route.Method : "GET, HEAD" };
        }

        return Body(request, route) ?? Stranger(request, route);
    }

    private Refusal? Host(HttpRequest request)
    {
        StringValues host = request.Headers.Host;
        return host.Count == 1 && _hosts.Contains(host[0], StringComparer.OrdinalIgnoreCase)
            ? null
            : new Refusal(403, $"found the host `{DeskLog.Plain(host.ToString())}`; allowed: {string.Join(", ", _hosts)}");
    }

    private static Refusal? Origin(HttpRequest request)
    {
        StringValues origin = request.Headers.Origin;
        bool isOwn = origin.Count == 1 && string.Equals(origin[0], $"http://{request.Headers.Host}", StringComparison.OrdinalIgnoreCase);
        return origin.Count == 0 || isOwn ? null : new Refusal(403, $"found the origin `{DeskLog.Plain(origin.ToString())}`; allowed: pages of this desk");
    }

    private static Refusal? Body(HttpRequest request, DeskRoute route)
    {
        bool isChunked = request.Headers.TransferEncoding.Count > 0;
        if (!route.Writes)
        {
            return isChunked || request.ContentLength > 0 ? new Refusal(request.ContentLength > DeskLimits.Bytes ? 413 : 400, "found a body where none is read") : null;
        }

        return isChunked || request.ContentLength is not { } length ? new Refusal(411, "found no length of the body; send Content-Length")
            : length > DeskLimits.Bytes ? new Refusal(413, string.Create(CultureInfo.InvariantCulture, $"found a body of {length} bytes; allowed: {DeskLimits.Bytes}"))
            : !IsJson(request.ContentType) ? new Refusal(415, $"found the content type `{DeskLog.Plain(request.ContentType ?? "")}`; allowed: application/json")
            : null;
    }

    // No form of a foreign page can send this.
    private static bool IsJson(string? type) =>
        type is not null && (type.Equals("application/json", StringComparison.OrdinalIgnoreCase) || type.StartsWith("application/json;", StringComparison.OrdinalIgnoreCase));

    private Refusal? Stranger(HttpRequest request, DeskRoute route)
    {
        bool hasOrigin = request.Headers.Origin.Count == 1;
        if (route == DeskRoute.Live && !hasOrigin)
        {
            return new Refusal(403, "found a socket without an origin; allowed: pages of this desk");
        }

        // A browser always says where a body comes from, one way or the other; what is no browser has the token from the terminal.
        StringValues site = request.Headers["Sec-Fetch-Site"];
        if (route.Writes && (hasOrigin ? site.Count > 0 && site != "same-origin" : site.Count > 0))
        {
            return new Refusal(403, "found a body from another page; allowed: pages of this desk");
        }

        StringValues sent = route.Writes ? request.Headers[TokenHeader] : request.Query["token"];
        return sent.Count == 1 && token.IsOwn(sent[0]) ? null : new Refusal(403, $"found {(sent.Count == 0 ? "no token" : "a wrong token")}; use the address that `launchsim serve` printed");
    }
}
