using ClassKit.Content.Learning;
using ClassKit.UseCases.Checking;

namespace ClassKit.UseCases.Learning;

/// <summary>An exercise with misconceptions that it did not have, proved again.</summary>
/// <param name="Name">Its file's name.</param>
/// <param name="Text">What the file is to hold.</param>
/// <param name="Added">What came in.</param>
/// <param name="Before">The proof without them.</param>
/// <param name="After">The proof with them: variants still keep them apart from the key and from the others, or it names the one that they
/// do not.</param>
public sealed record LearnedExercise(
    string Name,
    string Text,
    IReadOnlyList<ProposedMisconception> Added,
    ProvedExercise Before,
    ProvedExercise After
);
