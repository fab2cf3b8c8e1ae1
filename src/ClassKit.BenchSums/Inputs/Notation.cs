using ClassKit.Baking.Explanations;

namespace ClassKit.BenchSums.Inputs;

/// <summary>How people write a kind of thing, and how that is read.</summary>
/// <typeparam name="T">What is read.</typeparam>
/// <param name="Shape">What is expected, with an example: <c>a mass, as 500 g or 1 lb 2 oz</c>.</param>
/// <param name="Read">The thing, or why the text is none.</param>
public sealed record Notation<T>(string Shape, Func<string, Computed<T>> Read)
    where T : notnull
{
    /// <summary>A notation of a reader that only says yes or no.</summary>
    internal static Notation<T> Of(string shape, TryRead read) =>
        new(shape, text => read(text, out var value) ? value : Unreadable(text, shape));

    /// <summary>Reads a text, or not.</summary>
    internal delegate bool TryRead(string text, out T value);

    private static Impossibility Unreadable(string text, string shape) => new("unreadable", $"`{text}` was typed.", $"Type {shape}.");
}
