using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.Summaries;

namespace ClassKit.Wording.Answers;

/// <summary>What an instructor is told of a wrong method that several students share and nobody listed.</summary>
public static class WrongMethodWords
{
    /// <summary>What it looks like; that nobody can say where it is no near miss.</summary>
    public static string Of(WrongMethod method)
    {
        ArgumentNullException.ThrowIfNull(method);
        return method.Edits.Count == 0
            ? "All of these do the same, and we have no words for it."
            : $"It looks as if {NearMissWords.OfMethod(method.Edits, method.Exercise, method.Part, method.Formula)}.";
    }

    /// <summary>Words to begin from, to a student who did the same.</summary>
    public static string ToStudents(WrongMethod method)
    {
        ArgumentNullException.ThrowIfNull(method);
        return method.Edits.Count == 0
            ? "Your formula does something else than the method asks: compare it with the worked solution, step by step."
            : $"It looks as if {NearMissWords.OfMethod(method.Edits, method.Exercise, method.Part, method.Formula, isOfOthers: false)}. Compare your formula with the worked solution.";
    }

    /// <summary>What to ask the class. Common practice, no source.</summary>
    public static string Asking(WrongMethod method)
    {
        ArgumentNullException.ThrowIfNull(method);
        return method.Edits is not [var first, ..]
            ? "Ask one of them to explain the steps: they had a reason, and it is the same one."
            : first switch
            {
                KeyEdit.ShareForRest or KeyEdit.ShareOfOtherEnd or KeyEdit.OtherCell { IsWhole: true } =>
                    "Ask of what whole the percentage is a share, and draw that whole before anybody calculates.",
                KeyEdit.OtherOperation
                or KeyEdit.TurnedRound
                or KeyEdit.Inverse
                or KeyEdit.OtherSign
                or KeyEdit.TakenIn { Operation: BinaryOperator.Divide or BinaryOperator.Multiply } =>
                    "Ask before anybody calculates whether the result must be more or less than what goes in.",
                KeyEdit.LeftOut or KeyEdit.CountedTwice or KeyEdit.TakenIn =>
                    "Let them tick off every number of the sheet that has been used, once each.",
                KeyEdit.OtherUnit or KeyEdit.OtherConstant =>
                    "Let them write the unit beside every number, and say where each constant comes from.",
                KeyEdit.OtherBrackets => "Let them say aloud what is worked out first.",
                KeyEdit.OtherRounding => "Round at the end, and never on the way.",
                _ => "Let them say what each cell stands for before they point at it.",
            };
    }
}
