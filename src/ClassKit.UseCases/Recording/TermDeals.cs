using ClassKit.Content.Diagnostics;
using ClassKit.Content.Terms;
using ClassKit.Exercises.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Terms;

namespace ClassKit.UseCases.Recording;

/// <summary>Which deals the graded folders of a term are of.</summary>
internal static class TermDeals
{
    public static Reading<IReadOnlyDictionary<string, SatDeals>> Of(TermPlan plan)
    {
        List<Diagnostic> problems = [];
        var found = new Dictionary<string, SatDeals>(StringComparer.Ordinal);
        foreach (var work in plan.Works.Where(work => work.Graded.Count > 0))
        {
            decimal? outOf = null;
            DateOnly? due = null;
            List<string> digests = [];
            List<(string, DealtClass)> sat = [];
            foreach (var folder in work.Graded)
            {
                var grades = GradedFolder.Read(folder, dealt: null);
                problems.AddRange(grades.Problems);
                if (!grades.Succeeded)
                    continue;
                if (grades.Model.Dealt.Identity is { } identity)
                    digests.Add(identity.Digest);
                else
                    problems.Add(new(folder, null, "It was dealt before deals had identities", "Deal and grade again with this program."));
                if (sat.Count == 0)
                    due = GradedWork.DueOf(grades.Model);
                sat.Add((folder, grades.Model.Dealt));
                outOf = grades.Model.Students.Select(student => (decimal?)student.OutOf).Where(points => points > 0).Append(outOf).Max();
            }
            problems.AddRange(SittingOrder.Faults(plan, work, sat));
            found[work.Title] = new(outOf, digests) { Due = due };
        }
        return problems.Count > 0 ? new(null, problems) : new(found, []);
    }
}
