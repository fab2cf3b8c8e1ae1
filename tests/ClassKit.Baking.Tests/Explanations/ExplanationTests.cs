using System.Reflection;
using ClassKit.Baking.Explanations;

namespace ClassKit.Baking.Tests.Explanations;

/// <summary>Every computed thing explains itself, and what it prints is right when it is worked out again from the text.</summary>
public sealed class ExplanationTests
{
    /// <summary>Steps without arithmetic take their value from a table or a model, and say which.</summary>
    private static readonly string[] Tables =
    [
        "IAPWS-IF97",
        "CRC",
        "by the model",
        "of yeast at",
        "next whole number",
        "if none escaped",
        "minute by minute",
        "at its price",
        "with its vapour",
        "left of",
        "sugars of the dough",
        "dough's water",
        "all the water",
    ];

    private static IEnumerable<ExplainedStep> Steps =>
        Samples.All.Select(sample => sample.Explanation!).Concat(Samples.InBudgets).SelectMany(explanation => explanation.Steps);

    [Fact]
    public void Every_public_computation_is_sampled()
    {
        var computing = typeof(Computed<>)
            .Assembly.GetExportedTypes()
            .SelectMany(type =>
                type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            )
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
            Assert.True(
                value.Meets(StepArithmetic.Result(sample.Explanation.Steps[^1].Result)),
                $"{sample.Name}: {sample.Value} against {sample.Explanation.Steps[^1].Result}"
            );
        });

    [Fact]
    public void What_is_printed_is_right_when_worked_out_again() =>
        Assert.All(Steps.Where(step => step.Numbers.Length > 0), step =>
            Assert.True(StepArithmetic.Of(step.Numbers).Meets(StepArithmetic.Result(step.Result)), step.ToString())
        );

    /// <summary>
    /// What computations rest on is known to two or three digits. Percentages and pressures keep a tenth, so that they add up; money its
    /// cents.
    /// </summary>
    [Fact]
    public void What_is_worked_out_is_printed_to_three_digits_and_no_more() => Assert.All(Steps.Select(step => step.Result), result =>
        {
            var number = result.Split(' ')[0].Replace(",", "", StringComparison.Ordinal).TrimStart('-');
            var digits = number.Replace(".", "", StringComparison.Ordinal).TrimStart('0').Length;
            var decimals = number.Contains('.', StringComparison.Ordinal)
                ? number.Length - number.IndexOf('.', StringComparison.Ordinal) - 1
                : 0;
            var isMoney = !result.Contains(' ', StringComparison.Ordinal) && decimals <= 2;
            var keepsATenth = result.EndsWith('%') || result.EndsWith("kPa", StringComparison.Ordinal);
            Assert.True(decimals == 0 || digits <= 3 || isMoney || (keepsATenth && decimals == 1), result);
        });

    [Fact]
    public void A_step_without_arithmetic_says_where_its_value_is_from() =>
        Assert.All(Steps.Where(step => step.Numbers.Length == 0), step =>
            Assert.True(Tables.Any(table => step.Formula.Contains(table, StringComparison.Ordinal)), step.ToString())
        );

    [Fact]
    public void Numbers_are_printed_to_three_digits_and_whole_ones_whole()
    {
        Assert.Equal("0.00123", Figures.Show(0.0012345));
        Assert.Equal("0.5", Figures.Show(0.5));
        Assert.Equal("16,747", Figures.Show(16747.0588));
        Assert.Equal("0", Figures.Show(-0.0));
        Assert.Equal("93.26", Figures.Exact(93.26));
        Assert.Equal("269.8 %", Figures.PerHundredOf(269.81));
        Assert.Equal("97.5 kPa", Figures.Pascals(ClassKit.Baking.Quantities.Pressure.FromPascals(97_539.57)));
    }
}
