using ClassKit.Exercises.Cohorts;

namespace ClassKit.Records.Classes;

/// <summary>That a student was in a class, from a day to a day.</summary>
/// <param name="Class">The class.</param>
/// <param name="Student">The student.</param>
/// <param name="Since">The first day.</param>
/// <param name="Until">The last day; null while it goes on.</param>
public sealed record Enrolment(RecordedClass Class, Student Student, DateOnly Since, DateOnly? Until);
