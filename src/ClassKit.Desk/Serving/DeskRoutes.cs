using ClassKit.Desk.Safety;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace ClassKit.Desk.Serving;

/// <summary>
/// Where pages are told to the server. There are three ways to ask, and every one that changes something has its token looked at before its
/// page is.
/// </summary>
/// <param name="routes">The server's.</param>
/// <param name="desk">What the desk has at hand.</param>
internal sealed class DeskRoutes(IEndpointRouteBuilder routes, DeskState desk)
{
    /// <summary>A page that is looked at.</summary>
    public void Look(string path, Func<Visit, Task> answer) =>
        routes.MapMethods(path, [HttpMethods.Get, HttpMethods.Head], context => answer(new(context, desk)));

    /// <summary>A page that needs a folder.</summary>
    public void LookInside(string path, Func<Visit, Task> answer) => Look(path, visit => Inside(visit, () => answer(visit)));

    /// <summary>A form that was sent.</summary>
    public void Take(string path, Func<Visit, Task> answer) => routes.MapPost(path, async context =>
        {
            if (await TokenForm.ReadAsync(context.Request, desk.Keys, desk.Limits) is { } form)
                await answer(new(context, desk, form));
            else
                context.Response.StatusCode = StatusCodes.Status403Forbidden;
        });

    /// <summary>Files that were sent.</summary>
    public void Receive(string path, Func<Visit, SentFiles, Task> answer) => routes.MapPost(path, async context =>
        {
            if (await SentFiles.OpenAsync(context, desk.Keys, desk.Limits) is not { } files)
                context.Response.StatusCode = StatusCodes.Status403Forbidden;
            else
                await Inside(new(context, desk), () => answer(new(context, desk), files));
        });

    /// <summary>A form that needs a folder.</summary>
    public void TakeInside(string path, Func<Visit, Task> answer) => Take(path, visit => Inside(visit, () => answer(visit)));

    /// <summary>
    /// A folder can go away while the desk is open: a stick is pulled out, a share sleeps. That is said, and nothing is taken for an empty
    /// folder.
    /// </summary>
    private Task Inside(Visit visit, Func<Task> answer) =>
        desk.Folders.Current switch
        {
            null => visit.GoTo(""),
            var folder when Directory.Exists(folder.Root) => answer(),
            _ => visit.Unreachable(null),
        };
}
