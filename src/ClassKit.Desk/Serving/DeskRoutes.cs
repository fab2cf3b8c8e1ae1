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
    private readonly List<string> _looked = [];
    private readonly List<string> _taken = [];

    /// <summary>A page that is looked at.</summary>
    public void Look(string path, Func<Visit, Task> answer)
    {
        _looked.Add(Plain(path));
        routes.MapMethods(path, [HttpMethods.Get, HttpMethods.Head], context => answer(new(context, desk)));
    }

    /// <summary>
    /// Whoever comes back to an address that only takes forms, as a browser does that opens its last pages again, is led to the page that
    /// lies nearest above it. To be called when every other page is known.
    /// </summary>
    public void LeadBack()
    {
        foreach (var path in _taken.Distinct().Where(path => !_looked.Contains(Plain(path))).ToList())
        {
            var steps = path.Split('/');
            var up = Enumerable.Range(1, steps.Length).First(up => _looked.Contains(Plain(string.Join('/', steps[..^up]))));
            Look(path, visit =>
                visit.GoTo(
                    string.Join('/', visit.Context.Request.Path.Value!.TrimStart('/').Split('/')[..^up].Select(Uri.EscapeDataString))
                )
            );
        }
    }

    /// <summary>Steps that stand for something may be called otherwise by every page.</summary>
    private static string Plain(string path) => string.Join('/', path.Split('/').Select(step => step.StartsWith('{') ? "{}" : step));

    /// <summary>A page that needs a folder.</summary>
    public void LookInside(string path, Func<Visit, Task> answer) => Look(path, visit => Inside(visit, () => answer(visit)));

    /// <summary>A form that was sent.</summary>
    public void Take(string path, Func<Visit, Task> answer)
    {
        _taken.Add(path);
        routes.MapPost(path, async context =>
        {
            if (await TokenForm.ReadAsync(context.Request, desk.Keys, desk.Limits) is { } form)
                await answer(new(context, desk, form));
            else
                context.Response.StatusCode = StatusCodes.Status403Forbidden;
        });
    }

    /// <summary>Files that were sent.</summary>
    public void Receive(string path, Func<Visit, SentFiles, Task> answer)
    {
        _taken.Add(path);
        routes.MapPost(path, async context =>
        {
            if (await SentFiles.OpenAsync(context, desk.Keys, desk.Limits) is not { } files)
                context.Response.StatusCode = StatusCodes.Status403Forbidden;
            else
                await Inside(new(context, desk), () => answer(new(context, desk), files));
        });
    }

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
