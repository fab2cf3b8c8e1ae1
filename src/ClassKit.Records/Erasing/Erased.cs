using ClassKit.Exercises.Cohorts;

namespace ClassKit.Records.Erasing;

/// <summary>What was erased of a student, and what stays.</summary>
/// <param name="Student">Who it was.</param>
/// <param name="Classes">The classes that they were in.</param>
/// <param name="Removed">Rows that are gone: enrolments, what was dealt, files, typed points, arrangements, the log of their
/// changes.</param>
/// <param name="Kept">Rows that stay without saying whose they were: grades, marks, frozen grades.</param>
/// <param name="Mentions">Entries of others out of which mentions of the student were taken.</param>
public sealed record Erased(Student Student, IReadOnlyList<string> Classes, int Removed, int Kept, int Mentions);
