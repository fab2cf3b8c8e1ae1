using ClassKit.Terms.Work;

namespace ClassKit.UseCases.Exporting;

/// <summary>The results of a term for a school's records.</summary>
/// <param name="Term">The term with its marks.</param>
/// <param name="Exchange">What the school's records know of it.</param>
public sealed record TermExchangeRequest(SchoolTerm Term, TermExchange Exchange);
