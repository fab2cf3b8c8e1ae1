using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace ClassKit.EndToEnd.Tests.Tools;

/// <summary>WCAG 2.2 AA by axe's rules.</summary>
/// <remarks>
/// axe is run once over the page. Playwright's own way to run it asks frame by frame and takes two to three times as long; what a frame
/// shows is judged as a page of its own.
/// </remarks>
internal static class Axe
{
    private const string Contrast = "color-contrast";

    private static readonly object Tags = new
    {
        type = "tag",
        values = new[] { "wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice" },
    };

    private static readonly string Script = new BundledAxeScriptProvider().GetScript();

    /// <summary>What breaks a rule on the page as it stands, each with where.</summary>
    public static Task<IReadOnlyList<string>> ViolationsAsync(IPage page) =>
        ViolationsAsync(page, new { resultTypes = Violations, runOnly = Tags });

    /// <summary>The same but for its colours, which are more than half of what axe has to do.</summary>
    public static Task<IReadOnlyList<string>> StructureViolationsAsync(IPage page) =>
        ViolationsAsync(
            page,
            new
            {
                resultTypes = Violations,
                runOnly = Tags,
                rules = new Dictionary<string, object> { [Contrast] = new { enabled = false } },
            }
        );

    /// <summary>The same of its colours alone, for a page that passes in others.</summary>
    public static Task<IReadOnlyList<string>> ColorViolationsAsync(IPage page) =>
        ViolationsAsync(page, new { resultTypes = Violations, runOnly = new { type = "rule", values = new[] { Contrast } } });

    /// <summary>Passes carry a copy of every element they looked at: on the answer key that is most of the time.</summary>
    private static string[] Violations => ["violations"];

    private static async Task<IReadOnlyList<string>> ViolationsAsync(IPage page, object options)
    {
        await page.EvaluateAsync(Script);
        return await page.EvaluateAsync<string[]>(
            "async options => (await axe.run(document, options)).violations.map(found => [`${found.id}: ${found.help}`, ...found.nodes.slice(0, 3).map(node => node.html)].join('\\n    '))",
            options
        );
    }
}
