using ClassKit.Records.Storage;
using ClassKit.Terms.Work;

namespace ClassKit.UseCases.Recording;

/// <summary>Grades of a term are to be frozen as given out.</summary>
/// <param name="Record">The record, which has the term.</param>
/// <param name="Author">Who freezes them, when and why.</param>
/// <param name="Class">What the class is called on record.</param>
/// <param name="Term">The term with its marks.</param>
/// <param name="IsMeant">False to be told who would change, and nothing else.</param>
public sealed record FreezeRequest(TeachingRecord Record, Author Author, string Class, SchoolTerm Term, bool IsMeant);
