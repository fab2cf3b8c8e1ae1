using ClassKit.Exercises.Choosing;
using ClassKit.Grading.OnPaper;
using ClassKit.Notes;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Notes;
using ClassKit.Wording.Numbers;
using ClassKit.Wording.Papers;
using ClassKit.Wording.Regrading;

namespace ClassKit.Desk.Jobs;

/// <summary>
/// A note as the desk says it: where the words for every front name files and numbers that nobody at the desk has to know, the page is
/// named where the same is found.
/// </summary>
internal static class NoteLineWords
{
    /// <summary>The lines of several; what many cells have in common is said once.</summary>
    public static IEnumerable<string> OfAll(IReadOnlyList<Note> notes)
    {
        List<PaperFault.NoTick> ticks = [.. notes.OfType<Note.PaperFault>().Select(note => note.What).OfType<PaperFault.NoTick>()];
        return ticks.Count < 2
            ? notes.SelectMany(Of)
            :
            [
                .. notes.Where(note => note is not Note.PaperFault { What: PaperFault.NoTick }).SelectMany(Of),
                .. PaperFaultWords.Of(ticks),
            ];
    }

    /// <summary>Its lines.</summary>
    public static IEnumerable<string> Of(Note note) =>
        note switch
        {
            Note.Dealt(var workbooks, var exercises, _, _) =>
            [
                $"{Counted.Of(workbooks, "workbook")} of {Counted.Of(exercises, "exercise")}. What students get and what is for you alone stand apart on the round’s page.",
            ],
            Note.SetChosen(var exercises) =>
            [
                $"{string.Join(", ", exercises.Select(exercise => $"“{exercise.Title}”"))}: about {Counted.Of(exercises.Sum(exercise => exercise.Minutes), "minute")}, {NumberText.Points(exercises.Sum(SetChooser.PointsOf))} {Counted.Noun(exercises.Sum(SetChooser.PointsOf), "point")}.",
            ],
            Note.VariantsShared(var variants) =>
            [
                $"“{variants.Exercise.Title}”: {Counted.Of(variants.Students, "student")} share their numbers with somebody else, because the exercise allows only {variants.Variants} different ones.",
            ],
            Note.FollowingUp(var students, var minutes, _) =>
            [
                $"{Counted.Of(students, "student practises", "students practise")} what they missed, up to {Counted.Of(minutes, "minute")} each. Every page has a workbook with the same numbers, which can be marked like any other.",
            ],
            Note.WrittenAnswers(var answers, _) =>
            [
                $"{Counted.Of(answers, "answer")} in own words {Counted.Noun(answers, "waits", "wait")} for your points, and {Counted.Noun(answers, "counts", "count")} neither for nor against until then: see “Needs your word”.",
            ],
            Note.Graded graded =>
            [
                $"The work of {graded.WithGrade} of {Counted.Of(graded.Students, "student")} is marked{(graded.Missing > 0 ? $"; nothing has come from {graded.Missing}" : "")}{(graded.Unreadable > 0 ? $"; what came from {graded.Unreadable} cannot be read" : "")}.",
                .. graded.OtherFiles > 0
                    ?
                    [
                        $"{Counted.Of(graded.OtherFiles, "file counts", "files count")} beside that for nobody, or as an earlier version of somebody’s.",
                    ]
                    : (IEnumerable<string>)[],
            ],
            Note.CameBackEmpty(var students, _) =>
            [
                $"{Counted.Noun(students.Count, "A workbook", "Workbooks")} came back empty, from {Phrases.List([.. students.Select(student => student.Shown)])}: say under “Needs your word” whether {Counted.Noun(students.Count, "it is", "they are")} handed in like that.",
            ],
            Note.Undecided(var work, var answers, _) =>
            [
                $"{work}: {Counted.Of(answers, "answer")} {Counted.Noun(answers, "is", "are")} left to you and {Counted.Noun(answers, "counts", "count")} neither for nor against. Decide on {Counted.Noun(answers, "it", "them")} in the round, under “Needs your word”.",
            ],
            Note.OtherDeals others =>
            [
                $"{others.Others} of {Counted.Of(others.Workbooks, "workbook")} that came back {Counted.Noun(others.Others, "is", "are")} of another round and {Counted.Noun(others.Others, "was", "were")} not marked here: “Needs your word” says of each where it belongs.",
            ],
            Note.MarkedTwice(var work, _) => [$"{work} was marked by two: the term’s page shows whether they agree."],
            Note.Packed packed => [$"{packed.Lesson} for {packed.Class} is kept in your folder, to be opened without the desk, too."],
            Note.Changed(var change) =>
            [
                .. ChangeWords.Of(change, answer =>
                    $"“{answer.Exercise.Title}” {Phrases.Letter(answer.Exercise.Parts.ToList().IndexOf(answer.Part))}"
                ),
                .. change.Now.OutOf != change.Before.OutOf
                    ? ["  Points that did not count before count now, on both sides of “of”."]
                    : (IEnumerable<string>)[],
            ],
            _ => NoteWords.Of(note),
        };
}
