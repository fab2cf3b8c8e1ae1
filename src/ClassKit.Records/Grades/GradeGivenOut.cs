using ClassKit.Records.Storage;

namespace ClassKit.Records.Grades;

/// <summary>A student's grade of a term as it was given out once.</summary>
/// <param name="Class">What the class is called.</param>
/// <param name="Term">The title of the term.</param>
/// <param name="Number">1 for the first time, 2 for a change, and so on.</param>
/// <param name="Grade">The grade.</param>
/// <param name="Change">Who gave it out, when and why.</param>
public sealed record GradeGivenOut(string Class, string Term, int Number, FrozenGrade Grade, Change Change);
