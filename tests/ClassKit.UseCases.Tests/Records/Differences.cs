using System.Collections;
using System.Reflection;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;

namespace ClassKit.UseCases.Tests.Records;

/// <summary>Where two models differ, looked for in every public field of everything that they hold.</summary>
internal sealed class Differences
{
    private readonly HashSet<(object, object)> _compared = new(Pairs.Instance);
    private readonly List<string> _found = [];

    /// <summary>The path of every difference, with both values; empty for models that are alike.</summary>
    public static IReadOnlyList<string> Between(object? one, object? other)
    {
        var differences = new Differences();
        differences.Compare("", one, other);
        return differences._found;
    }

    private void Compare(string path, object? one, object? other)
    {
        if (one is null || other is null || ReferenceEquals(one, other))
        {
            if (!ReferenceEquals(one, other))
                Tell(path, one, other);
        }
        else if (one is string or CellValue or IConvertible or DateTimeOffset or TimeSpan)
        {
            if (!one.Equals(other))
                Tell(path, one, other);
        }
        else if (one is CellFormula formula)
        {
            if (formula.Text != (other as CellFormula)?.Text)
                Tell(path, one, other);
        }
        else if (one is IEnumerable)
        {
            Items(path, [.. Sorted((IEnumerable)one)], [.. Sorted((IEnumerable)other)]);
        }
        else if (one.GetType() != other.GetType())
        {
            Tell(path, one.GetType(), other.GetType());
        }
        else if (_compared.Add((one, other)))
        {
            foreach (
                var property in one.GetType()
                    .GetProperties(BindingFlags.Public | BindingFlags.Instance)
                    .Where(property => property.GetIndexParameters().Length == 0)
            )
                Compare($"{path}.{property.Name}", property.GetValue(one), property.GetValue(other));
            foreach (var field in one.GetType().GetFields(BindingFlags.Public | BindingFlags.Instance))
                Compare($"{path}.{field.Name}", field.GetValue(one), field.GetValue(other));
        }
    }

    /// <summary>Lists in their order; of sets and maps the order says nothing.</summary>
    private static IEnumerable<object?> Sorted(IEnumerable items)
    {
        var all = items.Cast<object?>();
        var isOrdered =
            items is IList
            || !items
                .GetType()
                .GetInterfaces()
                .Any(known =>
                    known.IsGenericType
                    && (
                        known.GetGenericTypeDefinition() == typeof(IReadOnlySet<>)
                        || known.GetGenericTypeDefinition() == typeof(IReadOnlyDictionary<,>)
                    )
                );
        return isOrdered ? all : all.OrderBy(item => item?.ToString(), StringComparer.Ordinal);
    }

    private void Items(string path, IReadOnlyList<object?> one, IReadOnlyList<object?> other)
    {
        if (one.Count != other.Count)
            Tell($"{path}.Count", one.Count, other.Count);
        for (var at = 0; at < Math.Min(one.Count, other.Count); at++)
            Compare($"{path}[{at}]", one[at], other[at]);
    }

    private void Tell(string path, object? one, object? other) => _found.Add($"{path}: {one ?? "null"} ≠ {other ?? "null"}");

    /// <summary>The same two objects, and not two that are equal.</summary>
    private sealed class Pairs : IEqualityComparer<(object One, object Other)>
    {
        public static Pairs Instance { get; } = new();

        public bool Equals((object One, object Other) x, (object One, object Other) y) =>
            ReferenceEquals(x.One, y.One) && ReferenceEquals(x.Other, y.Other);

        public int GetHashCode((object One, object Other) pair) =>
            HashCode.Combine(
                System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(pair.One),
                System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(pair.Other)
            );
    }
}
