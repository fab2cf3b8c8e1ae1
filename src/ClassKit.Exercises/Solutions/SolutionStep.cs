namespace ClassKit.Exercises.Solutions;

/// <summary>One step of a worked solution.</summary>
/// <param name="What">What is worked out, a few words.</param>
/// <param name="Method">MathML: how, with names.</param>
/// <param name="Numbers">MathML: the same with the numbers put in, and the result.</param>
public sealed record SolutionStep(string What, string Method, string Numbers);
