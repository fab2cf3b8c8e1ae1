using System.Text.Json.Nodes;

namespace ClassKit.UseCases.Grading.Facts;

/// <summary>How one kind of fact stands in grades.json.</summary>
/// <param name="Type">The kind.</param>
/// <param name="Word">What it is called there, stable over versions.</param>
/// <param name="Write">Puts its fields into an object.</param>
/// <param name="Read">Makes the fact of such an object.</param>
internal sealed record FactShape<TFact>(Type Type, string Word, Action<TFact, JsonObject> Write, Func<FactReader, TFact> Read)
    where TFact : class
{
    /// <summary>The shape of a kind with fields.</summary>
    public static FactShape<TFact> Of<TKind>(string word, Action<TKind, JsonObject> write, Func<FactReader, TKind> read)
        where TKind : class, TFact => new(typeof(TKind), word, (fact, to) => write((TKind)fact, to), read);

    /// <summary>The shape of a kind that says all by being there.</summary>
    public static FactShape<TFact> Of<TKind>(string word)
        where TKind : class, TFact, new() => new(typeof(TKind), word, (_, _) => { }, _ => new TKind());
}
