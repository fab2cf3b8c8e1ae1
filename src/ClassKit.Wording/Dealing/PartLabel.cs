using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.Wording.Numbers;

namespace ClassKit.Wording.Dealing;

/// <summary>A part by its number and letter, such as 2c, as every page and sheet of a deal has it.</summary>
public static class PartLabel
{
    /// <summary>Of the part that an answer was given to.</summary>
    public static string Of(DealtClass dealt, AnswerGrade answer)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        ArgumentNullException.ThrowIfNull(answer);
        return Of(dealt.Exercises, answer.Exercise.Id, answer.Part.Id);
    }

    /// <summary>Of a part by its ids; the ids themselves where the deal has no such part.</summary>
    /// <param name="exercises">Those of the deal, in order.</param>
    /// <param name="exercise">The id of its exercise.</param>
    /// <param name="part">Its own.</param>
    public static string Of(IReadOnlyList<Exercise> exercises, string exercise, string part)
    {
        ArgumentNullException.ThrowIfNull(exercises);
        foreach (var (number, one) in exercises.Index())
        {
            foreach (var (letter, asked) in one.Parts.Index())
            {
                if (one.Id == exercise && asked.Id == part)
                    return $"{number + 1}{Phrases.Letter(letter)}";
            }
        }
        return $"{exercise}.{part}";
    }
}
