using ClassKit.Terms.Marks;

namespace ClassKit.Content.Terms;

/// <summary>One cell of a table of marks.</summary>
/// <param name="Student">The student's id.</param>
/// <param name="Sitting">1 for the first, 2 for a resit.</param>
/// <param name="Mark">What was typed.</param>
/// <param name="File">The table.</param>
/// <param name="Line">Where it stands in it.</param>
public sealed record TypedMark(string Student, int Sitting, Mark Mark, string File, int Line);
