using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Dealing;

/// <summary>What one student was dealt. Where it stands in their workbook is looked up in the class's layout.</summary>
/// <param name="Who">The student.</param>
/// <param name="Workbook">The workbook's path within the dealt folder, with forward slashes.</param>
/// <param name="Variants">One of every exercise of theirs, in workbook order.</param>
public sealed record DealtStudent(Student Who, string Workbook, IReadOnlyList<Variant> Variants)
{
    /// <summary>True if the student was dealt an exercise.</summary>
    /// <param name="exercise">Its id.</param>
    public bool Has(string exercise) => Find(exercise) is not null;

    /// <summary>The student's variant of an exercise, with answers by the key as it was when they were dealt or rekeyed.</summary>
    /// <param name="exercise">Its id.</param>
    /// <exception cref="KeyNotFoundException">The student was not dealt it.</exception>
    public Variant Of(string exercise) => Find(exercise) ?? throw new KeyNotFoundException($"'{Who.Id}' was not dealt '{exercise}'.");

    /// <summary>The values dealt for one exercise, by given id; none if the student was not dealt it.</summary>
    public IReadOnlyDictionary<string, decimal> GivensOf(string exercise) => Find(exercise)?.Givens ?? new Dictionary<string, decimal>();

    /// <summary>The expected answers of one exercise, by part id; none if the student was not dealt it.</summary>
    public IReadOnlyDictionary<string, double> AnswersOf(string exercise) => Find(exercise)?.Answers ?? new Dictionary<string, double>();

    private Variant? Find(string exercise) => Variants.FirstOrDefault(variant => variant.Exercise.Id == exercise);
}
