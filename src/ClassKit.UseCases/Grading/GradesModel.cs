using System.Text.Json;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading.Facts;

namespace ClassKit.UseCases.Grading;

/// <summary>The grades of a class from what stands in grades.json, whose rules hold.</summary>
internal static class GradesModel
{
    /// <summary>The model.</summary>
    /// <param name="document">What stands in the file.</param>
    /// <param name="recorded">The deal that stands in it, without students; null in records of earlier versions.</param>
    /// <param name="dealt">The deal with everybody's variants; null where it is not at hand.</param>
    /// <exception cref="FormatException">A fact lacks something, or names what is not on record.</exception>
    public static ClassGrades Of(GradesDocument document, DealtClass? recorded, DealtClass? dealt)
    {
        var known = (dealt?.Students ?? []).ToDictionary(seat => seat.Who.Id, seat => seat.Who);
        var students = Namesakes.ToldApart([.. document.Students.Select(entry => known.GetValueOrDefault(entry.Id) ?? Alone(entry))]);
        var deal = recorded is null ? dealt ?? NotRecorded : recorded with { Students = dealt?.Students ?? [] };
        var due = DueEntry.Model(document.Due);
        var names = new RecordNames(
            students.ToDictionary(student => student.Id),
            deal.Exercises.ToDictionary(exercise => exercise.Id),
            due
        );
        var pool = new AnswerPool();
        var typed = (document.Typed ?? []).ToLookup(entry => entry.TakenOver, entry => Model(entry, names));
        return new(
            deal,
            [.. students.Zip(document.Students, (student, entry) => Model(student, entry, deal.Marking.Total, names, pool))],
            [.. document.Files.Select(file => Model(file, names))]
        )
        {
            Judging = JudgeEntries.Model(document),
            Due = due,
            Waiting = [.. typed[false]],
            TakenOver = [.. typed[true]],
            UnreadGradebooks =
            [
                .. (document.UnreadGradebooks ?? [])
                    .Select(one => GradebookShapes.All.Model(one.Why, names) is { } why ? new UnreadGradebook(one.File, why) : null)
                    .OfType<UnreadGradebook>(),
            ],
        };
    }

    /// <summary>What a record of an earlier version knows of the deal by itself.</summary>
    private static DealtClass NotRecorded { get; } = new("", "", "", 0, new("", "", 0, 0, 0, 0), [], []);

    private static TypedPoints Model(GradesDocument.TypedEntry entry, RecordNames names) =>
        new(entry.Cell, names.Student(entry.Student), entry.Exercise, entry.Part, entry.Before, entry.Entered, entry.Points)
        {
            File = entry.File,
            Fault = entry.Problem is { } problem ? GradebookShapes.Points.Model(problem, names) : null,
        };

    /// <summary>A student of whose deal nothing is at hand; a namesake may be of another deal of the class.</summary>
    private static Student Alone(GradesDocument.GradedEntry entry)
    {
        var student = new Student(entry.Id, entry.Name);
        return entry.SharesName ? Namesakes.WithId(student) : student;
    }

    private static StudentGrade Model(Student student, GradesDocument.GradedEntry entry, TotalRule rule, RecordNames names, AnswerPool pool)
    {
        var own = entry.Due is { } due ? names with { Due = DueEntry.Model(due) } : names;
        var grade = new StudentGrade(
            student,
            OutcomeWords.FindStatus(entry.Status),
            entry.File,
            pool.Pack(entry.Answers.Select(answer => Model(answer, names))),
            [.. entry.Flags.Select(flag => flag.Fact is { } fact ? FlagShapes.All.Model(fact, own) : null).OfType<Flag>()]
        )
        {
            Rule = rule,
            Late = entry.Late is { } late ? new(late.Days, late.Off) { By = late.By ?? TimeSpan.FromMinutes(late.Minutes ?? 0) } : null,
        };
        return (grade.Points, grade.OutOf) == (entry.Points, entry.OutOf) ? grade : grade with { Stated = (entry.Points, entry.OutOf) };
    }

    private static AnswerGrade Model(GradesDocument.AnswerEntry entry, RecordNames names)
    {
        var (exercise, part) = names.Answer(entry.Exercise, entry.Part, entry.OutOf);
        var here = names.Within(exercise, part);
        return new(
            exercise,
            part,
            OutcomeWords.Find(entry.Outcome),
            entry.Points,
            entry.OutOf,
            Value(entry),
            entry.Expected,
            entry.Formula,
            entry.Findings is { } findings
                ? [.. findings.Select(fact => FindingShapes.All.Model(fact, here)).OfType<AnswerFinding>()]
                : Early(entry, here),
            entry.OwnEarlier ?? new Dictionary<string, double>()
        )
        {
            Chosen = entry.Chosen is { } chosen ? Chosen(part, chosen) : null,
            Paper = entry.Paper is { } working ? OutcomeWords.FindWorking(working) : null,
            Correction = entry.Correction is { } correction ? new(correction.AsGraded, correction.Reason) : null,
        };
    }

    private static ChoiceOption Chosen(Part part, string id) =>
        part.Choice?.From.Options.FirstOrDefault(option => option.Id == id)
        ?? throw new FormatException($"“{id}” is no option of {part.Id}");

    /// <summary>All that a record of an earlier version says of what was found.</summary>
    private static IReadOnlyList<AnswerFinding> Early(GradesDocument.AnswerEntry entry, RecordNames names) =>
        entry.Misconception is { } met ? [new AnswerFinding.WrongTurn(names.Misconception(met))] : [];

    private static CellValue Value(GradesDocument.AnswerEntry entry) =>
        entry.Value switch
        {
            JsonElement { ValueKind: JsonValueKind.Number } number => CellValue.FromNumber(number.GetDouble()),
            JsonElement { ValueKind: JsonValueKind.True or JsonValueKind.False } logical => CellValue.FromLogical(logical.GetBoolean()),
            JsonElement { ValueKind: JsonValueKind.String } text when entry.IsError => CellErrorText.TryParse(
                text.GetString(),
                out var error
            )
                ? CellValue.FromError(error)
                : throw new FormatException($"“{text.GetString()}” is no error value such as #DIV/0!"),
            JsonElement { ValueKind: JsonValueKind.String } text => CellValue.FromText(text.GetString()!),
            null => CellValue.Blank,
            _ => throw new FormatException($"The value of {entry.Exercise}.{entry.Part} is none that a cell can have"),
        };

    private static AccountedFile Model(GradesDocument.FileEntry entry, RecordNames names) =>
        new(
            entry.File,
            entry.Sha256,
            entry.Modified,
            OutcomeWords.FindFate(entry.Fate),
            entry.Student is { } student ? names.Student(student) : null,
            entry.Why is { } why ? UncountedShapes.All.Model(why, names) : null
        )
        {
            Other = entry.OtherDeal is { } other ? UncountedShapes.Other(new(other, names)) : null,
            Fault = entry.Fault,
        };
}
