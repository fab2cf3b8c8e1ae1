using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Lettering;
using ClassKit.Exercises.Texts;
using ClassKit.Grading.Results;

namespace ClassKit.Pages.Outcomes;

/// <summary>What a student's answer cell comes to, as words and numbers.</summary>
public static class StudentAnswer
{
    /// <summary>The value with the part's unit; a text in quotes; an error by its name.</summary>
    public static string Of(AnswerGrade answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer.Chosen is { } chosen ? Of(answer, chosen) : Entered(answer);
    }

    /// <summary>
    /// The same to the student, who reads each option behind a letter: that letter with its words, whichever of the two was entered.
    /// </summary>
    /// <param name="answer">The answer.</param>
    /// <param name="givens">What the student was dealt, by given id.</param>
    public static string Of(AnswerGrade answer, IReadOnlyDictionary<string, decimal> givens)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer is { Chosen: { } chosen, Part.Choice: { } choice }
            ? $"{LetteredOptions.Of(answer.Exercise, choice.From, givens).LetterOf(chosen)}: {chosen.Words}"
            : Of(answer);
    }

    private static string Entered(AnswerGrade answer) =>
        answer.Value.Kind switch
        {
            CellValueKind.Text when answer.Part.InWords is not null => answer.Value.Text,
            CellValueKind.Blank when answer.Part.InWords is not null => "in own words, left out here",
            CellValueKind.Blank => "nothing",
            CellValueKind.Number => ResultText.Of(answer.Part, InCellScale(answer)),
            CellValueKind.Text => $"the text “{answer.Value.Text}”",
            CellValueKind.Logical => answer.Value.Logical ? "TRUE" : "FALSE",
            CellValueKind.Error => $"the error {CellErrorText.Of(answer.Value.Error)}",
        };

    /// <summary>A letter with what it stands for; the words alone where words were entered.</summary>
    private static string Of(AnswerGrade answer, ChoiceOption chosen) =>
        answer.Value.ToString().FirstOrDefault(char.IsAsciiLetter) is var letter and not '\0'
        && answer.Value.ToString().Count(char.IsLetter) == 1
            ? $"{char.ToUpperInvariant(letter)}: {chosen.Words}"
            : chosen.Words;

    /// <summary>In a percent cell 65 is read as 65 %, so it is shown as that when it is what was meant.</summary>
    private static double InCellScale(AnswerGrade answer)
    {
        var number = answer.Value.Number;
        var held = answer.Part.Unit.Held(number);
        return Distance(held, answer.Expected) < Distance(number, answer.Expected) ? held : number;
    }

    /// <summary>How many times the one is the other, either way round: 65 is nearer to 0.62 as 0.65 than as 65.</summary>
    private static double Distance(double value, double expected) =>
        value > 0 && expected > 0 ? Math.Abs(Math.Log(value / expected)) : double.PositiveInfinity;
}
