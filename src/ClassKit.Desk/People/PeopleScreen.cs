using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;

namespace ClassKit.Desk.People;

/// <summary>One student: what they were dealt, how it went, feedback, and every answer to correct.</summary>
internal static class PeopleScreen
{
    public static void AddTo(DeskRoutes routes) => routes.LookInside("people/{class}/{student}", visit => visit.InClass(known =>
    {
        IReadOnlyList<RoundState> rounds = [.. visit.Folder.Rounds(known).Select(visit.Look).OfType<RoundState>().Where(state => state.Dealt.Students.Any(seat => seat.Who.Id == visit.Step("student")))];
        return rounds.Count == 0 ? visit.Nothing() : visit.Show<StudentPage>((nameof(StudentPage.Class), known), (nameof(StudentPage.Rounds), rounds), (nameof(StudentPage.Id), visit.Step("student")));
    }));
}
