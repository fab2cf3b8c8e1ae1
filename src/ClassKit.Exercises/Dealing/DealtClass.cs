namespace ClassKit.Exercises;

/// <summary>Everything that was dealt to one class: all that grading needs besides the returned files.</summary>
/// <param name="Lesson">The lesson's id.</param>
/// <param name="LessonTitle">The lesson's title.</param>
/// <param name="Cohort">What the class is called.</param>
/// <param name="Seed">The seed that all variants were drawn from.</param>
/// <param name="Marking">The marking scheme, frozen with the deal.</param>
/// <param name="Exercises">The exercises, frozen with the deal, in workbook order.</param>
/// <param name="Students">What each student got, in roster order.</param>
public sealed record DealtClass(
    string Lesson,
    string LessonTitle,
    string Cohort,
    ulong Seed,
    MarkingScheme Marking,
    IReadOnlyList<Exercise> Exercises,
    IReadOnlyList<DealtStudent> Students);
