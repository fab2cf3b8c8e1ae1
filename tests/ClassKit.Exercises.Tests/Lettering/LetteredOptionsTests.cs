using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Lettering;

namespace ClassKit.Exercises.Tests.Lettering;

public sealed class LetteredOptionsTests
{
    private static readonly OptionList List = new(
        "causes",
        ChoiceKind.Match,
        [new("a_one", "One."), new("b_two", "Two."), new("c_three", "Three."), new("d_four", "Four.")]
    );

    private static readonly Exercise Exercise = new(
        "loaf",
        "Loaf",
        "yeast",
        ExerciseLevel.Open,
        5,
        "common practice, no source",
        "A loaf.",
        [new("count", "Count", "", 1, 10_000, 1)],
        [],
        [new("why", "Why?", CellFormula.Of("=2"), "", Tolerance.Absolute(0), 1, false, []) { Choice = new(List, "Because.") }],
        []
    );

    private static LetteredOptions For(int count) =>
        LetteredOptions.Of(Exercise, List, new Dictionary<string, decimal> { ["count"] = count });

    [Fact]
    public void The_same_numbers_give_the_same_order_and_no_option_is_lost()
    {
        Assert.Equal(For(7).InOrder, For(7).InOrder);
        Assert.Equal(List.Options.Select(option => option.Id), For(7).InOrder.Select(option => option.Id).Order(StringComparer.Ordinal));
        Assert.Equal(["A", "B", "C", "D"], For(7).Letters);
    }

    /// <summary>
    /// Of 24 orders each comes as often as another: 10,000 draws give each 417 with a standard deviation of 20 (binomial), and five of
    /// those are never seen by chance.
    /// </summary>
    [Fact]
    public void Every_order_is_as_likely_as_another()
    {
        var orders = Enumerable
            .Range(1, 10_000)
            .GroupBy(count => string.Join(' ', For(count).InOrder.Select(option => option.Id)))
            .Select(order => order.Count())
            .ToList();

        Assert.Equal(24, orders.Count);
        Assert.All(orders, count => Assert.InRange(count, 317, 517));
    }

    [Fact]
    public void A_letter_leads_to_its_option_and_back()
    {
        var options = For(3);

        foreach (var (number, option) in List.Options.Index())
        {
            Assert.Equal(option, options.At(options.LetterOf(number + 1)[0]));
            Assert.Equal(option, options.At(char.ToLowerInvariant(options.LetterOf(option)[0])));
            Assert.Equal(
                $"{options.LetterOf(option)}: {option.Words}",
                LetteredAnswer.Of(Exercise, Exercise.Parts[0], new Dictionary<string, decimal> { ["count"] = 3 }, number + 1)
            );
        }
        Assert.Null(options.At('E'));
        Assert.Null(options.At('1'));
        Assert.Equal("", options.LetterOf(5));
        Assert.Equal("", options.LetterOf(1.5));
    }
}
