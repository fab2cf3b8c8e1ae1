using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Tests.Exercises;

namespace ClassKit.PracticeBank.Tests.Bank;

/// <summary>The exercises of lessons/practice, as an instructor deals from them.</summary>
internal static class ShippedBank
{
    public static string Folder { get; } = Repository.PathOf("lessons", "practice");

    public static IReadOnlyList<Exercise> Exercises { get; } = ShippedExercises.Below(Folder);

    public static TheoryData<string> Ids => [.. Exercises.Select(exercise => exercise.Id)];

    public static Exercise Of(string id) => Exercises.Single(exercise => exercise.Id == id);

    /// <summary>
    /// What the keys give for values of one's own, such as those of a published example; givens that are not named are 0.
    /// </summary>
    public static IReadOnlyDictionary<string, double> Work(string id, params IReadOnlyList<(string Given, double Value)> values)
    {
        var exercise = Of(id);
        Assert.All(values, value => Assert.Contains(exercise.Givens, given => given.Id == value.Given));
        var names = exercise.Givens.ToDictionary(
            given => given.Id,
            given => CellValue.FromNumber(values.FirstOrDefault(value => value.Given == given.Id).Value)
        );
        var answers = new Dictionary<string, double>();
        foreach (var part in exercise.Parts.TakeWhile(part => KeyValues.Number(part.Key, names) is not null))
        {
            answers[part.Id] = KeyValues.Number(part.Key, names)!.Value;
            names[part.Id] = CellValue.FromNumber(answers[part.Id]);
        }
        return answers;
    }
}
