namespace ClassKit.Terms.Difficulty;

/// <summary>What one student returned of one deal.</summary>
/// <param name="Class">What the class is called.</param>
/// <param name="Deal">The deal's code.</param>
/// <param name="Answers">Every answer that could be judged, each part once.</param>
public sealed record PastWork(string Class, string Deal, IReadOnlyList<PastAnswer> Answers);
