using ClassKit.Exercises.Cohorts;

namespace ClassKit.Exercises.Dealing;

/// <summary>What one student was dealt.</summary>
/// <param name="Who">The student.</param>
/// <param name="Workbook">The workbook's path within the dealt folder, with forward slashes.</param>
/// <param name="Givens">Every given of every exercise of theirs.</param>
/// <param name="Answers">Every part of every exercise of theirs.</param>
public sealed record DealtStudent(
    Student Who,
    string Workbook,
    IReadOnlyList<DealtGiven> Givens,
    IReadOnlyList<DealtAnswer> Answers)
{
    /// <summary>The values dealt for one exercise, by given id.</summary>
    public IReadOnlyDictionary<string, decimal> GivensOf(string exercise) =>
        Givens.Where(given => given.Exercise == exercise).ToDictionary(given => given.Name, given => given.Value);

    /// <summary>The expected answers of one exercise, by part id.</summary>
    public IReadOnlyDictionary<string, double> AnswersOf(string exercise) =>
        Answers.Where(answer => answer.Exercise == exercise).ToDictionary(answer => answer.Part, answer => answer.Expected);
}
