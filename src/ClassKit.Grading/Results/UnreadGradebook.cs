namespace ClassKit.Grading.Results;

/// <summary>A gradebook that the instructor changed and that cannot be read.</summary>
/// <param name="File">Its name in the folder of grades.</param>
/// <param name="Why">Why not.</param>
public sealed record UnreadGradebook(string File, GradebookFault Why);
