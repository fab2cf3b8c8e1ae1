using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Finding;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Quoting;
using ClassKit.Grading.Intake;
using ClassKit.Grading.NearMisses;
using ClassKit.Grading.OnPaper;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging;

/// <summary>Grades one returned workbook against what its student was dealt.</summary>
internal sealed class WorkbookGrader
{
    /// <summary>
    /// What a whole practice workbook takes on all fresh inputs is some thousand steps; these are less than a second of work.
    /// </summary>
    private static readonly EvaluationLimits Limits = new(Steps: 100_000, ArrayCells: 100_000, LifeSteps: 1_000_000);

    private readonly DealtClass _dealt;
    private readonly PracticeLayout _layout;
    private readonly ClassInputs _fresh;
    private readonly JudgeRules _rules;
    private readonly ClassNeighbours _neighbours;
    private readonly SharedFormulas _formulas = new();

    public WorkbookGrader(DealtClass dealt, PracticeLayout layout, ClassInputs fresh)
    {
        (_dealt, _layout, _fresh) = (dealt, layout, fresh);
        _rules = JudgeRules.Of(fresh.Version);
        _neighbours = new(fresh.ToTellApart, _rules);
    }

    /// <summary>
    /// Judges what was answered on paper as the same numbers typed into the workbook, and with it the working that the instructor saw.
    /// </summary>
    public IReadOnlyList<AnswerGrade> Grade(PaperWork work)
    {
        var filled = PaperSnapshot.Of(work, _layout);
        return Grade(work.Student, filled, new(filled, _dealt.Plan), [], work);
    }

    /// <summary>Judges every answer.</summary>
    /// <param name="student">Whose it is.</param>
    /// <param name="returned">What came back.</param>
    /// <param name="found">Finds cells in it.</param>
    /// <param name="flags">Gathers what the instructor should see.</param>
    /// <param name="paper">What was answered on paper; null for a workbook.</param>
    /// <param name="numbersOf">Whose numbers stand in it in place of the student's, which is told as a whole; null for nobody's.</param>
    public IReadOnlyList<AnswerGrade> Grade(
        DealtStudent student,
        WorkbookSnapshot returned,
        CellFinder found,
        ICollection<Flag> flags,
        PaperWork? paper = null,
        DealtStudent? numbersOf = null
    )
    {
        var texts = new TextFormulas(returned);
        var workbook = texts.Revived();
        var evaluator = new Lazy<WorkbookEvaluator>(() => new(workbook, Limits, _formulas.Parses), isThreadSafe: false);
        var finder = found.In(workbook);
        return
        [
            .. _dealt
                .ExercisesOf(student)
                .SelectMany(exercise => Grade(student, exercise, workbook, evaluator, finder, flags, paper, numbersOf))
                .Select(one =>
                    one.Grade.Part.InWords is null && returned.Find(one.Cell) is { } content && texts.IsOne(content)
                        ? one.Grade with
                        {
                            Findings = [.. one.Grade.Findings, new AnswerFinding.StoodAsText()],
                        }
                        : one.Grade
                ),
        ];
    }

    private IEnumerable<(CellAddress Cell, AnswerGrade Grade)> Grade(
        DealtStudent student,
        Exercise exercise,
        WorkbookSnapshot workbook,
        Lazy<WorkbookEvaluator> evaluator,
        CellFinder finder,
        ICollection<Flag> flags,
        PaperWork? paper,
        DealtStudent? numbersOf
    )
    {
        var found = finder.Find(_layout.Of(exercise.Id));
        var (givens, answers) = (found.Givens, found.Answers);
        if (found.MovedTo is { } sheet)
            flags.Add(new Flag.OtherSheet(exercise.Title, new(sheet)));
        var dealt = student.Of(exercise.Id);
        FlagOverwritten(exercise, student, dealt, numbersOf?.Find(exercise.Id), givens, workbook, flags);

        var tried = new TriedExercise(
            exercise,
            new(exercise, workbook, evaluator, _formulas, found),
            [new(dealt), .. _fresh.For(student, exercise)],
            _fresh.Drawn(exercise),
            _neighbours,
            _rules
        );
        var grades = new ExerciseJudge(tried, _dealt.Marking) { Paper = paper }.Judge();
        foreach (var grade in grades.Where(grade => grade is { Outcome: Outcome.Unsupported, Part.InWords: null, Formula: not null }))
            flags.Add(new Flag.FormulaToLookAt(Place(answers[grade.Part.Id], student), new(grade.Formula!)));
        return grades.Select(grade => (answers[grade.Part.Id], grade));
    }

    /// <summary>Overwritten givens are restored for grading, since every trial puts its own inputs there; that is said.</summary>
    private void FlagOverwritten(
        Exercise exercise,
        DealtStudent student,
        Variant dealt,
        Variant? others,
        IReadOnlyDictionary<string, CellAddress> places,
        WorkbookSnapshot workbook,
        ICollection<Flag> flags
    )
    {
        foreach (var given in exercise.Givens)
        {
            var content = workbook.Find(places[given.Id]);
            var value = dealt.Givens[given.Id];
            if (
                content is { Formula: null, Stored: { IsNumber: true, Number: var number } }
                && (
                    GivenCheck.IsAsDealt(number, value)
                    || others?.Givens.TryGetValue(given.Id, out var theirs) == true && GivenCheck.IsAsDealt(number, theirs)
                )
            )
                continue;
            var found = content switch
            {
                null => null,
                { Formula: { } formula } => "=" + formula,
                { Stored: var stored } => stored.ToString(),
            };
            flags.Add(new Flag.GivenOverwritten(Place(places[given.Id], student), given.Label, value, found is null ? null : new(found)));
        }
    }

    private CellPlace Place(CellAddress cell, DealtStudent student) =>
        new(cell, student.Variants.All(variant => _layout.Of(variant.Exercise.Id).Sheet != cell.Sheet));
}
