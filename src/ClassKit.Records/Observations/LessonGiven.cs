using ClassKit.Records.Classes;

namespace ClassKit.Records.Observations;

/// <summary>A lesson that a class was given.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Class">The class.</param>
/// <param name="Lesson">The lesson's id.</param>
/// <param name="Title">The lesson's title.</param>
/// <param name="Day">When.</param>
public sealed record LessonGiven(long Id, RecordedClass Class, string Lesson, string Title, DateOnly Day);
