using ClassKit.Content.Diagnostics;
using ClassKit.Content.Terms;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Safety;
using ClassKit.Desk.Serving;
using ClassKit.Terms.Bench;
using ClassKit.Terms.Work;
using ClassKit.UseCases.BenchMarks;
using ClassKit.UseCases.Running;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Numbers;

namespace ClassKit.Desk.Marks;

/// <summary>One work of a term: its marks typed, or what a page or a workbook of the kitchen saved brought back.</summary>
internal static class WorkScreen
{
    private const string Page = "marks/{class}/{term}/work/{place}";

    /// <summary>More than any page of a form or workbook of marks has, in bytes.</summary>
    private const int MostBytes = 20 << 20;

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside(Page, visit => InWork(visit, (known, term, work) => Show(visit, known, term, work, [])));
        routes.TakeInside(Page + "/typed", visit => InWork(visit, (known, term, work) => KeepTyped(visit, known, term, work)));
        routes.TakeInside(Page + "/out", visit => InWork(visit, (known, term, work) => TakeOut(visit, known, term, work)));
        routes.TakeInside(Page + "/bench/{whose}", visit => InBench(visit, (known, files) => KeepBench(visit, known, files)));
        routes.Receive(Page + "/back/{whose}", (visit, sent) => InBench(visit, (known, files) => Bring(visit, known, files, sent)));
        routes.TakeInside(Page + "/take/{whose}", visit => InBench(visit, (known, files) => TakeIn(visit, known, files)));
        routes.TakeInside(Page + "/earlier/{whose}", visit => InBench(visit, (known, files) => GoBack(visit, known, files)));
        routes.LookInside(Page + "/form/{file}", visit =>
            InWork(visit, (known, term, work) =>
                new BenchFiles(term, work, Sitting.First).Form(known).Model is { } form
                && MakeBenchForm.Write(form).Files.FirstOrDefault(file => file.Path == visit.Step("file")) is { } found
                    ? MadeFiles.Keep(visit, found)
                    : visit.Nothing()
            )
        );
        routes.LookInside(Page + "/agreement", visit => InWork(visit, (known, term, work) => Agreement(visit, known, term, work)));
    }

    private static Task InWork(Visit visit, Func<ClassEntry, TermEntry, PlannedWork, Task> answer) =>
        MarksScreen.InTerm(visit, (known, term) =>
            int.TryParse(
                visit.Step("place"),
                System.Globalization.NumberStyles.None,
                System.Globalization.CultureInfo.InvariantCulture,
                out var place
            ) && term.Plan.Model?.Works.ElementAtOrDefault(place - 1) is { } work
                ? answer(known, term, work)
                : visit.Nothing()
        );

    private static Task InBench(Visit visit, Func<ClassEntry, BenchFiles, Task> answer) =>
        InWork(visit, (known, term, work) =>
            work.Kind == WorkKind.BenchWork && Sitting.All.FirstOrDefault(one => one.Key == visit.Step("whose")) is { } whose
                ? answer(known, new(term, work, whose))
                : visit.Nothing()
        );

    /// <summary>
    /// The term no longer counts a work; what was marked stays in the folder. Works are addressed by their place: an older page may mean another.
    /// </summary>
    private static Task TakeOut(Visit visit, ClassEntry known, TermEntry term, PlannedWork work)
    {
        IReadOnlyList<Diagnostic> refused =
            visit.Typed("work") == work.Title
                ? term.Plan.Model!.Works.Count == 1
                    ?
                    [
                        new(
                            term.File,
                            null,
                            "It is the only work of the term",
                            "Nothing was taken out. Add another work first: a term without any weighs nothing."
                        ),
                    ]
                    // The table first: it may lack a column of the term, never have one that the term does not know.
                    : new TypedWork(term, work).TakeOut() is { Count: > 0 } stays
                        ? stays
                        : TermText.Keep(term.File, null, text => TermText.WithoutWork(text, work))
                :
                [
                    new(
                        term.File,
                        null,
                        $"The page that was sent showed another work, and this is “{work.Title}”",
                        "Nothing was taken out. Go back to the term, and open the work once more."
                    ),
                ];
        return refused.Count > 0 ? Show(visit, known, term, work, refused) : visit.GoTo($"marks/{known.Key}/{term.Key}");
    }

    private static Task Show(
        Visit visit,
        ClassEntry known,
        TermEntry term,
        PlannedWork work,
        IReadOnlyList<Diagnostic> problems,
        Sitting? asked = null
    )
    {
        var whose = asked ?? Sitting.All.FirstOrDefault(one => one.Key == visit.Typed("as")) ?? Sitting.First;
        var form = work.Kind == WorkKind.BenchWork ? new BenchFiles(term, work, whose).Form(known) : null;
        var files = form is null ? null : new BenchFiles(term, work, whose);
        var shown = Now(term, work, whose, form?.Model);
        visit.Desk.Kept.Put(NameOfShown(term, work, whose, new TypedWork(term, work).Stamp, files?.Stamp ?? ""), "", shown);
        // Of an older page only what was typed into it is shown again, never how the files were then.
        var again = IsOld(visit, term, work, files)
            ? Shown(visit, term, work, whose) is { } old
                ? name => old.Typed(visit, name)
                : _ => null
            : (Func<string, string?>)visit.Sent;
        return visit.Show<WorkPage>(
            (nameof(WorkPage.Open), form?.Model is { } made ? new BenchFiles(term, work, whose).Open(made) : []),
            (nameof(WorkPage.Noted), form?.Model is null ? [] : new BenchFiles(term, work, whose).Noted),
            (
                nameof(WorkPage.Earlier),
                form?.Model is { } same ? new BenchFiles(term, work, whose).Earlier(same) : (IReadOnlyList<(string, int)>)[]
            ),
            (nameof(WorkPage.Class), known),
            (nameof(WorkPage.Term), term),
            (nameof(WorkPage.Work), work),
            (nameof(WorkPage.Whose), whose),
            (nameof(WorkPage.Form), form?.Model),
            (nameof(WorkPage.Typed), new TypedWork(term, work)),
            (nameof(WorkPage.Problems), (IReadOnlyList<Diagnostic>)[.. problems, .. form?.Problems ?? []]),
            (nameof(WorkPage.IsKept), visit.Ticked("kept") && problems.Count == 0),
            (nameof(WorkPage.Again), again),
            (nameof(WorkPage.Both), files is not null && form?.Model is { } whole ? Both(files, whole) : []),
            (
                nameof(WorkPage.Asked),
                files is not null && form?.Model is { } asking && !IsOld(visit, term, work, files) ? Unsettled(visit, files, asking) : []
            ),
            (nameof(WorkPage.Levels), files?.Stamp ?? "")
        );
    }

    private static string NameOfShown(TermEntry term, PlannedWork work, Sitting whose, string marks, string levels) =>
        $"shown {term.File} {work.Title} {whose.Key} {marks} {levels}";

    /// <summary>True where a form was sent whose page was shown before something that it holds was changed.</summary>
    private static bool IsOld(Visit visit, TermEntry term, PlannedWork work, BenchFiles? files) =>
        (visit.Sent("stamp") is { } marks && marks != new TypedWork(term, work).Stamp)
        || (visit.Sent(ShownWork.Levels) is { } levels && levels != files?.Stamp);

    /// <summary>What the page showed whose form was sent; null where that is not known any more.</summary>
    private static ShownWork? Shown(Visit visit, TermEntry term, PlannedWork work, Sitting whose) =>
        visit.Desk.Kept.Get<ShownWork>(NameOfShown(term, work, whose, visit.Typed("stamp"), visit.Typed(ShownWork.Levels)), "");

    private static ShownWork Now(TermEntry term, PlannedWork work, Sitting whose, BenchForm? form) =>
        ShownWork.Of(new(term, work), term.Plan.Model?.Class.Students ?? [], form, form is null ? null : whose.In(work));

    private static IReadOnlyList<Diagnostic> Meanwhile(Visit visit, TermEntry term, PlannedWork work, Sitting whose, BenchForm? form) =>
        [ShownWork.Meanwhile(Shown(visit, term, work, whose)?.AllTyped(visit, Now(term, work, whose, form)).ToList())];

    private static Task KeepTyped(Visit visit, ClassEntry known, TermEntry term, PlannedWork work) =>
        AfterKeeping(
            visit,
            known,
            term,
            work,
            IsOld(visit, term, work, null)
                ? Meanwhile(visit, term, work, Sitting.First, null)
                : new TypedWork(term, work).Keep(visit.Typed("stamp"), (student, sitting) => TypedCellOf(visit, student, sitting))
        );

    private static Task KeepBench(Visit visit, ClassEntry known, BenchFiles files)
    {
        var form = files.Form(known);
        return AfterKeeping(
            visit,
            known,
            files.Term,
            files.Work,
            !form.Succeeded ? form.Problems
                : IsOld(visit, files.Term, files.Work, files) ? Meanwhile(visit, files.Term, files.Work, files.Whose, form.Model)
                : KeepAll(visit, files, form.Model),
            files.Whose
        );
    }

    /// <summary>Words first: levels chosen for many are not meant for whom one stands there.</summary>
    private static IReadOnlyList<Diagnostic> KeepAll(Visit visit, BenchFiles files, BenchForm form)
    {
        var typed = new TypedWork(files.Term, files.Work);
        var bench = new TypedBench(form, visit.Typed, new Dictionary<string, string>());
        string Word(string student) => visit.Typed(TypedWork.WordField(student, files.Whose.Number));
        if (bench.Contradicted(Word) is { Count: > 0 } contradicted)
            return contradicted;
        var both = bench.Excused(Word).Select(student => student.Id).ToHashSet();
        if (Unsettled(visit, files, form) is { Count: > 0 } asked)
            return
            [
                new(
                    "",
                    null,
                    $"{Phrases.List([.. asked.Select(student => student.Shown)])} {Counted.Noun(asked.Count, "has", "have")} levels and {Counted.Noun(asked.Count, "is", "are")} excused as well",
                    "Say which of the two counts, and keep the marks once more."
                ),
            ];
        var wordGoes = visit.Typed(TypedBench.Which) == TypedBench.LevelsCount ? both : [];
        var cells = new[] { typed.Cells(1), typed.Cells(2) };
        var words = visit.Sent("stamp") is { } stamp ? typed.Keep(stamp, (student, sitting) => sitting == files.Whose.Number
                && wordGoes.Contains(student)
                    ? ""
                : visit.Sent(TypedWork.WordField(student, sitting)) is null ? cells[sitting - 1].GetValueOrDefault(student, "")
                : TypedCellOf(visit, student, sitting)) : [];
        return words.Count > 0 ? words : files.Type(form, new TypedBench(form, visit.Typed, typed.InPlace(files.Whose.Number)).Cell);
    }

    /// <summary>
    /// Whose levels and excuse were typed together without a word which of them counts. Whoever had both before was asked then, or the
    /// page says so of them.
    /// </summary>
    private static List<ClassKit.Exercises.Cohorts.Student> Unsettled(Visit visit, BenchFiles files, BenchForm form)
    {
        if (visit.Typed(TypedBench.Which) is TypedBench.LevelsCount or TypedBench.ExcuseCounts || visit.Sent("stamp") is null)
            return [];
        var before = Both(files, form).Select(student => student.Id).ToHashSet();
        return
        [
            .. new TypedBench(form, visit.Typed, new Dictionary<string, string>())
                .Excused(student => visit.Typed(TypedWork.WordField(student, files.Whose.Number)))
                .Where(student => !before.Contains(student.Id)),
        ];
    }

    /// <summary>Who has levels and is excused as the files are now.</summary>
    private static List<ClassKit.Exercises.Cohorts.Student> Both(BenchFiles files, BenchForm form)
    {
        var words = new TypedWork(files.Term, files.Work).InPlace(files.Whose.Number);
        return
        [
            .. form.Students.Where(student =>
                words.GetValueOrDefault(student.Id) == "excused"
                && files.Whose.In(files.Work) is { } seen
                && form.Scale.Criteria.Index().Any(criterion => seen.LevelOf(student.Id, criterion.Index) is not null)
            ),
        ];
    }

    private static string TypedCellOf(Visit visit, string student, int sitting) =>
        new TypedCell(visit.Typed(TypedWork.Field(student, sitting)), visit.Typed(TypedWork.WordField(student, sitting))).Text;

    private static async Task Bring(Visit visit, ClassEntry known, BenchFiles files, SentFiles sent)
    {
        var form = files.Form(known);
        IReadOnlyList<Diagnostic> problems = form.Succeeded
            ? [new("file", null, "No file was chosen", "Choose the one that the page saved, or the workbook.")]
            : form.Problems;
        if (form.Succeeded && await sent.OnlyAsync(MostBytes, visit.Context.RequestAborted) is { } file)
        {
            if (file.Content is not { } content)
                problems =
                [
                    new(file.Name, null, "It is too large to hold marks", "Bring back the file that the page saved, or the workbook."),
                ];
            else if (files.Bring(form.Model, file.Name, content) is var brought && !brought.Succeeded)
                problems = brought.Problems;
            else if (
                brought.Model.Stands is { } stands
                && BenchMerge.Of(form.Model, stands, brought.Model.Sheet, AwayOf(files), replaces: true) is var merge
                && merge.Differing.Count + merge.Away.Count > 0
            )
            {
                visit.Desk.Kept.Begin(NameOf(files), StampOf(files), brought.Model);
                await visit.Show<BroughtPage>(
                    (nameof(BroughtPage.Class), known),
                    (nameof(BroughtPage.Term), files.Term),
                    (nameof(BroughtPage.Work), files.Work),
                    (nameof(BroughtPage.Whose), files.Whose),
                    (nameof(BroughtPage.Form), form.Model),
                    (nameof(BroughtPage.Merge), merge),
                    (nameof(BroughtPage.Draft), visit.Desk.Kept.KeyOf(NameOf(files))),
                    (nameof(BroughtPage.Page), $"marks/{known.Key}/{files.Term.Key}/work/{visit.Step("place")}")
                );
                return;
            }
            else
                problems = files.TakeIn(form.Model, brought.Model, AwayOf(files), replaces: false);
        }
        await AfterKeeping(visit, known, files.Term, files.Work, problems, files.Whose);
    }

    private static Task TakeIn(Visit visit, ClassEntry known, BenchFiles files)
    {
        var form = files.Form(known);
        var problems =
            !form.Succeeded ? form.Problems
            : visit.IsOfOther(NameOf(files))
                ?
                [
                    new(
                        "",
                        null,
                        "Another file was brought back meanwhile, in another window",
                        "Nothing was written. Bring back the one that is to count."
                    ),
                ]
            : visit.Desk.Kept.Begun<BroughtBack>(NameOf(files), StampOf(files)) is not { } brought
                ? [new("", null, "The marks were changed meanwhile", "Nothing was written over them. Bring the file back again.")]
            : files.TakeIn(form.Model, brought, AwayOf(files), visit.Typed(BroughtPage.Which) == "brought");
        return AfterKeeping(visit, known, files.Term, files.Work, problems, files.Whose);
    }

    private static Task GoBack(Visit visit, ClassEntry known, BenchFiles files)
    {
        var form = files.Form(known);
        return AfterKeeping(
            visit,
            known,
            files.Term,
            files.Work,
            form.Succeeded ? files.GoBack(form.Model, visit.Typed("earlier")) : form.Problems,
            files.Whose
        );
    }

    /// <summary>Who is said to have no mark: what was chosen for a team at the bench is not meant for them.</summary>
    private static HashSet<string> AwayOf(BenchFiles files) => [.. new TypedWork(files.Term, files.Work).InPlace(files.Whose.Number).Keys];

    private static string NameOf(BenchFiles files) => $"bench {files.Term.File} {files.Work.Title} {files.Whose.Key}";

    private static string StampOf(BenchFiles files) =>
        Kept.StampOf([files.Term.File, .. files.Named is { } named ? [named] : (string[])[]]) + new TypedWork(files.Term, files.Work).Stamp;

    private static Task AfterKeeping(
        Visit visit,
        ClassEntry known,
        TermEntry term,
        PlannedWork work,
        IReadOnlyList<Diagnostic> problems,
        Sitting? whose = null
    ) =>
        problems.Count > 0
            ? Show(visit, known, term, work, problems, whose)
            : visit.GoTo($"marks/{known.Key}/{term.Key}/work/{visit.Step("place")}?kept=yes{(whose is null ? "" : "&as=" + whose.Key)}");

    private static Task Agreement(Visit visit, ClassEntry known, TermEntry term, PlannedWork work)
    {
        var (first, second) = (new BenchFiles(term, work, Sitting.First), new BenchFiles(term, work, Sitting.All[1]));
        if (work.Kind != WorkKind.BenchWork || first.Named is not { } one || second.Named is not { } other)
            return visit.Nothing();
        var request = CompareMarkers.Read(first.Rubric, known.File, known.Roster ?? "", one, other);
        return request.Succeeded
            ? MadeFiles.Answer(
                visit,
                CompareMarkers.Write(CompareMarkers.Run(request.Model, Run.Unwatched)).Files,
                "marking-agreement.html"
            )
            : Show(visit, known, term, work, request.Problems);
    }
}
