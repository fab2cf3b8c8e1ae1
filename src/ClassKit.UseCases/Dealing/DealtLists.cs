using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Exercises.Variants;

namespace ClassKit.UseCases.Dealing;

/// <summary>
/// The flat lists of dealt.json, of which anyone can read what stands in which cell, to and from variants in the places of a layout.
/// </summary>
internal static class DealtLists
{
    /// <summary>A student's lists as they stand in the file.</summary>
    public static DealtDocument.StudentEntry Entry(PracticeLayout layout, DealtStudent student) =>
        new(
            student.Who.Id,
            student.Who.Name,
            student.Workbook,
            [
                .. layout
                    .GivensOf(student)
                    .Select(given => new DealtDocument.GivenPlaceEntry(
                        given.Exercise,
                        given.Name,
                        given.DefinedName,
                        given.Address.Sheet,
                        given.Address.Cell,
                        given.Tag,
                        given.Value
                    )),
            ],
            [
                .. layout
                    .AnswersOf(student)
                    .Select(answer => new DealtDocument.AnswerPlaceEntry(
                        answer.Exercise,
                        answer.Part,
                        answer.DefinedName,
                        answer.Address.Sheet,
                        answer.Address.Cell,
                        answer.Tag,
                        answer.Expected
                    )),
            ]
        )
        {
            SharesName = student.Who.Shown != student.Who.Name,
            Arrangement = student.HasArrangement
                ? new(student.LargePrint, student.ExtraTime)
                {
                    Due = DueEntry.Of(student.Due),
                    LeavesOut = student.LeavesOut.Count > 0 ? student.LeavesOut : null,
                }
                : null,
        };

    /// <summary>The variants that stand in the file, before the lists are held against any rule.</summary>
    /// <param name="who">The student.</param>
    /// <param name="entry">The student's lists.</param>
    /// <param name="exercises">Those of the deal.</param>
    /// <exception cref="FormatException">A cell is none.</exception>
    public static DealtStudent Model(Student who, DealtDocument.StudentEntry entry, IReadOnlyList<Exercise> exercises)
    {
        var givens = entry.Givens.ToLookup(given => given.Exercise);
        var answers = entry.Answers.ToLookup(answer => answer.Exercise);
        return new(
            who,
            entry.Workbook,
            [
                .. exercises
                    .Where(exercise => answers.Contains(exercise.Id))
                    .Select(exercise => new Variant(
                        exercise,
                        ById(givens[exercise.Id], given => given.Name, given => given.Value),
                        ById(answers[exercise.Id], answer => answer.Part, answer => answer.Expected)
                    )),
            ]
        )
        {
            LargePrint = entry.Arrangement?.LargePrint ?? false,
            ExtraTime = entry.Arrangement?.ExtraTime ?? 0,
            Due = DueEntry.Model(entry.Arrangement?.Due),
            LeavesOut = entry.Arrangement?.LeavesOut ?? [],
        };
    }

    /// <summary>The plan with the names that the sheets have in the lists: ClassKit has not always named them as it does now.</summary>
    public static PracticePlan Named(PracticePlan plan, IReadOnlyList<Exercise> exercises, StudentEntries students)
    {
        var dealt = students
            .Places.SelectMany(student => student.Answers)
            .DistinctBy(answer => answer.Exercise)
            .ToDictionary(answer => answer.Exercise, answer => answer.Sheet);
        if (plan.OneSheet || PracticeLayout.FirstNameClash(exercises) is not null)
            return plan;
        var isAsNow = PracticeLayout
            .For(exercises, plan)
            .Exercises.All(exercise => dealt.GetValueOrDefault(exercise.Exercise.Id, exercise.Sheet) == exercise.Sheet);
        return isAsNow ? plan : plan with { SheetsAsDealt = dealt };
    }

    /// <summary>What does not hold of a student's lists: grading looks everything up in the layout.</summary>
    /// <param name="layout">The class's.</param>
    /// <param name="student">What was read from the lists.</param>
    /// <param name="entry">The lists.</param>
    public static IEnumerable<string> Broken(PracticeLayout layout, DealtStudent student, DealtDocument.StudentEntry entry)
    {
        var own = layout.Of(student).Exercises;
        var givens = own.SelectMany(exercise =>
                exercise.Givens.Select(place =>
                    (exercise.Exercise.Id, Place: (place.Given.Id, place.DefinedName, place.Tag, place.Address))
                )
            )
            .ToList();
        var answers = own.SelectMany(exercise =>
                exercise.Answers.Select(place =>
                    (exercise.Exercise.Id, Place: (place.Part.Id, place.DefinedName, place.Tag, place.Address))
                )
            )
            .ToList();
        var givensRead = entry
            .Givens.Select(given => (given.Exercise, Place: (given.Name, given.DefinedName, given.Tag, Address(given.Sheet, given.Cell))))
            .ToList();
        var answersRead = entry
            .Answers.Select(answer =>
                (answer.Exercise, Place: (answer.Part, answer.DefinedName, answer.Tag, Address(answer.Sheet, answer.Cell)))
            )
            .ToList();
        if (!SameIds(givensRead, givens))
            yield return "the givens are not those of the exercises";
        if (!SameIds(answersRead, answers))
            yield return "the answers are not those of the exercises";
        foreach (var (exercise, place) in givensRead.Except(givens).Concat(answersRead.Except(answers)))
            yield return $"{exercise}.{place.Item1} is written down as {place.Item2} in {place.Item4}, tag “{place.Item3}”, and the layout has it elsewhere";
    }

    private static bool SameIds<T>(
        IEnumerable<(string Exercise, (string Id, string, string, T) Place)> read,
        IEnumerable<(string Exercise, (string Id, string, string, T) Place)> due
    ) => read.Select(one => (one.Exercise, one.Place.Id)).Order().SequenceEqual(due.Select(one => (one.Exercise, one.Place.Id)).Order());

    private static Dictionary<string, TValue> ById<TEntry, TValue>(
        IEnumerable<TEntry> entries,
        Func<TEntry, string> id,
        Func<TEntry, TValue> value
    ) => entries.DistinctBy(id).ToDictionary(id, value);

    private static CellAddress Address(string sheet, string cell) =>
        CellAddress.TryParse(sheet, cell, out var address) ? address : throw new FormatException($"“{cell}” is no cell such as C9");
}
