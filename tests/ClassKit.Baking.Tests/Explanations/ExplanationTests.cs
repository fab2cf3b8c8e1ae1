using System.Reflection;
using ClassKit.Baking.Explanations;

namespace ClassKit.Baking.Tests.Explanations;

/// <summary>Every computed thing explains itself, and what it prints is right when it is worked out again from the text.</summary>
public sealed class ExplanationTests
{
    /// <summary>Steps without arithmetic take their value from a table or a model, and say which.</summary>
    private static readonly string[] Tables = ["IAPWS-IF97", "CRC", "by the model", "of yeast at", "next whole number", "if none escaped", "minute by minute", "at its price", "with its vapour", "left of", "sugars of the dough", "dough's water", "all the water"];

    [Fact]
    public void Every_public_computation_is_sampled()
    {
        var computing = typeof(Computed<>).Assembly.GetExportedTypes()
            .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(method => method.ReturnType.IsGenericType && method.ReturnType.GetGenericTypeDefinition() == typeof(Computed<>))
            .Where(method => method.DeclaringType is { IsGenericType: false })
            .Select(method => $"{method.DeclaringType!.Name}.{method.Name}")
            .Distinct();
        Assert.Empty(computing.Except(Samples.All.Select(sample => sample.Name)));
    }

    [Fact]
    public void Every_computation_has_steps_and_its_last_step_gives_the_value() => Assert.All(Samples.All, sample =>
    {
        Assert.NotNull(sample.Explanation);
        Assert.NotEmpty(sample.Explanation.Steps);
        Interval value = new(sample.Value, sample.Value);
        Assert.True(value.Meets(StepArithmetic.Result(sample.Explanation.Steps[^1].Result)), $"{sample.Name}: {sample.Value} against {sample.Explanation.Steps[^1].Result}");
    });

    private static bool IsBudget(Sample sample) => sample.Name == "GasBudget.Of";

    [Fact]
    public void What_is_printed_is_right_when_worked_out_again() => Assert.All(
        Samples.All.Where(sample => !IsBudget(sample)).Select(sample => sample.Explanation!).SelectMany(explanation => explanation.Steps).Where(step => step.Numbers.Length > 0),
        step => Assert.True(StepArithmetic.Of(step.Numbers).Meets(StepArithmetic.Result(step.Result)), step.ToString()));

    [Fact]
    public void What_a_gas_budget_prints_is_right_to_three_digits_when_worked_out_again() => Assert.All(
        Samples.All.Where(IsBudget).Select(sample => sample.Explanation!).Concat(Samples.InBudgets).SelectMany(explanation => explanation.Steps).Where(step => step.Numbers.Length > 0),
        step => Assert.True(StepArithmetic.Of(step.Numbers, ofThreeDigits: true).Meets(StepArithmetic.Result(step.Result, ofThreeDigits: true)), step.ToString()));

    /// <summary>What a budget rests on is known to two digits at best; constants of nature and numbers above a thousand keep theirs.</summary>
    [Fact]
    public void A_gas_budget_prints_three_digits_and_no_more() => Assert.All(
        Samples.InBudgets.SelectMany(explanation => explanation.Steps).Select(step => step.Result),
        result => Assert.True(result.Split(' ')[0].TrimStart('0', '.') is var digits && (digits.Count(char.IsAsciiDigit) <= 3 || !digits.Contains('.', StringComparison.Ordinal) || result.EndsWith("°C", StringComparison.Ordinal)), result));

    [Fact]
    public void A_step_without_arithmetic_says_where_its_value_is_from() => Assert.All(
        Samples.All.Select(sample => sample.Explanation!).Concat(Samples.InBudgets).SelectMany(explanation => explanation.Steps).Where(step => step.Numbers.Length == 0),
        step => Assert.True(Tables.Any(table => step.Formula.Contains(table, StringComparison.Ordinal)), step.ToString()));

    [Fact]
    public void Small_numbers_are_printed_with_three_digits_and_large_ones_with_their_cents()
    {
        Assert.Equal("0.00123", Figures.Show(0.0012345));
        Assert.Equal("0.5", Figures.Show(0.5));
        Assert.Equal("16,747.06", Figures.Show(16747.0588));
        Assert.Equal("0", Figures.Show(-0.0));
    }
}
