using MathNet.Numerics.LinearAlgebra;

namespace ClassKit.Terms.Difficulty;

/// <summary>The difficulties that make conditional likelihood greatest; they sum to 0.</summary>
/// <param name="Difficulties">In logits, by place.</param>
/// <param name="Errors">Their standard errors under that sum.</param>
/// <param name="Log">The logarithm of the likelihood there.</param>
internal sealed record ConditionalEstimate(IReadOnlyList<double> Difficulties, IReadOnlyList<double> Errors, double Log)
{
    private const int Steps = 100;
    private const double Still = 1e-10;

    /// <summary>Finds them by Newton's steps, halved where they go too far.</summary>
    /// <param name="groups">Works on parts of which every one can be reached from every other (<see cref="ComparableParts"/>): then there
    /// is just one greatest likelihood (Fischer, Psychometrika 46, 1981, 59).</param>
    /// <param name="parts">How many parts, at least 2.</param>
    /// <param name="got">How often each was got.</param>
    /// <param name="asked">How often each was asked.</param>
    public static ConditionalEstimate Of(IReadOnlyList<AskedAlike> groups, int parts, IReadOnlyList<int> got, IReadOnlyList<int> asked)
    {
        var start = Vector<double>.Build.DenseOfEnumerable(got.Zip(asked, (right, all) => Math.Log((all - right + 0.5) / (right + 0.5))));
        var difficulties = start - (start.Sum() / parts);
        var there = new ConditionalLikelihood(groups, got, difficulties.AsArray());
        for (var step = 0; step < Steps; step++)
        {
            var change = Inverse(there, parts) * Vector<double>.Build.DenseOfArray(there.Slope);
            var next = there;
            for (var halving = 0; halving < Steps; halving++, change /= 2)
            {
                next = new(groups, got, (difficulties + change).AsArray());
                if (next.Log >= there.Log)
                    break;
            }
            difficulties += change;
            there = next;
            if (change.AbsoluteMaximum() < Still)
                break;
        }
        // Of the inverse, what stands for the sum, which is held at 0, is taken out again.
        return new(
            [.. difficulties],
            [.. Inverse(there, parts).Diagonal().Select(variance => Math.Sqrt(Math.Max(0, variance - (1.0 / (parts * parts)))))],
            there.Log
        );
    }

    /// <summary>
    /// All difficulties moved together change nothing, so that the information alone has no inverse; 1 added everywhere gives it one.
    /// </summary>
    private static Matrix<double> Inverse(ConditionalLikelihood likelihood, int parts) =>
        (Matrix<double>.Build.DenseOfArray(likelihood.Information) + Matrix<double>.Build.Dense(parts, parts, 1)).Inverse();
}
