using ClassKit.CellFormulas.Formulas;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.Wording.Answers;

/// <summary>
/// The wrong turn that an answer is nearest to, in few words and alike for everybody who took it, so that a table can be filtered by it.
/// </summary>
public static class NearestTurn
{
    /// <summary>The name of the misconception, or of what the answer has otherwise than the key; empty where neither is known.</summary>
    public static string Of(AnswerGrade answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer switch
        {
            { Misconception: { } misconception } => WrongTurnName.Of(misconception),
            { Findings: [AnswerFinding.NearMiss miss, ..] }
                when NearMissWords.OfMethod(miss.Edits, answer.Exercise, answer.Part, CellFormula.Of(miss.Formula))
                    is [var first, ..] words => $"{char.ToUpperInvariant(first)}{words[1..]}",
            _ => "",
        };
    }
}
