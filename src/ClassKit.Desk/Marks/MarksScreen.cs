using ClassKit.Content.Diagnostics;
using ClassKit.Content.Recognition;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.Desk.Texts;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Terms;

namespace ClassKit.Desk.Marks;

/// <summary>The marks of a term: where they come from, what they come to, and the grades as they are given out.</summary>
internal static class MarksScreen
{
    private const string Page = "marks/{class}/{term}";

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside("marks/{class}", visit =>
            visit.InClass(known =>
                TermEntry.Of(visit.Folder, known) is [var only] ? visit.GoTo($"marks/{known.Key}/{only.Key}") : Begin(visit, known, [])
            )
        );
        routes.LookInside("marks/{class}/new", visit => visit.InClass(known => Begin(visit, known, [])));
        routes.TakeInside("marks/{class}/new", visit =>
            visit.InClass(known =>
                BeginTerm.Run(visit, known, Judged(visit, known)) is { Count: > 0 } problems
                    ? Begin(visit, known, problems)
                    : visit.GoTo($"marks/{known.Key}")
            )
        );
        routes.LookInside(Page, visit => InTerm(visit, (known, term) => Show(visit, known, term, [])));
        routes.TakeInside(Page + "/works", visit => InTerm(visit, (known, term) => AddWork(visit, known, term)));
        routes.TakeInside(Page + "/record", visit => InTerm(visit, (known, term) => visit.Begin(TermRecord.Enter(visit, known, term))));
        routes.TakeInside(Page + "/copy", visit => InTerm(visit, (known, term) => visit.Begin(TermRecord.Copy(visit, known, term))));
        routes.LookInside(Page + "/freeze", visit => InTerm(visit, (known, term) => BeforeFreezing(visit, known, term)));
        routes.TakeInside(Page + "/freeze", visit => InTerm(visit, (known, term) => visit.Begin(TermRecord.Freeze(visit, known, term))));
        routes.LookInside(Page + "/given-out", visit => InTerm(visit, (known, term) => TermRecord.GivenOut(visit, known, term).Known
                    is not { } given
                    ? visit.Nothing()
                : TermRecord.PagesOf(term, given) is { } file ? visit.ShowSheet(File.ReadAllText(file))
                : visit.GoTo($"marks/{known.Key}/{term.Key}/sheets/{TermRecord.ToPrint}")));
        routes.LookInside(Page + "/sheets/{**file}", visit =>
            InTerm(visit, (_, term) => MadeFiles.Answer(visit, Files(term), visit.Step("file")))
        );
    }

    /// <summary>Answers for the term that the address names.</summary>
    public static Task InTerm(Visit visit, Func<ClassEntry, TermEntry, Task> answer) =>
        visit.InClass(known =>
            TermEntry.Of(visit.Folder, known).FirstOrDefault(term => term.Key == visit.Step("term")) is { } found
                ? answer(known, found)
                : visit.Nothing()
        );

    /// <summary>What freezing comes to, before it is done.</summary>
    private static Task BeforeFreezing(Visit visit, ClassEntry known, TermEntry term) =>
        WeighTerm.Read(term.File).Model is { } request
            ? visit.Show<FreezePage>(
                (nameof(FreezePage.Class), known),
                (nameof(FreezePage.Term), term),
                (nameof(FreezePage.Weighed), WeighTerm.Run(request, Run.Unwatched)),
                (nameof(FreezePage.GivenOut), TermRecord.GivenOut(visit, known, term).Known)
            )
            : visit.GoTo($"marks/{known.Key}/{term.Key}");

    /// <summary>What weighing makes of the term as its files are.</summary>
    private static IReadOnlyList<OutputFile> Files(TermEntry term)
    {
        var request = WeighTerm.Read(term.File);
        return request.Succeeded ? WeighTerm.Write(WeighTerm.Run(request.Model, Run.Unwatched)).Files : [];
    }

    private static Task Begin(Visit visit, ClassEntry known, IReadOnlyList<Diagnostic> problems) =>
        visit.Show<BeginTermPage>(
            (nameof(BeginTermPage.Class), known),
            (nameof(BeginTermPage.Terms), TermEntry.Of(visit.Folder, known)),
            (nameof(BeginTermPage.Judged), Judged(visit, known)),
            (nameof(BeginTermPage.Rubrics), Rubrics(visit)),
            (nameof(BeginTermPage.Problems), problems)
        );

    private static Task Show(Visit visit, ClassEntry known, TermEntry term, IReadOnlyList<Diagnostic> problems)
    {
        var request = WeighTerm.Read(term.File);
        var (given, unasked) = TermRecord.GivenOut(visit, known, term);
        return visit.Show<TermPage>(
            (nameof(TermPage.Class), known),
            (nameof(TermPage.Term), term),
            (nameof(TermPage.Weighed), request.Succeeded ? WeighTerm.Run(request.Model, Run.Unwatched) : null),
            (nameof(TermPage.Problems), (IReadOnlyList<Diagnostic>)[.. problems, .. request.Problems, .. unasked]),
            (nameof(TermPage.Judged), Judged(visit, known)),
            (nameof(TermPage.Rubrics), Rubrics(visit)),
            (nameof(TermPage.Text), visit.Folder.TextAt(term.File)),
            (nameof(TermPage.Rule), visit.Folder.TextAt(term.RuleFile)),
            (nameof(TermPage.GivenOut), given),
            (nameof(TermPage.HasRecord), TermRecord.IsThere(visit))
        );
    }

    private static Task AddWork(Visit visit, ClassEntry known, TermEntry term)
    {
        var judged = Judged(visit, known);
        var work = NewWork.Read(visit, term, judged);
        return CountedAlready(term, judged, work) is { } twice ? Show(visit, known, term, [twice])
            : TermText.Keep(term.File, null, text => TermText.WithWork(text, work)) is { Count: > 0 } problems
                ? Show(visit, known, term, problems)
            : visit.GoTo($"marks/{known.Key}/{term.Key}");
    }

    /// <summary>What was handed out once would count twice.</summary>
    private static Diagnostic? CountedAlready(TermEntry term, IReadOnlyList<RoundState> judged, IReadOnlyDictionary<string, string> work)
    {
        var graded = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(term.File)!, work["marks"]));
        return
            work["marks"].Length > 0
            && judged.FirstOrDefault(state => Path.GetFullPath(state.Round.Graded) == graded) is { } round
            && term.Plan.Model?.Works.FirstOrDefault(one => one.Graded.Any(file => Path.GetFullPath(file) == graded)) is { } counted
            ? new(
                "",
                null,
                $"{round.Dealt.LessonTitle}, round {round.Round.Number}, counts already, as `{counted.Title}`",
                "Choose another round, or change in the term’s text what that work is."
            )
            : null;
    }

    /// <summary>The criteria of bench work in the folder, by their headings; the file stands behind where two have the same.</summary>
    private static IReadOnlyList<(string Key, string Title)> Rubrics(Visit visit)
    {
        var found = visit
            .Folder.Keyed(ContentKind.PracticalRubric)
            .Select(item =>
                (item.Key, File: item.Path, Title: OwnText.Read(item.Path) is { } text ? TextHeading.Of(new StringReader(text.Text)) : null)
            )
            .ToList();
        return
        [
            .. found.Select(one =>
                (
                    one.Key,
                    one.Title is { } title && found.Count(other => other.Title == title) == 1
                        ? title
                        : $"{one.Title} ({Path.GetRelativePath(visit.Folder.Root, one.File).Replace('\\', '/')})".Trim()
                )
            ),
        ];
    }

    private static IReadOnlyList<RoundState> Judged(Visit visit, ClassEntry known) =>
        [.. visit.Folder.Rounds(known).Select(visit.Look).OfType<RoundState>().Where(state => state.Grades is not null)];
}
