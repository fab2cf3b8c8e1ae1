using System.Globalization;
using ClassKit.UseCases.Checking;

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
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"  {(space.IsExact ? "" : "about ")}{space.Count} variants; effort {profile.LeastEffort} to {profile.MostEffort}, allowed {proof.Proof.Band.Low} to {proof.Proof.Band.High}; {profile.Kept} of {profile.Draws} draws can be dealt, at most {profile.LongestRun} thrown away in a row"));
            foreach (var rejection in profile.Rejections)
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {rejection.Count,5}  {rejection.First.Because}{(rejection.First.Seen.Length > 0 ? $" (once {rejection.First.Seen})" : "")}"));
            output.WriteLine();
        }
    }
}
