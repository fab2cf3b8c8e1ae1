using ClassKit.Baking.Explanations;

namespace ClassKit.BenchSums.Inputs;

/// <summary>Something that a bench sum asks for.</summary>
/// <param name="Id">How it is named when typed: lower-case letters and dashes.</param>
/// <param name="Label">How pages name it.</param>
/// <param name="Example">What might be typed; what is taken where <paramref name="Need"/> is <see cref="InputNeed.Usual"/>.</param>
/// <param name="Need">What becomes of it if nothing is typed.</param>
public abstract record SumInput(string Id, string Label, string Example, InputNeed Need)
{
    /// <summary>What is expected, with an example.</summary>
    public abstract string Shape { get; }

    /// <summary>What is taken if nothing is typed; null if nothing is.</summary>
    public string? Usual => Need == InputNeed.Usual ? Example : null;

    /// <summary>Reads what was typed.</summary>
    internal abstract Computed<InputValue> Read(string text);
}

/// <summary>Something of one kind that a bench sum asks for.</summary>
/// <typeparam name="T">The kind.</typeparam>
/// <param name="Id">How it is named when typed.</param>
/// <param name="Label">How pages name it.</param>
/// <param name="Notation">How it is written.</param>
/// <param name="Example">What might be typed.</param>
/// <param name="Need">What becomes of it if nothing is typed.</param>
public sealed record SumInput<T>(string Id, string Label, Notation<T> Notation, string Example, InputNeed Need)
    : SumInput(Id, Label, Example, Need)
    where T : notnull
{
    /// <inheritdoc/>
    public override string Shape => Notation.Shape;

    internal override Computed<InputValue> Read(string text) => Notation.Read(text).Then<InputValue>(value => new InputValue<T>(value));
}
