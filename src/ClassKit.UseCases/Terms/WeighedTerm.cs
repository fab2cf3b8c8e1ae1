using ClassKit.Terms.Agreement;
using ClassKit.Terms.Grades;

namespace ClassKit.UseCases.Terms;

/// <summary>A term weighed into grades.</summary>
/// <param name="Request">What was weighed.</param>
/// <param name="Grades">Every student's grade with its working, in the order of the class.</param>
/// <param name="Agreement">How far markers of the same work agree.</param>
public sealed record WeighedTerm(WeighRequest Request, IReadOnlyList<TermGrade> Grades, IReadOnlyList<MarkerAgreement> Agreement);
