using System.Diagnostics.CodeAnalysis;

namespace ClassKit.Baking.Explanations;

/// <summary>The outcome of a computation over what a user typed: a value and how it came about, or the reason why there is none.</summary>
/// <typeparam name="T">What is computed.</typeparam>
/// <remarks>Bad input is data here. Exceptions are left for mistakes in our own code.</remarks>
public sealed class Computed<T>
    where T : notnull
{
    private readonly T? _value;
    private readonly Explanation? _explanation;

    private Computed(T value, Explanation? explanation)
    {
        _value = value;
        _explanation = explanation;
    }

    private Computed(Impossibility why) => Why = why;

    /// <summary>The reason why there is no value; null if there is one.</summary>
    public Impossibility? Why { get; }

    /// <summary>True if there is a value.</summary>
    public bool IsPossible => Why is null;

    /// <summary>How the value was computed, the last step giving it; null if there is none, or if it was only passed on.</summary>
    public Explanation? Explanation => _explanation ?? (_value as IExplained)?.Explanation;

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">There is none: ask <see cref="IsPossible"/> or use <see cref="TryGet"/>.</exception>
    public T Value => Why is null ? _value! : throw new InvalidOperationException($"There is no value. {Why}");

    /// <summary>The value or the reason, whichever there is.</summary>
    public bool TryGet([MaybeNullWhen(false)] out T value, [NotNullWhen(false)] out Impossibility? why)
    {
        value = _value;
        why = Why;
        return why is null;
    }

    /// <summary>Carries a value on through <paramref name="next"/>, or the reason on unchanged.</summary>
    public Computed<TNext> Then<TNext>(Func<T, Computed<TNext>> next)
        where TNext : notnull
    {
        ArgumentNullException.ThrowIfNull(next);
        return Why is null ? next(_value!) : Why;
    }

    /// <summary>The same value with the steps that led to it.</summary>
    internal Computed<T> By(Explanation explanation) => Why is null ? new(_value!, explanation) : this;

    /// <summary>A value.</summary>
    public static implicit operator Computed<T>(T value) => new(value, null);

    /// <summary>A reason.</summary>
    public static implicit operator Computed<T>(Impossibility why) => new(why);
}
