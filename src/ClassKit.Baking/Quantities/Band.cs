namespace ClassKit.Baking.Quantities;

/// <summary>What is known only as a range: never shown as one false-precise number.</summary>
/// <typeparam name="T">A number or a quantity, in its own unit.</typeparam>
/// <param name="Low">The lower end: no more than <paramref name="Typical"/>.</param>
/// <param name="Typical">A middling value, not a measured mean.</param>
/// <param name="High">The upper end: no less than <paramref name="Typical"/>.</param>
/// <remarks>Who puts a falling function through a band turns the ends round; a test looks at every band of budgets and settings.</remarks>
public readonly record struct Band<T>(T Low, T Typical, T High)
{
    /// <summary>Each of the three put through an increasing function.</summary>
    public Band<TResult> Map<TResult>(Func<T, TResult> increasing)
    {
        ArgumentNullException.ThrowIfNull(increasing);
        return new(increasing(Low), increasing(Typical), increasing(High));
    }

    /// <summary>Low with low, typical with typical, high with high.</summary>
    public Band<TResult> With<TOther, TResult>(Band<TOther> other, Func<T, TOther, TResult> increasing)
    {
        ArgumentNullException.ThrowIfNull(increasing);
        return new(increasing(Low, other.Low), increasing(Typical, other.Typical), increasing(High, other.High));
    }
}
