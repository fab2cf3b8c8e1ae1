using ClassKit.UseCases.Checking;
using ClassKit.Wording.Terms;

namespace ClassKit.Cli.Reporting;

/// <summary>What a rule for grades does to invented students, step by step.</summary>
internal static class RuleLines
{
    public static void Write(TextWriter output, RuleProof proof)
    {
        output.WriteLine($"{DisplayPath.Of(proof.Path)}: {proof.Rule.Title}, the weights come to 100 %. Three invented students:");
        foreach (var grade in proof.Grades)
        {
            output.WriteLine($"  {grade.Student.Name}");
            foreach (var step in WorkingWords.Of(grade, proof.Rule))
                output.WriteLine($"    {step}");
        }
    }
}
