using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Marks;
using ClassKit.Desk.Serving;
using ClassKit.Records.Storage;
using ClassKit.UseCases.Erasing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Skills;

namespace ClassKit.Desk.People;

/// <summary>
/// One student: what they were dealt, how it went, feedback, every answer to change, skills over time, and all that is on record, to be
/// given out or erased.
/// </summary>
internal static class PeopleScreen
{
    private const string Page = "people/{class}/{student}";

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside(Page, visit =>
            WithPerson(visit, person =>
                visit.Show<StudentPage>(
                    (nameof(StudentPage.Class), person.Class),
                    (nameof(StudentPage.Who), person.Who),
                    (nameof(StudentPage.Rounds), person.Rounds),
                    (nameof(StudentPage.Arranged), person.Arranged),
                    (
                        nameof(StudentPage.Terms),
                        TermEntry
                            .Of(visit.Folder, person.Class)
                            .Where(term => term.Plan.Model?.Class.Students.Any(student => student.Id == person.Who.Id) == true)
                            .ToList()
                    ),
                    (nameof(StudentPage.IsOnRecord), File.Exists(RecordPlace.Of(visit.Folder.Root)))
                )
            )
        );
        routes.LookInside(Page + "/skills", visit => WithPerson(visit, person => Skills(visit, person)));
        routes.LookInside(Page + "/record", visit => WithPerson(visit, person => Record(visit, person)));
        routes.LookInside(Page + "/erase", visit =>
            WithPerson(visit, person =>
                visit.Show<ErasePage>(
                    (nameof(ErasePage.Class), person.Class),
                    (nameof(ErasePage.Who), person.Who),
                    (nameof(ErasePage.Others), person.Namesakes),
                    (nameof(ErasePage.Traces), StudentFiles.Look(visit.Folder.Root, RecordPlace.Of(visit.Folder.Root), person.Who).Traces),
                    (nameof(ErasePage.Texts), visit.Folder.Texts().ToDictionary(text => text.Shown))
                )
            )
        );
        routes.TakeInside(Page + "/erase/look", visit => WithPerson(visit, person => visit.Begin(Erasing(visit, person, isMeant: false))));
        routes.TakeInside(Page + "/erase", visit => WithPerson(visit, person => visit.Begin(Erasing(visit, person, isMeant: true))));
    }

    private static Task WithPerson(Visit visit, Func<Person, Task> answer) =>
        visit.InClass(known => Person.Of(visit, known) is { } person ? answer(person) : visit.Nothing());

    /// <summary>A round of which nothing says when it was done says nothing over time; the others do.</summary>
    private static Task Skills(Visit visit, Person person)
    {
        List<SkillsRequest> known = [];
        List<Diagnostic> problems = [];
        foreach (var graded in person.Rounds.Where(round => round.Grades is not null).Select(round => round.Round.Graded))
        {
            var request = FollowSkills.Read([graded], [], null, null);
            problems.AddRange(request.Problems);
            if (request.Succeeded)
                known.Add(request.Model);
        }
        if (known.Count == 0)
            return visit.Show<Frame.WordPage>(
                (nameof(Frame.WordPage.Title), $"{person.Who.Shown}, over time"),
                (
                    nameof(Frame.WordPage.Words),
                    problems.Count == 0
                        ? "Nothing of theirs was marked yet."
                        : string.Join(" ", problems.Select(problem => $"{problem.Found}. {problem.Expected}"))
                )
            );
        var all = new SkillsRequest([.. known.SelectMany(request => request.Works)], known.Max(request => request.On), null);
        return MadeFiles.Answer(visit, FollowSkills.Write(FollowSkills.Run(all, Run.Unwatched)).Files, $"students/{person.Who.Id}.html");
    }

    /// <summary>All that the record holds of them, as tables in a zip.</summary>
    private static Task Record(Visit visit, Person person)
    {
        var shown = OnRecord(visit.Folder.Root, visit.Desk.Now, record =>
            Produced.Of(ShowStudent.Run(new(record, person.Who.Id), Run.Unwatched), ShowStudent.Write)
        );
        return shown.Succeeded
            ? ZipAnswer.Of(visit, $"{person.Who.Id}.zip", shown.Files.Select(file => (file.Path, (Func<byte[]>)(() => file.Content))))
            : visit.Show<Frame.WordPage>(
                (nameof(Frame.WordPage.Title), person.Who.Shown),
                (nameof(Frame.WordPage.Words), string.Join(" ", shown.Problems.Select(problem => $"{problem.Found}. {problem.Expected}")))
            );
    }

    private static JobOrder Erasing(Visit visit, Person person, bool isMeant)
    {
        var (folder, author, page, withFiles) = (
            visit.Folder.Root,
            visit.Author(visit.Typed("why")),
            $"people/{person.Class.Key}/{person.Who.Id}/erase",
            visit.Ticked("files")
        );
        var isGone = isMeant && withFiles;
        return new(
            isMeant
                ? $"Erase {(isGone ? "a student" : person.Who.Shown)} from the record{(isGone ? " and the files" : "")}"
                : $"See what erasing {person.Who.Shown} comes to",
            isGone ? "" : page,
            isGone ? "This week"
                : isMeant ? "What of yours still names them"
                : "Erase, or not",
            run =>
                Produced.Within(EraseRequest.At(folder, author, person.Who.Id, isMeant, withFiles), request =>
                    Produced.Of(EraseStudent.Run(request, run), EraseStudent.Write)
                )
                    is var made
                && isMeant
                    ? JobEnd.Of(made)
                    : JobEnd.Would(made, "Nothing was erased yet. This is what it would come to:")
        );
    }

    private static Produced OnRecord(string folder, DateTimeOffset now, Func<TeachingRecord, Produced> work) =>
        Produced.Within(RecordPlace.Open(folder, now, mayBegin: false), work);
}
