using ClassKit.Baking.Explanations;

namespace ClassKit.BenchSums.Results;

/// <summary>What a sum comes to and how.</summary>
/// <param name="Lines">The answers, the one that was asked for first.</param>
/// <param name="Workings">Step by step, in the order of computing; each names its model or source.</param>
/// <param name="Advice">What to mind.</param>
public sealed record SumResult(IReadOnlyList<SumLine> Lines, IReadOnlyList<Explanation> Workings, IReadOnlyList<Advice> Advice)
{
    /// <summary>The result of a single computation that brings its steps along.</summary>
    internal static Computed<SumResult> Of<T>(
        Computed<T> computed,
        Func<T, IReadOnlyList<SumLine>> lines,
        IReadOnlyList<Advice>? advice = null
    )
        where T : notnull =>
        computed.Then<SumResult>(value => new SumResult(lines(value), computed.Explanation is { } steps ? [steps] : [], advice ?? []));

    /// <summary>The result of a single computation with a single answer.</summary>
    internal static Computed<SumResult> Of<T>(Computed<T> computed, string label, Func<T, SumQuantity> quantity)
        where T : notnull => Of(computed, value => [new(label, quantity(value))]);

    /// <summary>Several results one after the other, or the first reason why one of them is missing.</summary>
    internal static Computed<SumResult> Together(params IReadOnlyList<Computed<SumResult>> parts) =>
        parts.FirstOrDefault(part => !part.IsPossible) is { } missing
            ? missing
            : new SumResult(
                [.. parts.SelectMany(part => part.Value.Lines)],
                [.. parts.SelectMany(part => part.Value.Workings)],
                [.. parts.SelectMany(part => part.Value.Advice)]
            );
}
