using ClassKit.Records.Classes;

namespace ClassKit.Records.Arrangements;

/// <summary>One thing that was arranged with a student. Why stands nowhere.</summary>
/// <param name="Class">In which class.</param>
/// <param name="Student">The student's id.</param>
/// <param name="What">What it is.</param>
/// <param name="Since">The day on which it went on record.</param>
/// <param name="Until">The day on which it was taken back; null while it holds.</param>
public sealed record RecordedArrangement(RecordedClass Class, string Student, string What, DateOnly Since, DateOnly? Until);
