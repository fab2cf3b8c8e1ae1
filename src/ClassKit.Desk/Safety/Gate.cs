using Microsoft.AspNetCore.Http;

namespace ClassKit.Desk.Safety;

/// <summary>
/// Whom the desk answers: the browser that brought the key, on pages of the desk's own. Everything else is refused before anything is
/// looked at.
/// </summary>
/// <param name="keys">The desk's secrets.</param>
/// <param name="authority">The only host that the desk answers to, with its port: a page that has its own name point here (DNS rebinding)
/// sends that name.</param>
internal sealed class Gate(DeskKeys keys, string authority)
{
    /// <summary>The session's cookie.</summary>
    public const string Cookie = "desk";

    /// <summary>The path, below the room, that takes the key.</summary>
    public const string Entrance = "/enter";

    private string Origin { get; } = $"http://{authority}";

    /// <summary>Why a request is refused; null if it is let in. Paths are below the room.</summary>
    public Refused? Refusal(HttpRequest request)
    {
        if (request.Headers.Host is not [{ } host] || host != authority)
            return new(StatusCodes.Status421MisdirectedRequest, "This is not the address of the desk.");
        if (!IsMethod(request.Method))
            return new(StatusCodes.Status405MethodNotAllowed, "The desk does not know that.");
        if (!DeskKeys.Same("/" + keys.Room, request.PathBase.Value))
            return new(StatusCodes.Status404NotFound, "There is nothing here.");
        if (request.Headers.Origin is { Count: > 0 } origin && origin != Origin)
            return Foreign;
        if (HttpMethods.IsPost(request.Method) && request.Headers.Origin.Count == 0)
            return Foreign;
        if (request.Path == Entrance && HttpMethods.IsGet(request.Method))
            return null;
        if (request.Headers["Sec-Fetch-Site"] is { Count: > 0 } site && site != "same-origin" && site != "none")
            return Foreign;
        return DeskKeys.Same(keys.Session, request.Cookies[Cookie])
            ? null
            : new(
                StatusCodes.Status403Forbidden,
                "This browser has not brought the desk’s key. Go back to the window in which the desk is open, or close the desk and open it again."
            );
    }

    /// <summary>Takes the key of a visit to the entrance and gives the session for it.</summary>
    /// <returns>False if the key is wrong or was used before.</returns>
    public bool Enter(HttpContext context)
    {
        var offered = context.Request.Query["key"];
        if (!keys.Take(offered is [var key] ? key : null))
            return DeskKeys.Same(keys.Session, context.Request.Cookies[Cookie]);
        context.Response.Cookies.Append(
            Cookie,
            keys.Session,
            new()
            {
                HttpOnly = true,
                SameSite = SameSiteMode.Strict,
                Path = context.Request.PathBase,
                IsEssential = true,
            }
        );
        return true;
    }

    private static Refused Foreign { get; } = new(StatusCodes.Status403Forbidden, "This was asked by another page than the desk’s own.");

    private static bool IsMethod(string method) => HttpMethods.IsGet(method) || HttpMethods.IsHead(method) || HttpMethods.IsPost(method);
}
