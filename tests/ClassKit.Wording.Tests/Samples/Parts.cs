using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Wording.Answers;

namespace ClassKit.Wording.Tests.Samples;

/// <summary>A part to find something of.</summary>
internal static class Parts
{
    public static readonly Misconception Divided = new("divided", CellFormula.Of("=flour/share"), "Multiply by the share.");

    public static readonly Given Flour = new("flour", "Flour", "g", 100, 900, 1);

    public static Part Of(string unit = "g", bool formulaAsked = true, string ask = "How much water?") =>
        new("water", ask, CellFormula.Of("=flour*share"), unit, Tolerance.Absolute(0.5), 2, formulaAsked, [Divided]);

    /// <summary>The words of one finding.</summary>
    public static string Told(AnswerFinding finding, Part? part = null) => Told([finding], part);

    public static string Told(IReadOnlyList<AnswerFinding> findings, Part? part = null)
    {
        part ??= Of();
        return FindingWords.Of(Graded(Dough(part), part, findings));
    }

    public static Exercise Dough(Part part) =>
        new("dough", "Dough", "mixing", ExerciseLevel.Standard, 5, "arithmetic", "Mix.", [Flour], [], [part], []);

    public static AnswerGrade Graded(Exercise exercise, Part part, IReadOnlyList<AnswerFinding> findings) =>
        new(exercise, part, Outcome.Incorrect, 0, 2, CellValue.Blank, 1, null, findings, new Dictionary<string, double>());
}
