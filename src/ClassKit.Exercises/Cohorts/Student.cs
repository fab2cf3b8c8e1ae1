namespace ClassKit.Exercises;

/// <summary>One student on a roster.</summary>
/// <param name="Id">Unique in its cohort: lower-case letters, digits, <c>-</c> and <c>_</c>; also the name of the student's workbook file.</param>
/// <param name="Name">The name as the student writes it.</param>
/// <param name="Email">For the instructor's own mailing; never needed by ClassKit.</param>
public sealed record Student(string Id, string Name, string? Email = null);
