using System.Collections;

namespace ClassKit.UseCases.Output;

/// <summary>A list of which each item is made when it is asked for, and none is kept.</summary>
internal sealed class Projected<TFrom, TTo>(IReadOnlyList<TFrom> from, Func<TFrom, TTo> make) : IReadOnlyList<TTo>
{
    public int Count => from.Count;

    public TTo this[int index] => make(from[index]);

    public IEnumerator<TTo> GetEnumerator() => from.Select(make).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
