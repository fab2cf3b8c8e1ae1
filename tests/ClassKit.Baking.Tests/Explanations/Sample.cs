using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Explanations;

/// <summary>One public computation with ordinary input: its steps, and the number that the last step must give.</summary>
/// <param name="Name">Type and method.</param>
/// <param name="Explanation">Null if it does not explain itself, which is a fault.</param>
/// <param name="Value">The main number of the result, in the base units of <see cref="StepArithmetic"/>.</param>
internal sealed record Sample(string Name, Explanation? Explanation, double Value)
{
    public override string ToString() => Name;

    public static Sample Of(string name, Computed<Mass> computed) => new(name, computed.Explanation, computed.Value.Grams);

    public static Sample Of(string name, Computed<Volume> computed) => new(name, computed.Explanation, computed.Value.Litres);

    public static Sample Of(string name, Computed<double> computed) => new(name, computed.Explanation, computed.Value);

    public static Sample Of(string name, Computed<Band<double>> computed) => new(name, computed.Explanation, computed.Value.Typical);

    public static Sample Of(string name, Computed<Money> computed) => new(name, computed.Explanation, (double)computed.Value.Amount);

    public static Sample Of<T>(string name, Computed<T> computed, Func<T, double> value)
        where T : notnull => new(name, computed.Explanation, value(computed.Value));
}
