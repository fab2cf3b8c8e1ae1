using System.Globalization;
using ClassKit.Grading.Foresight;
using ClassKit.UseCases.Checking;
using ClassKit.Wording.Answers;

namespace ClassKit.Cli.Reporting;

/// <summary>
/// What students may do wrong and no exercise lists: an exercise's likeliest wrong turns a part, and those that its numbers hide.
/// </summary>
internal static class ForeseenTable
{
    private const int MostForPart = 4;

    public static void Write(TextWriter output, IReadOnlyList<ProvedExercise> proofs)
    {
        foreach (var proof in proofs)
        {
            output.WriteLine($"{DisplayPath.Of(proof.Path)}");
            foreach (var part in ForeseenTurns.Of(proof.Proof.Exercise).GroupBy(turn => turn.Part.Id))
            {
                foreach (var turn in part.Where(turn => turn.IsHidden))
                    output.WriteLine(
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"  {part.Key}: {turn.Formula} is taken for right in {turn.Hidden:P0} of the variants: {ForeseenWords.Of(turn)}. Another range of its numbers, or a smaller tolerance, would tell."
                        )
                    );
                foreach (var turn in part.Where(turn => !turn.IsHidden).Take(MostForPart))
                    output.WriteLine($"  {part.Key}: {turn.Formula} is not listed: {ForeseenWords.Of(turn)}");
            }
            output.WriteLine();
        }
    }
}
