using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Observing;
using ClassKit.UseCases.Terms;

namespace ClassKit.UseCases.Touring;

/// <summary>A term of the invented class.</summary>
/// <param name="Second">How the second calculation set was graded.</param>
/// <param name="Resit">What those were dealt who sat it again.</param>
/// <param name="Again">How that was graded.</param>
/// <param name="Observed">What the teams measured.</param>
/// <param name="Weighed">The grades of the term.</param>
public sealed record TourTermMade(GradeResult Second, DealMade Resit, GradeResult Again, ObservedMade Observed, WeighedTerm Weighed);
