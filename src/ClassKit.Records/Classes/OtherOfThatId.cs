using ClassKit.Exercises.Cohorts;

namespace ClassKit.Records.Classes;

/// <summary>A student whose id is another one's, of another class and another name.</summary>
/// <param name="Student">Who was to be put on record.</param>
/// <param name="OnRecord">Who has that id.</param>
public sealed record OtherOfThatId(Student Student, Student OnRecord);
