using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Texts;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Effort;

/// <summary>How much work a variant is with pencil and paper: a plain count, our own, no source.</summary>
/// <remarks>
/// One for every significant digit of a given that a key uses and of an answer as printed, one for every operation in a key, one for every
/// carry or borrow when its numbers are added, subtracted and multiplied digit by digit; a division counts as the multiplication that
/// checks it. Numbers in between are cut to <see cref="WorkingDigits"/> digits. The count is meant to compare variants of one exercise, not
/// one exercise with another.
/// </remarks>
public static class EffortMeasure
{
    /// <summary>How many digits a person carries along.</summary>
    public const int WorkingDigits = 4;

    /// <summary>The effort of a variant.</summary>
    public static int Of(Variant variant)
    {
        ArgumentNullException.ThrowIfNull(variant);
        return Of(variant.Exercise, variant.Givens, variant.Answers);
    }

    internal static int Of(Exercise exercise, IReadOnlyDictionary<string, decimal> givens, IReadOnlyDictionary<string, double> answers)
    {
        var effort = 0;
        foreach (var given in exercise.Givens)
        {
            if (!given.IsConstant)
                effort += Digits.Significant(givens[given.Id]);
        }
        foreach (var part in exercise.Parts.Where(part => part.IsNumber))
        {
            effort += Digits.Significant(Digits.Cut(ResultText.Rounded(part, answers[part.Id]), 9));
            effort += Paperwork.Of(part.Key.Root, name => Value(exercise, givens, answers, name));
        }
        return effort;
    }

    private static double? Value(
        Exercise exercise,
        IReadOnlyDictionary<string, decimal> givens,
        IReadOnlyDictionary<string, double> answers,
        string name
    )
    {
        if (givens.TryGetValue(name, out var given))
            return (double)given;
        if (answers.TryGetValue(name, out var answer))
            return answer;
        // Spreadsheets do not tell upper from lower case in names; ids are lower case.
        var lower = name.ToLowerInvariant();
        return lower != name ? Value(exercise, givens, answers, lower) : null;
    }
}
