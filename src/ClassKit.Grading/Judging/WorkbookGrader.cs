using ClassKit.CellFormulas;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Grades one returned workbook against what its student was dealt.</summary>
internal sealed class WorkbookGrader
{
    /// <summary>What a whole practice workbook takes on all fresh inputs is some thousand steps; these are less than a second of work.</summary>
    private static readonly EvaluationLimits Limits = new(Steps: 100_000, ArrayCells: 100_000, LifeSteps: 1_000_000);

    private readonly DealtClass _dealt;
    private readonly ClassInputs _fresh;

    public WorkbookGrader(DealtClass dealt, ClassInputs fresh) => (_dealt, _fresh) = (dealt, fresh);

    /// <summary>Judges every answer; flags gathers what the instructor should see.</summary>
    public IReadOnlyList<AnswerGrade> Grade(DealtStudent student, WorkbookSnapshot returned, ICollection<Flag> flags)
    {
        var texts = new TextFormulas(returned);
        var workbook = texts.Revived();
        var evaluator = new WorkbookEvaluator(workbook, Limits);
        var finder = new CellFinder(workbook);
        return
        [
            .. _dealt.ExercisesOf(student).SelectMany(exercise => Grade(student, exercise, workbook, evaluator, finder, flags))
                .Select(found => returned.Find(found.Cell) is { } content && texts.IsOne(content) ? found.Grade with { Remark = AnswerNotes.StoodAsText(found.Grade.Remark) } : found.Grade),
        ];
    }

    private IEnumerable<(CellAddress Cell, AnswerGrade Grade)> Grade(
        DealtStudent student, Exercise exercise, WorkbookSnapshot workbook, WorkbookEvaluator evaluator, CellFinder finder, ICollection<Flag> flags)
    {
        var found = finder.Find(student, exercise.Id);
        var (givens, answers) = (found.Givens, found.Answers);
        if (found.MovedTo is { } sheet)
            flags.Add(new(FlagCodes.OtherSheet, $"{exercise.Title} was answered on the sheet “{new TypedMention(sheet)}”, and that one was graded. A sheet is easily copied or renamed."));
        var dealt = new Variant(exercise, student.GivensOf(exercise.Id), student.AnswersOf(exercise.Id));
        FlagOverwritten(exercise, student, dealt, givens, workbook, flags);

        var grades = new ExerciseJudge(exercise, new(workbook, evaluator, givens, answers), _dealt.Marking, dealt, _fresh.For(student, exercise), [dealt, .. _fresh.All(exercise)]).Judge();
        foreach (var grade in grades.Where(grade => grade.Outcome == Outcome.Unsupported))
            flags.Add(new(FlagCodes.FormulaToLookAt, $"{Place(answers[grade.Part.Id], student)} holds {new TypedMention(grade.Formula!)}, which could not be worked out here: please look at it yourself."));
        return grades.Select(grade => (answers[grade.Part.Id], grade));
    }

    /// <summary>Overwritten givens are restored for grading, since every trial puts its own inputs there; that is said.</summary>
    private static void FlagOverwritten(
        Exercise exercise, DealtStudent student, Variant dealt, IReadOnlyDictionary<string, CellAddress> places, WorkbookSnapshot workbook, ICollection<Flag> flags)
    {
        foreach (var given in exercise.Givens)
        {
            var content = workbook.Find(places[given.Id]);
            var value = dealt.Givens[given.Id];
            if (content is { Formula: null, Stored: { IsNumber: true, Number: var number } } && GivenCheck.IsAsDealt(number, value)) continue;
            var found = content switch
            {
                null => "nothing",
                { Formula: { } formula } => "=" + formula,
                { Stored: var stored } => stored.ToString(),
            };
            flags.Add(new(FlagCodes.GivenOverwritten, $"{Place(places[given.Id], student)} ({given.Label}) was dealt as {value} and now holds {new TypedMention(found)}. It was graded with the dealt number."));
        }
    }

    /// <summary>A cell in a sentence; the name of a sheet that was not dealt is the student's own.</summary>
    private static Sentence Place(CellAddress cell, DealtStudent student) =>
        student.Answers.Any(answer => answer.Address.Sheet == cell.Sheet) ? cell.ToString() : Sentence.Of(new TypedMention(cell.ToString()));
}
