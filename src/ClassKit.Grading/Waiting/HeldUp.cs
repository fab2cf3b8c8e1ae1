using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Layout;
using ClassKit.Grading.Judging;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Waiting;

/// <summary>
/// An answer that could not be worked out, with the later ones of the same student that wait for nothing but it: their formulas can be read,
/// and point at its cell. Whoever decides on the first has all but decided on them.
/// </summary>
/// <param name="First">The answer that holds the others up; its outcome is <see cref="Outcome.Unsupported"/>.</param>
/// <param name="Behind">Those held up that are not decided on, in the order of the exercise; at least one.</param>
public sealed record HeldUp(AnswerGrade First, IReadOnlyList<HeldUpAnswer> Behind)
{
    /// <summary>What holds a student up, in the order of the deal.</summary>
    /// <param name="student">The student's grades.</param>
    /// <param name="layout">Where givens and answers stand, as dealt.</param>
    public static IReadOnlyList<HeldUp> Of(StudentGrade student, PracticeLayout layout)
    {
        ArgumentNullException.ThrowIfNull(student);
        ArgumentNullException.ThrowIfNull(layout);
        return
        [
            .. student
                .Answers.Where(answer => answer is { Outcome: Outcome.Unsupported, Formula: not null })
                .GroupBy(answer => answer.Exercise.Id)
                .Where(open => open.Count() > 1)
                .SelectMany(open => In([.. open], layout.Of(open.Key))),
        ];
    }

    private static IEnumerable<HeldUp> In(IReadOnlyList<AnswerGrade> open, ExerciseLayout layout)
    {
        Dictionary<string, AnswerGrade> firsts = new(StringComparer.OrdinalIgnoreCase);
        List<(AnswerGrade First, HeldUpAnswer Behind)> found = [];
        foreach (var answer in open)
        {
            var written = InNames(answer, layout);
            var first = written?.Names.Select(firsts.GetValueOrDefault).FirstOrDefault(one => one is not null);
            firsts[answer.Part.Id] = first ?? answer;
            if (first is not null)
                found.Add((first, new(answer, IsKey(answer.Part, written!))));
        }
        return found
            .Where(one => one.Behind.Answer.IsUndecided)
            .GroupBy(one => one.First)
            .Select(group => new HeldUp(group.Key, [.. group.Select(one => one.Behind)]));
    }

    private static bool IsKey(Part part, CellFormula written) =>
        string.Equals(written.ToString(), CellFormula.OfTree(part.Key.Root).ToString(), StringComparison.OrdinalIgnoreCase);

    /// <summary>The formula over what its cells are called; null where it has something in it that cannot be read like that.</summary>
    private static CellFormula? InNames(AnswerGrade answer, ExerciseLayout layout)
    {
        var cell = layout.Answers.First(place => place.Part.Id == answer.Part.Id).Address;
        var names = layout
            .Givens.Select(place => (place.Address, place.Given.Id))
            .Concat(layout.Answers.Where(place => place.Part.Id != answer.Part.Id).Select(place => (place.Address, place.Part.Id)))
            .ToDictionary(place => place.Address, place => place.Id);
        WorkbookSnapshot alone = new(
            [
                new(
                    cell.Sheet,
                    new Dictionary<(int, int), CellContent> { [(cell.Row, cell.Column)] = new(CellValue.Blank, answer.Formula![1..]) }
                ),
            ],
            []
        );
        return new FormulaInNames(alone, names, new()).Of(cell);
    }
}
