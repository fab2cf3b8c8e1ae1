using ClassKit.Terms.Grades;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Trials;

namespace ClassKit.UseCases.Checking;

/// <summary>A rule for grades taken through by invented students.</summary>
/// <param name="Path">The rule's file.</param>
/// <param name="Rule">The rule.</param>
/// <param name="Grades">What each invented student gets, with its working.</param>
public sealed record RuleProof(string Path, GradeRule Rule, IReadOnlyList<TermGrade> Grades)
{
    /// <summary>Takes three invented students through a rule.</summary>
    public static RuleProof Of(string path, GradeRule rule) => new(path, rule, TermGrader.Grade(RuleTrial.Of(rule)));
}
