using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Dealing;

/// <summary>
/// Puts corrected exercises under a class that was dealt already: what students were told stays, what is right is worked out anew.
/// </summary>
public static class Rekeying
{
    /// <summary>The class with corrected keys, tolerances, points, misconceptions and words.</summary>
    /// <param name="dealt">What was dealt.</param>
    /// <param name="corrected">Exercises by their ids; those that were not dealt are ignored, those dealt and not among them stay as they
    /// were.</param>
    /// <returns>The class, or null with every exercise that no longer fits what was dealt.</returns>
    public static (DealtClass? Class, IReadOnlyList<RekeyProblem> Problems) Apply(DealtClass dealt, IReadOnlyList<Exercise> corrected)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        ArgumentNullException.ThrowIfNull(corrected);
        var byId = corrected.ToDictionary(exercise => exercise.Id);
        List<Exercise> exercises = [.. dealt.Exercises.Select(exercise => byId.GetValueOrDefault(exercise.Id, exercise))];
        List<RekeyProblem> problems =
        [
            .. dealt
                .Exercises.Zip(exercises)
                .Where(pair => !Fits(pair.First, pair.Second))
                .Select(pair => new RekeyProblem.OtherQuestions(pair.First.Id)),
        ];
        if (problems.Count > 0)
            return (null, problems);

        var rekeyed = dealt with { Exercises = exercises };
        var students = dealt.Students.Select(student => Rekeyed(student, rekeyed.ExercisesOf(student), problems)).ToList();
        return problems.Count > 0 ? (null, problems) : (rekeyed with { Students = students }, []);
    }

    private static bool Fits(Exercise dealt, Exercise corrected) =>
        dealt.Givens.Select(given => (given.Id, given.Unit)).SequenceEqual(corrected.Givens.Select(given => (given.Id, given.Unit)))
        && dealt.Parts.Select(part => part.Id).SequenceEqual(corrected.Parts.Select(part => part.Id));

    private static DealtStudent Rekeyed(DealtStudent student, IReadOnlyList<Exercise> exercises, List<RekeyProblem> problems)
    {
        var variants = new List<Variant>();
        foreach (var exercise in exercises)
        {
            var givens = student.GivensOf(exercise.Id);
            var answers = new Dictionary<string, double>();
            foreach (var part in exercise.Parts)
            {
                if (KeyValues.Number(part.Key, KeyValues.Names(givens, answers)) is { } value)
                    answers[part.Id] = value;
                else
                    problems.Add(new RekeyProblem.NoNumber(exercise.Id, part.Id, student.Who));
            }
            variants.Add(new(exercise, givens, answers));
        }
        return student with { Variants = variants };
    }
}
