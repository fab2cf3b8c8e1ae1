using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Rules;

namespace ClassKit.Terms.Work;

/// <summary>A class over a term: what it was set, what came of it, and the rule that makes one grade of that.</summary>
/// <param name="Title">What the term is called.</param>
/// <param name="Class">The students.</param>
/// <param name="Rule">The rule.</param>
/// <param name="Assignments">In the order that they were set; the category of each is one of the rule's.</param>
/// <param name="Attempts">In any order; at most one for each student, assignment and sitting. A mark that is not there yet has
/// none.</param>
public sealed record SchoolTerm(
    string Title,
    Roster Class,
    GradeRule Rule,
    IReadOnlyList<Assignment> Assignments,
    IReadOnlyList<Attempt> Attempts
);
