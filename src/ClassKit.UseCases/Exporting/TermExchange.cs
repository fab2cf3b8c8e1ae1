namespace ClassKit.UseCases.Exporting;

/// <summary>What a school's records know of a class's term and this program does not.</summary>
/// <param name="SchoolId">The school's id of itself.</param>
/// <param name="CourseId">The school's id of the course.</param>
/// <param name="ClassId">The school's id of the class.</param>
/// <param name="SessionId">The school's id of the term.</param>
/// <param name="Begins">The first day of the term; works count as set on it, but for those that were due before.</param>
/// <param name="Ends">The last day; works count as graded on it, and as due where nobody has said when they were.</param>
public sealed record TermExchange(string SchoolId, string CourseId, string ClassId, string SessionId, DateOnly Begins, DateOnly Ends);
