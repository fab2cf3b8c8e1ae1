using System.Text.RegularExpressions;
using ClassKit.Lessons.Packs;
using ClassKit.Pages.Rendering;

namespace ClassKit.Pages.Trays;

/// <summary>Several pages of a pack in one file, each as often as it is wanted, behind a list of what lies in the pile.</summary>
internal static partial class TrayPieces
{
    private const string BlankSide = "<div class=\"blank-side\"></div>";

    /// <summary>The file in pieces, made one by one: a large class's is never whole in memory.</summary>
    /// <remarks>
    /// What is for students and teams comes first, since its sides are known; a page of running text that takes a side more than was
    /// thought then turns nothing around behind it.
    /// </remarks>
    public static IEnumerable<string> Of(LessonPack pack, IReadOnlyList<PrintedPage> tray, bool bothSides)
    {
        List<PrintedPage> pages = [.. tray.OrderByDescending(page => page.PrintedFor).ThenByDescending(page => page.Parts > 1)];
        var around = PageRenderer
            .Render<TrayListPage>(
                (nameof(TrayListPage.Pack), pack),
                (nameof(TrayListPage.Pages), (IReadOnlyList<PrintedPage>)pages),
                (nameof(TrayListPage.BothSides), bothSides)
            )
            .Split(TrayListPage.Seam);
        return pages.SelectMany((page, place) => Copies(page, $"p{place + 1}-", bothSides)).Prepend(around[0]).Append(around[1]);
    }

    /// <summary>
    /// A page's body as part of the file. Names that its lines refer to get a prefix, and only the first copy has them: no name stands
    /// twice in a file.
    /// </summary>
    private static IEnumerable<string> Copies(PrintedPage page, string prefix, bool bothSides)
    {
        var body = Body().Match(page.Html);
        var inside = Names()
            .Replace(Elsewhere().Replace(Contents().Replace(body.Groups["inside"].Value, ""), ""), name =>
                name.Groups["before"].Value + Regex.Replace(name.Groups["names"].Value, @"(?<=^|\s)(?=\S)", prefix)
            );
        inside = MainEnd()
            .Replace(inside, match => match.Value.StartsWith("</", StringComparison.Ordinal) ? "</div>" : "<div class=\"main\">");
        if (page.SheetsAsMade > 0)
            inside = bothSides ? inside : inside.Replace(BlankSide, "", StringComparison.Ordinal);
        else if (bothSides)
            inside = page.Parts > 1 ? Apart(page, inside) : inside + (page.Sides % 2 == 1 ? BlankSide : "");
        var whole = $"<div class=\"tray-page {body.Groups["class"].Value}\">{inside}</div>\n";
        return Enumerable.Repeat(Id().Replace(whole, ""), page.Copies - 1).Prepend(whole);
    }

    /// <summary>
    /// What is one team's is on no back of another's: a blank back to every part that does not take both sides by itself.
    /// </summary>
    private static string Apart(PrintedPage page, string inside)
    {
        var part = -1;
        return PartEnd()
            .Replace(inside, end =>
                page.SidesOfParts.ElementAtOrDefault(++part) % 2 == 0 && page.SidesOfParts.Count > 0 ? end.Value : end.Value + BlankSide
            );
    }

    [GeneratedRegex("<body class=\"(?<class>[^\"]*)\">(?<inside>.*)</body>", RegexOptions.Singleline)]
    private static partial Regex Body();

    [GeneratedRegex("<nav .*?</nav>", RegexOptions.Singleline)]
    private static partial Regex Contents();

    /// <summary>Links to pages that lie beside the page and not beside this file.</summary>
    [GeneratedRegex(" href=\"[^\"#:]+\"")]
    private static partial Regex Elsewhere();

    [GeneratedRegex("(?<before> (?:id|for|headers|aria-labelledby|aria-describedby)=\"|href=\"#|url\\(#)(?<names>[^\")]+)")]
    private static partial Regex Names();

    [GeneratedRegex("<main[^>]*>|</main>")]
    private static partial Regex MainEnd();

    /// <summary>The end of a card, which has no sections, or of somebody's run sheet, which is one.</summary>
    [GeneratedRegex("</article>|</section>")]
    private static partial Regex PartEnd();

    [GeneratedRegex(" id=\"[^\"]*\"")]
    private static partial Regex Id();
}
