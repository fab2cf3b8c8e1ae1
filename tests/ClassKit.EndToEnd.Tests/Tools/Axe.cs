using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace ClassKit.EndToEnd.Tests.Tools;

/// <summary>WCAG 2.2 AA by axe's rules.</summary>
internal static class Axe
{
    private static readonly AxeRunOptions Rules = new()
    {
        // Passes carry a copy of every element they looked at: on the answer key that is most of the time.
        ResultTypes = [ResultType.Violations],
        RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
    };

    private static readonly AxeRunOptions Colors = new() { ResultTypes = [ResultType.Violations], RunOnly = new() { Type = "rule", Values = ["color-contrast"] } };

    /// <summary>What breaks a rule on the page as it stands, each with where.</summary>
    public static Task<IReadOnlyList<string>> ViolationsAsync(IPage page) => ViolationsAsync(page, Rules);

    /// <summary>The same of its colours alone, for a page that passes in others.</summary>
    public static Task<IReadOnlyList<string>> ColorViolationsAsync(IPage page) => ViolationsAsync(page, Colors);

    private static async Task<IReadOnlyList<string>> ViolationsAsync(IPage page, AxeRunOptions rules) =>
    [
        .. (await page.RunAxe(rules)).Violations.Select(violation =>
            $"{violation.Id}: {violation.Help}\n    {string.Join("\n    ", violation.Nodes.Take(3).Select(node => node.Html))}"),
    ];
}
