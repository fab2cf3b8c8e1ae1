namespace ClassKit.Terms.Marks;

/// <summary>One sitting of one student.</summary>
/// <param name="Student">The student's id.</param>
/// <param name="Assignment">The assignment's id.</param>
/// <param name="Sitting">1 for the first, 2 for a resit, and so on.</param>
/// <param name="Mark">What it came to.</param>
public sealed record Attempt(string Student, string Assignment, int Sitting, Mark Mark);
