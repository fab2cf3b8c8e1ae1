using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.Wording.Numbers;

namespace ClassKit.Desk.Rounds;

/// <summary>A part by its number and letter, as every page of a deal has it.</summary>
public static class PartLabel
{
    /// <summary>Such as 2c.</summary>
    public static string Of(DealtClass dealt, AnswerGrade answer)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        ArgumentNullException.ThrowIfNull(answer);
        var number = dealt.Exercises.Index().First(one => one.Item.Id == answer.Exercise.Id).Index + 1;
        return $"{number}{Phrases.Letter(dealt.Exercises[number - 1].Parts.Index().First(one => one.Item.Id == answer.Part.Id).Index)}";
    }
}
