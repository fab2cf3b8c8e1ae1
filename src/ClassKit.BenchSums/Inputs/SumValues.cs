namespace ClassKit.BenchSums.Inputs;

/// <summary>What was typed for a sum, read.</summary>
public sealed class SumValues
{
    private readonly IReadOnlyDictionary<string, InputValue> _values;

    internal SumValues(IReadOnlyDictionary<string, InputValue> values) => _values = values;

    /// <summary>The value of an input that is there.</summary>
    /// <exception cref="KeyNotFoundException">It is optional and was left out: ask <see cref="Has"/> first.</exception>
    internal T Of<T>(SumInput<T> input)
        where T : notnull => ((InputValue<T>)_values[input.Id]).Value;

    /// <summary>True if an optional input was typed.</summary>
    internal bool Has(SumInput input) => _values.ContainsKey(input.Id);
}
