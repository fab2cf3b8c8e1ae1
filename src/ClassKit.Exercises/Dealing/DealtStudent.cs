using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Dealing;

/// <summary>What one student was dealt. Where it stands in their workbook is looked up in the class's layout.</summary>
/// <param name="Who">The student.</param>
/// <param name="Workbook">The workbook's path within the dealt folder, with forward slashes.</param>
/// <param name="Variants">One of every exercise of theirs, in workbook order.</param>
public sealed record DealtStudent(Student Who, string Workbook, IReadOnlyList<Variant> Variants)
{
    /// <summary>True for a student who reads large print.</summary>
    public bool LargePrint { get; init; }

    /// <summary>More time than the others have, as a share of theirs; 0 or more.</summary>
    public decimal ExtraTime { get; init; }

    /// <summary>When this student's work is due; null for when the class's is.</summary>
    public DueMoment? Due { get; init; }

    /// <summary>The ids of exercises that the others were dealt and this student was not, as arranged.</summary>
    public IReadOnlyList<string> LeavesOut { get; init; } = [];

    /// <summary>True if something was arranged with this student, so that not everything is as the class has it.</summary>
    public bool HasArrangement => LargePrint || ExtraTime > 0 || Due is not null || LeavesOut.Count > 0;

    /// <summary>The minutes that an exercise may take this student.</summary>
    public int MinutesFor(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return (int)Math.Ceiling(exercise.Minutes * (1 + ExtraTime));
    }

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

    /// <summary>The numbers of an exercise; null if the student was not dealt it.</summary>
    /// <param name="exercise">Its id.</param>
    public Variant? Find(string exercise) => Variants.FirstOrDefault(variant => variant.Exercise.Id == exercise);
}
