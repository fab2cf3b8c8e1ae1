namespace ClassKit.Exercises.Guarantees;

/// <summary>How a draw breaks a rule.</summary>
/// <param name="Rule">The rule's name.</param>
/// <param name="Culprit">What in the exercise is at fault.</param>
/// <param name="Because">A clause that is the same for every draw broken by this culprit: <c>the constraint `=water&gt;300` does not hold</c>.</param>
/// <param name="Seen">A clause with the values met in this draw; empty if there is nothing to add.</param>
/// <param name="WhatToDo">One sentence to the author.</param>
public sealed record Breach(string Rule, Culprit Culprit, string Because, string Seen, string WhatToDo);
