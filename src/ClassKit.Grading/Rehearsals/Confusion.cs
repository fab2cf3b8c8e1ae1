using ClassKit.Grading.Results;

namespace ClassKit.Grading.Rehearsals;

/// <summary>A kind of answer that the grader took for another.</summary>
/// <param name="Truth">What the answer was made to be.</param>
/// <param name="Given">What the grader said.</param>
/// <param name="Example">One such answer: student, part and what was entered.</param>
/// <param name="Count">How many there were; above 0.</param>
public sealed record Confusion(Outcome Truth, Outcome Given, string Example, int Count);
