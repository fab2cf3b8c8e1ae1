using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Judging.Trials;

namespace ClassKit.Grading.Judging;

/// <summary>
/// Finds the answers that are wrong beyond doubt: plain arithmetic over cells that stand where they were dealt, behind nothing but exact
/// answers, that is not right for the numbers dealt, and that nothing listed or known explains for one of the fresh inputs. Of these the
/// neighbours of the key alone are left to be asked, and nothing needs to be tried in the workbook.
/// </summary>
/// <param name="exact">The answers that are right beyond doubt.</param>
/// <param name="inputs">The inputs of the trials, those dealt first.</param>
/// <param name="explanations">What explains formulas, the class's.</param>
internal sealed class HopelessAnswers(ExactAnswers exact, IReadOnlyList<TrialInputs> inputs, Explanations explanations)
{
    /// <summary>A longer formula may be more work than near misses are looked for with.</summary>
    private const int Longest = 1000;

    /// <summary>
    /// An answer over the names of the exercise, and what it comes to under every trial; null for one of which there is doubt.
    /// </summary>
    public (CellFormula Formula, double[] Values)? Of(Part part)
    {
        if (!exact.AreAllBefore(part) || exact.Plain(part) is not { } formula || formula.Text.Length > Longest)
            return null;
        var right = inputs[0].Right.Answers[part.Id];
        // Where the key gives another number than itself by noise, own earlier answers are another ground.
        if (inputs[0].Number(part.Key) != right || ExactAnswers.Values(inputs, formula) is not { } values)
            return null;
        if (CellReadings.Of(part, values[0]).Any(value => part.Tolerance.Accepts(right, value)))
            return null;
        return inputs.Skip(1).Any(fresh => !explanations.Any(fresh, part, formula)) ? (formula, values) : null;
    }
}
