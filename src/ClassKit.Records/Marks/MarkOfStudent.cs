using ClassKit.Records.Storage;
using ClassKit.Terms.Marks;

namespace ClassKit.Records.Marks;

/// <summary>A typed mark of a student, with where it counts and whose word it is.</summary>
/// <param name="Class">What the class is called.</param>
/// <param name="Term">The title of the term.</param>
/// <param name="Attempt">The sitting; its assignment is the title of the work.</param>
/// <param name="Change">Who put it on record, when and why.</param>
public sealed record MarkOfStudent(string Class, string Term, Attempt Attempt, Change Change);
