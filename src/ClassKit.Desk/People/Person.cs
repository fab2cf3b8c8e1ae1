using ClassKit.Content.Rosters;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Desk.People;

/// <summary>Somebody of a class, by its list as it is now or by what was handed out to them.</summary>
/// <param name="Class">The class.</param>
/// <param name="Who">The student.</param>
/// <param name="Rounds">What was handed out to them, the latest first.</param>
/// <param name="Arranged">What they were promised; null for what everybody has.</param>
internal sealed record Person(ClassEntry Class, Student Who, IReadOnlyList<RoundState> Rounds, Arrangement? Arranged)
{
    /// <summary>Others of the list with the same name.</summary>
    public IReadOnlyList<Student> Namesakes { get; private init; } = [];

    /// <summary>The student whom the address names; null if the class has none of that id.</summary>
    public static Person? Of(Visit visit, ClassEntry known)
    {
        var id = visit.Step("student");
        var roster = known.Roster is { } list ? RosterReader.Read(list).Model : null;
        IReadOnlyList<RoundState> rounds =
        [
            .. visit
                .Folder.Rounds(known)
                .Select(visit.Look)
                .OfType<RoundState>()
                .Where(state => state.Dealt.Students.Any(seat => seat.Who.Id == id)),
        ];
        var who = roster?.Students.FirstOrDefault(student => student.Id == id)
            ?? (rounds is [var last, ..] ? last.Dealt.Students.First(seat => seat.Who.Id == id).Who : null);
        return who is null
            ? null
            : new(known, who, rounds, roster?.Arrangements.GetValueOrDefault(who.Id))
            {
                Namesakes = [.. (roster?.Students ?? []).Where(other => other.Id != who.Id && SamePerson.HasSameName(other, who))],
            };
    }
}
