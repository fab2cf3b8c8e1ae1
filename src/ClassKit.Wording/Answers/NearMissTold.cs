using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>
/// What is told of a near miss, and of what: nobody is led to a line of the worked solution that has nothing to do with it.
/// </summary>
/// <param name="What">What it looks like, without its full stop.</param>
/// <param name="Cure">What to write or to do: a sentence with a space before it; empty where that is not known.</param>
/// <param name="Of">The edits that it speaks of.</param>
internal sealed record NearMissTold(string What, string Cure, IReadOnlyList<KeyEdit> Of);
