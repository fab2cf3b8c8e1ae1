using System.Reflection;
using System.Text;
using ClassKit.Desk.Serving;
using ClassKit.Pages.Layout;

namespace ClassKit.Desk.Look;

/// <summary>Stylesheets, the script and the mark of the desk, out of this program.</summary>
internal static class LookFiles
{
    private static readonly (string Path, string Kind, Func<string> Text)[] All =
    [
        ("look/classkit.css", "text/css; charset=utf-8", () => Stylesheet.Text),
        ("look/desk.css", "text/css; charset=utf-8", () => Own("desk.css")),
        ("look/desk.js", "text/javascript; charset=utf-8", () => Own("desk.js")),
        ("look/mark.svg", "image/svg+xml", () =>
            """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 16 16"><path d="M2 9a6 5 0 0 1 12 0v4H2z" fill="#8a5a1c"/><path d="M5 6v3M8 5v4M11 6v3" stroke="#fdfcf8" stroke-width="1.2" stroke-linecap="round"/></svg>"""
        ),
    ];

    public static void AddTo(DeskRoutes routes)
    {
        foreach (var (path, kind, text) in All)
        {
            var bytes = new Lazy<byte[]>(() => Encoding.UTF8.GetBytes(text()));
            routes.Look(path, visit =>
            {
                // The page that says that the desk is closed comes when nothing is left to ask for them.
                visit.Context.Response.Headers.CacheControl = "private, max-age=86400";
                return visit.Write(kind, bytes.Value);
            });
        }
    }

    private static string Own(string name)
    {
        using var text = new StreamReader(
            Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
                ?? throw new InvalidOperationException($"{name} is not embedded in this assembly.")
        );
        return text.ReadToEnd();
    }
}
