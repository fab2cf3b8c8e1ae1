namespace ClassKit.UseCases.Exporting;

/// <summary>What a school's records know of a class and this program does not.</summary>
/// <param name="ClassId">The school's id of the class.</param>
/// <param name="SchoolId">The school's id of itself.</param>
/// <param name="SessionId">The school's id of the term or grading period.</param>
/// <param name="CategoryId">The school's id of the kind of work, such as homework.</param>
/// <param name="Assigned">When the set was handed out.</param>
/// <param name="Due">When it was due.</param>
/// <param name="Scored">When it was graded.</param>
public sealed record GradeExchange(
    string ClassId,
    string SchoolId,
    string SessionId,
    string CategoryId,
    DateOnly Assigned,
    DateOnly Due,
    DateOnly Scored
);
