using System.Collections.Concurrent;
using System.Reflection;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Opening;
using ClassKit.Desk.Safety;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace ClassKit.Desk.Tests.Tools;

/// <summary>A desk that listens, on the invented class; one for all tests of a class.</summary>
public sealed class RunningDesk : IAsyncLifetime
{
    /// <summary>So small that a test exceeds them at once.</summary>
    private static readonly UploadLimits Small = new()
    {
        Form = 128 << 10,
        HandIn = 8 << 20,
        Files = 60,
        SlowestPerSecond = 20_000,
        Grace = TimeSpan.FromSeconds(1.1),
    };

    /// <summary>The day on which all this happens.</summary>
    public static DateTimeOffset Now { get; } = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly ConcurrentQueue<Exception> _ours = new();
    private readonly ConcurrentQueue<string> _foreign = new();
    private readonly FolderHolder _folders = new();
    private OpenDesk? _desk;

    internal OpenDesk Desk => _desk!;

    internal FolderHolder Folders => _folders;

    internal TeachingFolder Folder => _folders.Current!;

    /// <summary>Mistakes of ours that the desk told of.</summary>
    public IReadOnlyCollection<Exception> Ours => _ours;

    /// <summary>A client that keeps no cookies and follows nothing.</summary>
    public HttpClient Client =>
        field ??= new(
            new ReadPages(_foreign.Enqueue)
            {
                InnerHandler = new SocketsHttpHandler { UseCookies = false, AllowAutoRedirect = false },
            }
        );

    /// <summary>The routes of the server, with how they may be asked.</summary>
    public IReadOnlyList<(string Path, IReadOnlyList<string> Methods)> Routes =>
        [
            .. ((WebApplication)typeof(OpenDesk).GetField("_server", BindingFlags.Instance | BindingFlags.NonPublic)!.GetValue(Desk)!)
                .Services.GetRequiredService<EndpointDataSource>()
                .Endpoints.OfType<RouteEndpoint>()
                .Select(endpoint => (endpoint.RoutePattern.RawText!, endpoint.Metadata.GetMetadata<HttpMethodMetadata>()!.HttpMethods)),
        ];

    public async ValueTask InitializeAsync()
    {
        Assert.Null(_folders.Open(LookRound.Make()));
        _desk = await OpenDesk.StartAsync(_folders, Small, _ours.Enqueue, () => Now);
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await Desk.DisposeAsync();
        Assert.Empty(_ours);
        Assert.True(_foreign.IsEmpty, string.Join('\n', _foreign.Distinct()));
    }

    /// <summary>A request as the desk's own page in the right browser sends it.</summary>
    /// <param name="path">Below the room.</param>
    /// <param name="fields">Of a form; null to look at a page.</param>
    public HttpRequestMessage Request(string path, params (string Name, string Value)[]? fields)
    {
        var request = new HttpRequestMessage(fields is null ? HttpMethod.Get : HttpMethod.Post, Desk.Address + path);
        request.Headers.Add("Cookie", $"{Gate.Cookie}={Desk.Keys.Session}");
        if (fields is null)
            return request;
        request.Headers.Add("Origin", $"http://{Desk.Authority}");
        request.Content = new FormUrlEncodedContent(
            fields.Prepend(("token", Desk.Keys.FormToken)).Select(field => KeyValuePair.Create(field.Item1, field.Item2))
        );
        return request;
    }

    /// <summary>The text of a page.</summary>
    public async Task<string> PageAsync(string path)
    {
        using var answer = await Client.SendAsync(Request(path, null));
        return await answer.Content.ReadAsStringAsync();
    }

    /// <summary>What the page of a piece of work says once it is over.</summary>
    public async Task<string> DoneAsync(string path, params (string Name, string Value)[] fields)
    {
        using var answer = await Client.SendAsync(Request(path, fields));
        return await OverAsync(answer);
    }

    /// <summary>The same of work that an answer leads to.</summary>
    public async Task<string> OverAsync(HttpResponseMessage answer)
    {
        var job = answer.Headers.Location!.ToString();
        job = job[job.IndexOf("jobs/", StringComparison.Ordinal)..];
        while ((await PageAsync(job + "/now")).Contains("\"isOpen\":true", StringComparison.Ordinal))
            await Task.Delay(20);
        return await PageAsync(job);
    }

    /// <summary>Looks at a page that may have to be worked out first, until it is.</summary>
    public async Task ReadyAsync(string path)
    {
        using var answer = await Client.SendAsync(Request(path, null));
        if (answer.Headers.Location is not null)
            await OverAsync(answer);
    }

    /// <summary>The status that a request is answered with.</summary>
    public async Task<int> StatusAsync(HttpRequestMessage request)
    {
        using var answer = await Client.SendAsync(request);
        return (int)answer.StatusCode;
    }
}
