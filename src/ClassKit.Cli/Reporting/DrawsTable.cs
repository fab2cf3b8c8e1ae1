using System.Globalization;
using ClassKit.UseCases.Checking;
using ClassKit.Wording.Guarantees;

namespace ClassKit.Cli.Reporting;

/// <summary>How the draws of exercises fared: two lines an exercise, then a line for every reason why draws were thrown away.</summary>
internal static class DrawsTable
{
    public static void Write(TextWriter output, IReadOnlyList<ProvedExercise> proofs)
    {
        foreach (var proof in proofs)
        {
            var (profile, space) = (proof.Proof.Profile, proof.Proof.Space);
            output.WriteLine($"{DisplayPath.Of(proof.Path)}");
            output.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"  {(space.IsExact ? "" : "about ")}{space.Count} variants; effort {profile.LeastEffort} to {profile.MostEffort}, allowed {proof.Proof.Band.Low} to {proof.Proof.Band.High}; {profile.Kept} of {profile.Draws} draws can be dealt, at most {profile.LongestRun} thrown away in a row"
                )
            );
            foreach (var rejection in profile.Rejections)
                output.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"  {rejection.Count, 5}  {BreachWords.Because(rejection.First)}{(BreachWords.Seen(rejection.First) is { Length: > 0 } seen ? $" (once {seen})" : "")}"
                    )
                );
            output.WriteLine();
        }
    }
}
