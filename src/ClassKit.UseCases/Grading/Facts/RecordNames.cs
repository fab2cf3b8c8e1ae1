using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;

namespace ClassKit.UseCases.Grading.Facts;

/// <summary>What a record of grades names by its id: students, exercises, parts and misconceptions.</summary>
/// <remarks>
/// Records of earlier versions do not hold what was dealt. Of what stands nowhere else they let one know no more than the id and the
/// points.
/// </remarks>
internal sealed record RecordNames(
    IReadOnlyDictionary<string, Student> Students,
    IReadOnlyDictionary<string, Exercise> Exercises,
    DueMoment? Due
)
{
    private static readonly CellFormula NotKnown = CellFormula.Of("=NA()");

    private Exercise? Here { get; init; }

    private Part? Asked { get; init; }

    /// <summary>The same where facts speak of one answer.</summary>
    public RecordNames Within(Exercise exercise, Part part) => this with { Here = exercise, Asked = part };

    /// <exception cref="FormatException">Nobody of the class has the id.</exception>
    public Student Student(string id) =>
        Students.TryGetValue(id, out var student) ? student : throw new FormatException($"A fact names “{id}”, who is not in the class");

    /// <summary>A part of the exercise that the fact is about.</summary>
    /// <exception cref="FormatException">The exercise has none of that id.</exception>
    public Part Part(string id) =>
        Here?.Parts.FirstOrDefault(part => part.Id == id)
        ?? throw new FormatException($"A fact names the part “{id}”, which the exercise does not have");

    /// <summary>A given of the exercise that the fact is about.</summary>
    /// <exception cref="FormatException">The exercise has none of that id.</exception>
    public Given Given(string id) =>
        Here?.Givens.FirstOrDefault(given => given.Id == id)
        ?? throw new FormatException($"A fact names the given “{id}”, which the exercise does not have");

    /// <summary>A known wrong turn in the answer that the fact is about.</summary>
    public Misconception Misconception(string id) => Asked?.Misconceptions.FirstOrDefault(known => known.Id == id) ?? new(id, NotKnown, "");

    /// <summary>The exercise and the part of an answer on record.</summary>
    /// <param name="exercise">The exercise's id.</param>
    /// <param name="part">The part's id.</param>
    /// <param name="outOf">What the answer could earn.</param>
    public (Exercise Exercise, Part Part) Answer(string exercise, string part, decimal outOf)
    {
        var known = Exercises.GetValueOrDefault(exercise) ?? new(exercise, exercise, "", ExerciseLevel.Standard, 1, "", "", [], [], [], []);
        return (
            known,
            known.Parts.FirstOrDefault(one => one.Id == part)
                ?? new(part, part, NotKnown, "", new(0, IsRelative: false), outOf, FormulaAsked: false, [])
        );
    }
}
