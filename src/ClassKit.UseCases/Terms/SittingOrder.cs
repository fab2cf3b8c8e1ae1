using ClassKit.Content.Diagnostics;
using ClassKit.Content.Terms;
using ClassKit.Exercises.Dealing;

namespace ClassKit.UseCases.Terms;

/// <summary>Whether the graded folders of a work stand in the order in which they were sat: a resit says which deal it replaces.</summary>
internal static class SittingOrder
{
    /// <summary>Every resit that does not stand behind the deal that it replaces.</summary>
    /// <param name="plan">The term.</param>
    /// <param name="work">The work.</param>
    /// <param name="dealt">The deals of its folders that could be read, each with its folder, in the order of the term.</param>
    public static IEnumerable<Diagnostic> Faults(TermPlan plan, PlannedWork work, IReadOnlyList<(string Folder, DealtClass Dealt)> dealt) =>
        from sat in dealt.Index()
        where sat.Item.Dealt.Replaces is { } replaced && !dealt.Take(sat.Index).Any(earlier => earlier.Dealt.Identity == replaced)
        select new Diagnostic(
            plan.Path,
            work.Line,
            $"`{sat.Item.Folder}` is a resit of deal {sat.Item.Dealt.Replaces!.Code}, which is not named before it",
            $"Name the folder with the grades of deal {sat.Item.Dealt.Replaces.Code} first, and the resit behind it."
        );
}
