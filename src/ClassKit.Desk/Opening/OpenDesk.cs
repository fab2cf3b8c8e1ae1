using System.Net;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Safety;
using ClassKit.Desk.Serving;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;

namespace ClassKit.Desk.Opening;

/// <summary>A desk that is open: a server on this machine's loopback, on a port that the system chose.</summary>
internal sealed class OpenDesk : IAsyncDisposable
{
    private readonly WebApplication _server;
    private readonly FolderHolder _folders;
    private readonly JobQueue _jobs;
    private readonly TaskCompletionSource _closing = new(TaskCreationOptions.RunContinuationsAsynchronously);

    private OpenDesk(WebApplication server, FolderHolder folders, JobQueue jobs) => (_server, _folders, _jobs) = (server, folders, jobs);

    /// <summary>Its secrets.</summary>
    public DeskKeys Keys { get; } = new();

    /// <summary>Done when the instructor has closed the desk.</summary>
    public Task Closing => _closing.Task;

    /// <summary>Host and port.</summary>
    public string Authority { get; private set; } = "";

    /// <summary>Where all pages are.</summary>
    public string Address => $"http://{Authority}/{Keys.Room}/";

    /// <summary>The address that opens the desk in one browser, once.</summary>
    public string Entrance => $"{Address}{Gate.Entrance[1..]}?key={Keys.Key}";

    /// <summary>Opens a desk.</summary>
    /// <param name="folders">The folder; given back when the desk closes.</param>
    /// <param name="limits">How much a browser may send.</param>
    /// <param name="ours">Told of mistakes of ours.</param>
    /// <param name="now">The clock.</param>
    public static async Task<OpenDesk> StartAsync(
        FolderHolder folders,
        UploadLimits limits,
        Action<Exception> ours,
        Func<DateTimeOffset> now
    )
    {
        ArgumentNullException.ThrowIfNull(folders);
        var jobs = new JobQueue(ours);
        var desk = new OpenDesk(Build(limits), folders, jobs);
        desk.Route(limits, ours, now);
        try
        {
            await desk._server.StartAsync();
        }
        catch
        {
            // No desk was opened that could give them back.
            await desk.DisposeAsync();
            throw;
        }
        desk.Authority = new Uri(
            desk._server.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single()
        ).Authority;
        return desk;
    }

    public async ValueTask DisposeAsync()
    {
        // Pages can still press Stop until the server has gone.
        _jobs.Close();
        await _server.StopAsync();
        await _server.DisposeAsync();
        _jobs.Dispose();
        _folders.Dispose();
    }

    /// <summary>A server that takes nothing from the environment: no settings, no other address, no log.</summary>
    private static WebApplication Build(UploadLimits limits)
    {
        var builder = WebApplication.CreateEmptyBuilder(new());
        builder
            .WebHost.UseKestrelCore()
            .ConfigureKestrel(server =>
            {
                server.Listen(IPAddress.Loopback, 0);
                server.AddServerHeader = false;
                server.Limits.MaxRequestBodySize = limits.Form;
                server.Limits.MinRequestBodyDataRate = new MinDataRate(limits.SlowestPerSecond, limits.Grace);
                server.Limits.RequestHeadersTimeout = limits.Grace * 2;
                server.Limits.MaxConcurrentConnections = 200;
            });
        builder.Services.AddRoutingCore();
        return builder.Build();
    }

    private void Route(UploadLimits limits, Action<Exception> ours, Func<DateTimeOffset> now)
    {
        var desk = new DeskState(Keys, limits, _folders, _jobs, now, () => _closing.TrySetResult());
        var server = _server;
        server.UsePathBase("/" + Keys.Room);
        server.Use(next => context => Answer(context, next, ours, desk));
        server.UseRouting();
        Screens.AddTo(new(server, desk));
    }

    private async Task Answer(HttpContext context, RequestDelegate next, Action<Exception> ours, DeskState desk)
    {
        SafeHeaders.OfDesk(context.Response);
        var gate = new Gate(Keys, Authority);
        if (gate.Refusal(context.Request) is { } refused)
        {
            await Say(context, refused.Status, refused.Why);
            return;
        }
        if (context.Request.Path == Gate.Entrance)
        {
            await Entered(context, gate.Enter(context));
            return;
        }
        try
        {
            await next(context);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // Nobody waits for an answer any more.
        }
        catch (Microsoft.AspNetCore.Http.BadHttpRequestException bad)
        {
            await Say(context, bad.StatusCode, "The browser sent something that the desk cannot take.");
        }
        catch (Exception failure)
            when (failure is IOException or UnauthorizedAccessException && !context.Response.HasStarted && desk.Folders.Current is not null)
        {
            await new Visit(context, desk).Unreachable(Directory.Exists(desk.Folders.Current.Root) ? failure.Message : null);
        }
#pragma warning disable CA1031 // One page must not take the desk down: it is said, and the desk stays open.
        catch (Exception bug)
#pragma warning restore CA1031
        {
            ours(bug);
            await Say(
                context,
                StatusCodes.Status500InternalServerError,
                "This is a mistake of ours, sorry. Nothing was lost: go back and try something else. What happened stands in the window in which the desk was started."
            );
        }
    }

    /// <summary>
    /// A key has worked, or not. What follows is a visit from our own page, so that the cookie goes with it wherever the key came from.
    /// </summary>
    private static Task Entered(HttpContext context, bool isIn)
    {
        if (!isIn)
            return Say(
                context,
                StatusCodes.Status403Forbidden,
                "This key was used already. The desk is open in the browser that brought it; for another one, close the desk and open it again."
            );
        context.Response.ContentType = "text/html; charset=utf-8";
        return context.Response.WriteAsync(
            $"""<!DOCTYPE html><html lang="en"><meta charset="utf-8"><meta http-equiv="refresh" content="0; url={context.Request.PathBase}/"><link rel="icon" href="data:,"><title>ClassKit</title><p><a href="{context.Request.PathBase}/">The desk</a></p></html>"""
        );
    }

    private static async Task Say(HttpContext context, int status, string words)
    {
        if (context.Response.HasStarted)
        {
            context.Abort();
            return;
        }
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        await context.Response.WriteAsync(words);
    }
}
