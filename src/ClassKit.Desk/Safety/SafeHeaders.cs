using Microsoft.AspNetCore.Http;

namespace ClassKit.Desk.Safety;

/// <summary>
/// What every answer tells the browser: keep nothing (but the look, see <see cref="Look.LookFiles"/>), load nothing from elsewhere, run no script that stands in a page, show us in nobody
/// else's frame.
/// </summary>
internal static class SafeHeaders
{
    private const string Policy =
        "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self' data:; connect-src 'self'; frame-src 'self'; form-action 'self'; base-uri 'self'; frame-ancestors 'none'";

    /// <summary>Sets those of a page of the desk.</summary>
    public static void OfDesk(HttpResponse response)
    {
        var headers = response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.CacheControl = "no-store";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=()";
    }

    /// <summary>
    /// Changes them for a page that was made to stand alone, its style inside it, and that the desk shows in a frame or opens.
    /// </summary>
    /// <param name="response">The answer.</param>
    /// <param name="script">How the policy names the page's one script, by its digest; null for a page without, which is nearly every one.
    /// A page with a script is cut off from the desk.</param>
    public static void OfSheet(HttpResponse response, string? script)
    {
        var sandbox = script is null
            ? "allow-same-origin allow-popups allow-downloads allow-modals"
            : "allow-scripts allow-modals allow-downloads";
        response.Headers.ContentSecurityPolicy =
            $"default-src 'none'; style-src 'unsafe-inline'; img-src data:; form-action 'none'; base-uri 'none'; frame-ancestors 'self'; sandbox {sandbox}{(script is null ? "" : $"; script-src {script}")}";
    }
}
