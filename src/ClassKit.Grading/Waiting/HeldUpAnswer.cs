using ClassKit.Grading.Results;

namespace ClassKit.Grading.Waiting;

/// <summary>An answer that waits for an earlier one of the same student.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="IsKey">True where its formula is the key's own over the student's cells: it is right whatever the earlier one comes
/// to.</param>
public sealed record HeldUpAnswer(AnswerGrade Answer, bool IsKey);
