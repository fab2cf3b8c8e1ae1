using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Frame;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Kitchen;
using ClassKit.Desk.Serving;
using ClassKit.Desk.Texts;
using ClassKit.Exercises.Choosing;
using ClassKit.Notes;
using ClassKit.Pages;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.HandOut;

/// <summary>A set of practice: chosen, looked at as a student will see it, handed out.</summary>
internal static class HandOutScreen
{
    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside("rounds/{class}/new", visit => visit.InClass(known => Choose(visit, known)));
        routes.TakeInside("rounds/{class}/pick", visit => visit.InClass(known => visit.GoTo(PageOf(visit, known, visit.Typed("lesson")))));
        routes.TakeInside("rounds/{class}/try", visit => visit.InClass(known => Try(visit, known)));
        routes.LookInside("rounds/{class}/tried", visit => visit.InClass(known =>
                TriedOf(visit, known) is not { } tried ? visit.GoTo($"rounds/{known.Key}/new")
                : HandedOut(visit, known, tried) is { } round ? visit.GoTo($"rounds/{known.Key}/{round.Name}")
                : visit.Show<TriedPage>(
                    (nameof(TriedPage.Class), known),
                    (nameof(TriedPage.Tried), tried),
                    (nameof(TriedPage.Draft), visit.Desk.Kept.KeyOf(NameOf(known))),
                    (nameof(TriedPage.Student), visit.Typed("student")),
                    (nameof(TriedPage.IsRehearsed), RehearsalScreen.RehearsalOf(visit, known) is not null)
                )
            ));
        routes.LookInside("rounds/{class}/tried/sheet/{student}", visit =>
            visit.InClass(known =>
                TriedOf(visit, known) is { } tried
                && tried.Made.Dealt.Students.FirstOrDefault(seat => seat.Who.Id == visit.Step("student")) is { } seat
                    ? visit.ShowSheet(HtmlPages.Sheet(tried.Made.Dealt, seat))
                    : visit.Nothing()
            )
        );
        routes.LookInside("rounds/{class}/tried/key", visit =>
            visit.InClass(known =>
                TriedOf(visit, known) is { } tried ? visit.ShowSheet(string.Concat(HtmlPages.AnswerKey(tried.Made.Dealt))) : visit.Nothing()
            )
        );
        routes.TakeInside("rounds/{class}/deal", visit =>
            visit.InClass(known => TriedOf(visit, known) is { } tried ? Deal(visit, known, tried) : visit.GoTo($"rounds/{known.Key}/new"))
        );
    }

    private static Task Choose(Visit visit, ClassEntry known)
    {
        IReadOnlyList<LessonEntry> lessons = [.. visit.Folder.Lessons(), LessonEntry.Bank];
        var lesson = lessons.FirstOrDefault(one => one.Key == visit.Typed("lesson")) ?? Prepared(visit, known, lessons) ?? lessons[0];
        return Choose(
            visit,
            known,
            lesson,
            visit.Ticked("again") && TriedOf(visit, known) is { } tried && tried.Lesson.Key == lesson.Key
                ? tried.Asked
                : new Dictionary<string, IReadOnlyList<string>>(),
            []
        );
    }

    /// <param name="visit">The request.</param>
    /// <param name="known">The class.</param>
    /// <param name="lesson">Whose exercises are shown.</param>
    /// <param name="before">What was ticked and typed, by the names of fields.</param>
    /// <param name="problems">What is wrong with that.</param>
    private static Task Choose(
        Visit visit,
        ClassEntry known,
        LessonEntry lesson,
        IReadOnlyDictionary<string, IReadOnlyList<string>> before,
        IReadOnlyList<Diagnostic> problems
    ) =>
        visit.Show<ChoosePage>(
            (nameof(ChoosePage.Class), known),
            (nameof(ChoosePage.Lessons), (IReadOnlyList<LessonEntry>)[.. visit.Folder.Lessons(), LessonEntry.Bank]),
            (nameof(ChoosePage.Lesson), lesson),
            (nameof(ChoosePage.Set), PracticeSet.Read(lesson.Path, SetWish.None, DealPractice.DefaultSeed)),
            (nameof(ChoosePage.Seed), SetForm.UsualSeed(visit.Folder, known)),
            (nameof(ChoosePage.Number), visit.Folder.NextNumber(known)),
            (nameof(ChoosePage.Proved), PastOfFolder.Of(visit, known, lesson)),
            (nameof(ChoosePage.Before), before),
            (nameof(ChoosePage.Problems), problems),
            (nameof(ChoosePage.Left), visit.Folder.Lessons().Append(LessonEntry.Bank).FirstOrDefault(one => one.Key == visit.Typed("left")))
        );

    /// <summary>Where another lesson's exercises are shown: what was ticked of the one before stays with that one, and it is said.</summary>
    private static string PageOf(Visit visit, ClassEntry known, string lesson) =>
        $"rounds/{known.Key}/new?lesson={Uri.EscapeDataString(lesson)}"
        + (
            visit.All("exercise").Count > 0 && visit.Sent("shown") is { } shown && shown != lesson
                ? $"&left={Uri.EscapeDataString(shown)}"
                : ""
        );

    /// <summary>The lesson that was prepared for the class last, whose practice is the likeliest; null if none was since the desk was opened.</summary>
    private static LessonEntry? Prepared(Visit visit, ClassEntry known, IReadOnlyList<LessonEntry> lessons) =>
        visit.Desk.Kept.Begun<LessonEntry>(PreparedName(known), "") is { } last ? lessons.FirstOrDefault(one => one.Key == last.Key) : null;

    /// <summary>Under this name it is kept which lesson was prepared for a class.</summary>
    public static string PreparedName(ClassEntry known) => $"prepared for {known.File}";

    private static Task Try(Visit visit, ClassEntry known)
    {
        var lesson = visit.Folder.Lessons().Append(LessonEntry.Bank).FirstOrDefault(one => one.Key == visit.Typed("lesson"));
        if (lesson is null || known.Roster is null)
            return visit.GoTo($"rounds/{known.Key}/new");

        // Another lesson was chosen than the one whose exercises stand there: what is ticked is of that one.
        if (visit.Sent("shown") is { } shown && shown != lesson.Key)
            return visit.GoTo(PageOf(visit, known, lesson.Key));
        var asked = SetForm.Fields.ToDictionary(field => field, visit.All);
        var wish = SetForm.Read(visit, known, lesson == LessonEntry.Bank, out var problems);
        if (problems.Count > 0)
            return Choose(visit, known, lesson, asked, problems);
        if (WithClocks(visit, known) is { } refused)
            return visit.Show<WordPage>(
                (nameof(WordPage.Title), "The class’s clocks were not written down"),
                (nameof(WordPage.Words), $"{refused.Found}. {refused.Expected}")
            );
        var paths = new DealPaths(lesson.Path, known.Roster, wish) { ClassFile = known.File };
        var kept = visit.Desk.Kept;
        return visit.Begin(
            new($"Draw practice from {lesson.Title} for {known.Name}", $"rounds/{known.Key}/tried", "See what a student gets", run =>
            {
                var request = paths.Read();
                if (!request.Succeeded)
                    return JobEnd.Nothing(request.Problems);
                var made = DealPractice.Run(request.Model, run);
                if (!made.Succeeded)
                    return JobEnd.Nothing(made.Problems);
                kept.Begin(NameOf(known), "", new TriedSet(lesson, paths, made.Model, Notes(made.Model), asked));
                return JobEnd.Well;
            }) { GoesOn = true }
        );
    }

    /// <summary>
    /// A day and time is by somebody's clocks: where the class's page does not say whose, what was chosen is put there first.
    /// </summary>
    /// <returns>Why it could not be; null if it is there, or nobody asked.</returns>
    private static Diagnostic? WithClocks(Visit visit, ClassEntry known) =>
        visit.Typed("due").Length > 0
        && known.Profile.Model is { TimeZone: null }
        && ClockChoice.Of(visit.Typed("zone")) is { } zone
        && OwnText.Read(known.File) is { } file
            ? file.Write(file.Stamp, file.With(FrontLines.With(file.Text, ProfileField.TimeZone, zone)))
            : null;

    /// <summary>What the instructor should know of a draw; how the list was read is said where it is brought.</summary>
    private static IReadOnlyList<string> Notes(DealMade made) =>
        [.. DealPaths.Write(made).Notes.Where(note => note is not Note.RosterUnderstood).SelectMany(NoteLineWords.Of)];

    /// <summary>Deals what was looked at; the use case is asked anew, so that what changed on disk meanwhile counts.</summary>
    private static Task Deal(Visit visit, ClassEntry known, TriedSet tried)
    {
        if (visit.IsOfOther(NameOf(known)))
            return visit.Show<WordPage>(
                (nameof(WordPage.Title), "Another set was drawn meanwhile"),
                (
                    nameof(WordPage.Words),
                    "It was drawn for this class in another window, so that nothing was handed out. Draw the one that you mean once more under Hand out."
                )
            );
        if (HandedOut(visit, known, tried) is { } already)
            return visit.Show<WordPage>(
                (nameof(WordPage.Title), "This set is in their hands already"),
                (
                    nameof(WordPage.Words),
                    $"It was handed out as round {already.Number}, with these very numbers, so that nothing was handed out again. For more practice choose a set under Hand out and draw it with another number."
                )
            );
        var round = visit.Folder.NewRound(known, tried.Lesson.Key);
        var paths = tried.Paths with { Into = round.Dealt };
        var target = new OutputTarget(
            round.Dealt,
            DealPractice.Kind,
            [.. LessonInputs.Of(tried.Lesson.Path), paths.Roster, paths.ClassFile]
        );
        return visit.Begin(
            new($"Hand out {tried.Made.Dealt.LessonTitle}", $"rounds/{known.Key}/{round.Name}", "Who gets what", run =>
                JobEnd.Of(
                    OutputFolder.Write(
                        target,
                        () => Produced.Of(paths.Read(), request => DealPractice.Run(request, run), DealPaths.Write),
                        run
                    )
                )
            )
        );
    }

    /// <summary>
    /// The round in which the class has the very numbers of a draw; null if it has not. Handed out twice, half of the work would come back to
    /// either round, and each would count in a term.
    /// </summary>
    private static Round? HandedOut(Visit visit, ClassEntry known, TriedSet tried) =>
        tried.Made.Dealt.Identity is { Code: var code }
            ? visit.Folder.Rounds(known).FirstOrDefault(round => visit.Look(round)?.Dealt.Identity?.Code == code)
            : null;

    /// <summary>The set that is drawn now; null if none is.</summary>
    public static TriedSet? TriedOf(Visit visit, ClassEntry known) => visit.Desk.Kept.Begun<TriedSet>(NameOf(known), "");

    private static string NameOf(ClassEntry known) => $"tried {known.File}";
}
