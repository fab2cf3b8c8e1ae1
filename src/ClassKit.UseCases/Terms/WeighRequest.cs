using ClassKit.Notes;
using ClassKit.Terms.Bench;
using ClassKit.Terms.Work;

namespace ClassKit.UseCases.Terms;

/// <summary>A term to be weighed.</summary>
/// <param name="Term">The term, with all its marks.</param>
/// <param name="MarkedTwice">Bench work that two have marked, with the title of the work.</param>
/// <param name="Notes">What the instructor should know of where the marks come from.</param>
public sealed record WeighRequest(
    SchoolTerm Term,
    IReadOnlyList<(string Work, BenchMarking Marking)> MarkedTwice,
    IReadOnlyList<Note> Notes
);
