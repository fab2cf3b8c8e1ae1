using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Rounds;
using ClassKit.Desk.Serving;

namespace ClassKit.Desk.Decisions;

/// <summary>Only what needs the instructor: answers that nothing could judge, points typed into the gradebook, files that are nobody's; and corrections, which can be taken back.</summary>
internal static class DecisionsScreen
{
    private const string Page = "rounds/{class}/{round}/decisions";

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside(Page, visit => visit.InRound((known, state) => Show(visit, known, state, [])));
        routes.TakeInside(Page + "/decide", visit => visit.InRound((known, state) => Decide(visit, known, state)));
        routes.TakeInside(Page + "/undo", visit => visit.InRound((known, state) => Undo(visit, known, state)));
        routes.TakeInside(Page + "/take-over", visit => visit.InRound((_, state) => visit.Begin(RoundGrading.Again(state, takesOver: true))));
    }

    private static Task Show(Visit visit, ClassEntry known, RoundState state, IReadOnlyList<Diagnostic> problems) => visit.Show<DecisionsPage>(
        (nameof(DecisionsPage.Class), known), (nameof(DecisionsPage.Round), state), (nameof(DecisionsPage.Problems), problems), (nameof(DecisionsPage.Student), visit.Typed("student")), (nameof(DecisionsPage.Part), visit.Typed("part")));

    private static Task Decide(Visit visit, ClassEntry known, RoundState state)
    {
        var asked = visit.Typed("part").Split('.');
        var answer = state.Grades?.Students.FirstOrDefault(student => student.Who.Id == visit.Typed("student"))?.Answers.FirstOrDefault(one => asked is [var exercise, var part] && one.Exercise.Id == exercise && one.Part.Id == part);
        if (answer is null) return visit.Nothing();
        List<Diagnostic> problems = [];
        if (!decimal.TryParse(visit.Typed("points").Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var points) || points > answer.Part.Points)
            problems.Add(new("points", null, $"The points are `{visit.Typed("points")}`", string.Create(CultureInfo.InvariantCulture, $"Type the points that the answer is to have, from 0 to {answer.Part.Points:0.##}.")));
        if (visit.Typed("reason").Length == 0) problems.Add(new("reason", null, "There is no reason", "Write one: the student reads it in the feedback."));
        if (problems.Count > 0) return Show(visit, known, state, problems);
        var failure = CorrectionsFile.Put(state.Round, state.Dealt, new(visit.Typed("student"), answer.Exercise.Id, answer.Part.Id, points, visit.Typed("reason")));
        return failure is null ? visit.Begin(RoundGrading.Again(state, takesOver: false)) : Show(visit, known, state, [failure]);
    }

    private static Task Undo(Visit visit, ClassEntry known, RoundState state)
    {
        if (visit.Typed("part").Split('.') is not [var exercise, var part]) return visit.Nothing();
        var failure = CorrectionsFile.Remove(state.Round, state.Dealt, visit.Typed("student"), exercise, part);
        return failure is null ? visit.Begin(RoundGrading.Again(state, takesOver: false)) : Show(visit, known, state, [failure]);
    }
}
