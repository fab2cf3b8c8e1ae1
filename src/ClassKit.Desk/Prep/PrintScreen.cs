using System.Globalization;
using ClassKit.Desk.Serving;
using ClassKit.Pages;
using ClassKit.Pages.Trays;

namespace ClassKit.Desk.Prep;

/// <summary>What was ticked of a lesson, as one file to print at once, its paper counted before.</summary>
internal static class PrintScreen
{
    /// <summary>What the tray's form says where it is to be printed.</summary>
    public const string Asked = "print";

    /// <summary>More of one page than any class takes.</summary>
    public const int MostCopies = 1_000;

    private const string Page = "lessons/{class}/{lesson}/print";

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside(Page, visit =>
            With(visit, (known, lesson, pack) =>
                visit.Show<PrintPage>(
                    (nameof(PrintPage.Class), known),
                    (nameof(PrintPage.Lesson), lesson),
                    (nameof(PrintPage.Tray), Of(visit, known, pack)),
                    (
                        nameof(PrintPage.NotPrinted),
                        pack.Files.Where(file => !file.IsPage && visit.All("file").Contains(file.Entry.FileName))
                            .Select(file => file.Entry.Title)
                            .ToList()
                    ),
                    (nameof(PrintPage.BothSides), IsBothSides(visit)),
                    (nameof(PrintPage.Query), visit.Context.Request.QueryString.Value ?? "")
                )
            )
        );
        routes.LookInside(Page + "/file", visit =>
            With(visit, (known, _, pack) => visit.Pieces(HtmlPages.ToPrint(pack.Pack, Of(visit, known, pack), IsBothSides(visit))))
        );
        routes.LookInside(Page + "/keep", visit =>
            With(visit, (known, lesson, pack) =>
                visit.Pieces(HtmlPages.ToPrint(pack.Pack, Of(visit, known, pack), IsBothSides(visit)), $"{lesson.Key}.html")
            )
        );
    }

    /// <summary>Goes on to what was ticked; workbooks are not printed, and that is said there.</summary>
    public static Task Begin(Visit visit, IEnumerable<string> chosen) =>
        visit.GoTo($"{visit.Place.Here[..^"tray".Length]}{Asked}?{Query(chosen)}");

    /// <summary>What is ticked, as part of an address.</summary>
    public static string Query(IEnumerable<string> chosen) => string.Join('&', chosen.Select(name => "file=" + Uri.EscapeDataString(name)));

    private static Task With(Visit visit, Func<Folders.ClassEntry, Folders.LessonEntry, PreparedLesson, Task> answer) =>
        visit.InLesson(
            (known, lesson) =>
                PrepScreen.PreparedOf(visit, known, lesson) is { } pack
                    ? answer(known, lesson, pack)
                    : PrepScreen.Prepare(visit, known, lesson)
        );

    /// <summary>
    /// The pages that the address names, each as often as it says or as the class needs it; all of the lesson's where it names none.
    /// </summary>
    private static IReadOnlyList<PrintedPage> Of(Visit visit, Folders.ClassEntry known, PreparedLesson pack)
    {
        var asked = visit.All("file");
        return
        [
            .. pack
                .Files.Where(file =>
                    file.IsPage && file.Entry.Contents.Length > 0 && (asked.Count == 0 || asked.Contains(file.Entry.FileName))
                )
                .Select(file => PrintedPage.Of(pack.Pack, file.Entry, file.Html))
                .Concat(RoundPrint.Of(visit, known).Where(print => asked.Contains(print.Name)).Select(print => print.Printed))
                .Select(page =>
                    page with
                    {
                        Copies = int.TryParse(
                            visit.Typed(PrintPage.Field(page)),
                            NumberStyles.None,
                            CultureInfo.InvariantCulture,
                            out var copies
                        )
                            ? Math.Clamp(copies, 1, MostCopies)
                            : page.Copies,
                    }
                ),
        ];
    }

    private static bool IsBothSides(Visit visit) => visit.Typed("sides") != "one";
}
