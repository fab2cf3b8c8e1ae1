using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Marks;
using ClassKit.Desk.Returns;
using ClassKit.Desk.Rounds;
using ClassKit.Desk.Serving;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Results;

namespace ClassKit.Desk.Decisions;

/// <summary>
/// Only what needs the instructor: answers that nothing could judge, points typed into the gradebook, files that are nobody's; and
/// corrections, which can be taken back.
/// </summary>
internal static class DecisionsScreen
{
    private const string Page = "rounds/{class}/{round}/decisions";

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside(Page, visit => visit.InRound((known, state) => Show(visit, known, state, [])));
        routes.TakeInside(Page + "/decide", visit => visit.InRound((known, state) => Decide(visit, known, state)));
        routes.TakeInside(Page + "/undo", visit => visit.InRound((known, state) => Undo(visit, known, state)));
        routes.TakeInside(Page + "/empty", visit => visit.InRound((known, state) => HandedInEmpty(visit, known, state)));
        routes.TakeInside(Page + "/whose", visit => visit.InRound((known, state) => Whose(visit, known, state)));
        routes.TakeInside(Page + "/aside", visit =>
            visit.InRound(
                (known, state) =>
                    UnclearFiles.SetAside(visit, state) is { } refused
                        ? Show(visit, known, state, [refused])
                        : visit.Begin(RoundGrading.Judge(state, "decisions"))
            )
        );
        routes.TakeInside(Page + "/elsewhere", visit => visit.InRound((known, state) => Elsewhere(visit, known, state)));
        routes.TakeInside(Page + "/again", visit => visit.InRound((_, state) => visit.Begin(RoundGrading.Again(state, takesOver: false))));
        routes.TakeInside(Page + "/take-over", visit =>
            visit.InRound((_, state) => visit.Begin(RoundGrading.Again(state, takesOver: true)))
        );
    }

    /// <summary>A workbook of another round of the class goes there, or all that are, and each round is judged anew.</summary>
    private static Task Elsewhere(Visit visit, ClassEntry known, RoundState state)
    {
        var homes = Homes(visit, known, state)
            .Where(pair => visit.Typed("file") is var named && (named.Length == 0 || pair.Key == named))
            .ToDictionary();
        return homes.Count == 0 ? visit.Nothing() : visit.Begin(SentHome.Send(state, homes));
    }

    /// <summary>The rounds that files belong to which lie here, by the files' names.</summary>
    private static Dictionary<string, RoundState> Homes(Visit visit, ClassEntry known, RoundState state) =>
        state
            .Unclear.Select(file => (file.File, Home: UnclearFiles.HomeOf(visit, known, state, file)))
            .Where(pair => pair.Home is not null)
            .ToDictionary(pair => pair.File, pair => pair.Home!);

    private static Task Show(Visit visit, ClassEntry known, RoundState asFound, IReadOnlyList<Diagnostic> problems)
    {
        var state = RoundAway.In(visit, known, asFound);
        return visit.Show<DecisionsPage>(
            (nameof(DecisionsPage.Homes), Homes(visit, known, state)),
            (nameof(DecisionsPage.Class), known),
            (nameof(DecisionsPage.Round), state),
            (nameof(DecisionsPage.Problems), problems),
            (nameof(DecisionsPage.Student), visit.Typed("student")),
            (nameof(DecisionsPage.Part), visit.Typed("part")),
            (nameof(DecisionsPage.Again), (Func<string, string?>)visit.Sent)
        );
    }

    /// <summary>Every answer to the part that got points, under its own reason or that of all.</summary>
    private static Task Decide(Visit visit, ClassEntry known, RoundState state)
    {
        var asked = visit.Typed("part").Split('.');
        List<(Student Who, AnswerGrade Answer)> answers =
        [
            .. (state.Grades?.Students ?? [])
                .Where(student => visit.Typed("points." + student.Who.Id).Length > 0)
                .SelectMany(student =>
                    student
                        .Answers.Where(one => asked is [var exercise, var part] && one.Exercise.Id == exercise && one.Part.Id == part)
                        .Select(answer => (student.Who, answer))
                ),
        ];
        if (answers.Count == 0)
            return Show(visit, known, state, [new("points", null, "No points were typed", "Type the points of at least one answer.")]);
        List<Diagnostic> problems = [];
        List<Correction> corrections = [.. answers.Select(one => Read(visit, one.Who, one.Answer, problems)).OfType<Correction>()];
        if (problems.Count > 0)
            return Show(visit, known, state, problems);
        var failure = CorrectionsFile.Put(state.Round, state.Dealt, [.. corrections, .. Following(visit, state, answers, corrections)]);
        return failure is null ? visit.Begin(RoundGrading.Again(state, takesOver: false)) : Show(visit, known, state, [failure]);
    }

    /// <summary>Full points for what waits for an answer and is right whatever that comes to, where it was ticked, with the same reason.</summary>
    private static IEnumerable<Correction> Following(
        Visit visit,
        RoundState state,
        List<(Student Who, AnswerGrade Answer)> answers,
        List<Correction> corrections
    ) =>
        from one in answers.Zip(corrections)
        where visit.Ticked("with." + one.First.Who.Id)
        from behind in state.HeldUpBy(one.First.Who, one.First.Answer)?.Behind ?? []
        where behind.IsKey
        let answer = behind.Answer
        select new Correction(one.First.Who.Id, answer.Exercise.Id, answer.Part.Id, answer.Part.Points, one.Second.Reason);

    private static Correction? Read(Visit visit, Student who, AnswerGrade answer, List<Diagnostic> problems)
    {
        var (typed, reason) = (
            visit.Typed("points." + who.Id),
            visit.Typed("reason." + who.Id) is { Length: > 0 } own ? own : visit.Typed("reason")
        );
        if (
            !decimal.TryParse(typed.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var points)
            || points > answer.Part.Points
        )
            problems.Add(
                new(
                    "points",
                    null,
                    $"The points of {who.Shown} are `{typed}`",
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"Type the points that the answer is to have, from 0 to {answer.Part.Points:0.##}."
                    )
                )
            );
        else if (reason.Length == 0)
            problems.Add(
                new(
                    "reason",
                    null,
                    $"There is no reason for {who.Shown}",
                    "Write one for all of them or for this student: it is read in the feedback."
                )
            );
        else
            return new(who.Id, answer.Exercise.Id, answer.Part.Id, points, reason);
        return null;
    }

    /// <summary>A word on the first answer stands for the workbook: from then on nothing of it is open.</summary>
    private static Task HandedInEmpty(Visit visit, ClassEntry known, RoundState state)
    {
        if (state.Empty.FirstOrDefault(student => student.Who.Id == visit.Typed("student")) is not { } empty)
            return visit.Nothing();
        var first = empty.Answers[0];
        var failure = CorrectionsFile.Put(
            state.Round,
            state.Dealt,
            [new(empty.Who.Id, first.Exercise.Id, first.Part.Id, 0, "The workbook was handed in with nothing in it")]
        );
        return failure is null ? visit.Begin(RoundGrading.Again(state, takesOver: false)) : Show(visit, known, state, [failure]);
    }

    private static Task Undo(Visit visit, ClassEntry known, RoundState state)
    {
        List<(string, string, string)> back =
        [
            .. visit.All("back").Select(one => one.Split('.', 3)).Where(one => one.Length == 3).Select(one => (one[2], one[0], one[1])),
        ];
        if (back.Count == 0)
            return Show(visit, known, state, [new("back", null, "Nothing was ticked", "Tick what is to be taken back.")]);
        var failure = CorrectionsFile.Remove(state.Round, state.Dealt, back);
        return failure is null ? visit.Begin(RoundGrading.Again(state, takesOver: false)) : Show(visit, known, state, [failure]);
    }

    /// <summary>From whom a file is that says so nowhere: its name says it from now on, and nothing else of it changes.</summary>
    private static Task Whose(Visit visit, ClassEntry known, RoundState state)
    {
        var file = state.Unclear.FirstOrDefault(one => one.File == visit.Typed("file"));
        var who = state.Dealt.Students.FirstOrDefault(seat => seat.Who.Id == visit.Typed("student"));
        if (file is null)
            return visit.Nothing();
        if (who is null)
            return Show(
                visit,
                known,
                state,
                [new("student", null, "Nobody was chosen", "Choose the student whose file it is, or set the file aside.")]
            );
        return UnclearFiles.Name(state, file, who.Who.Id) is { } refused
            ? Show(visit, known, state, [refused])
            : visit.Begin(RoundGrading.Judge(state, "decisions"));
    }
}
