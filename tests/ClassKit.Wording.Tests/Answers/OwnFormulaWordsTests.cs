using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.Results;
using ClassKit.Wording.Answers;

namespace ClassKit.Wording.Tests.Answers;

/// <summary>
/// What is told of formulas that are no near miss to the judge, of tens and of what is near enough: the cases are those that two
/// instructors who read 1,800 of these sentences found false, or true and of no help.
/// </summary>
public sealed class OwnFormulaWordsTests
{
    private static readonly Dictionary<string, string> Cells = new()
    {
        ["flour"] = "C7",
        ["wholemeal"] = "C8",
        ["seeds"] = "C9",
        ["salt"] = "C10",
        ["pack"] = "C11",
    };

    private static readonly Given[] Givens =
    [
        new("flour", "Bread flour", "g", 400, 900, 10),
        new("wholemeal", "Whole wheat flour", "g", 100, 300, 10),
        new("seeds", "Seeds", "g", 50, 90, 5),
        new("salt", "Salt", "%", 0.018m, 0.024m, 0.001m),
        new("pack", "One pack", "g", 100, 300, 50),
    ];

    /// <summary>Of a range every cell is seen that stands in it.</summary>
    [Theory]
    [InlineData("(flour+wholemeal)*salt", "=SUM(C7:C9)*C10", "C9 (seeds, g) was added", "Write (C7+C8)*C10.")]
    [InlineData("wholemeal/(flour+wholemeal)", "=C8/SUM(C7:C9)", "C9 (seeds, g) was added", "Write C8/(C7+C8).")]
    public void A_range_is_its_cells(string key, string formula, string what, string cure)
    {
        var told = Unnamed(key, formula);

        Assert.Contains(what, told, StringComparison.Ordinal);
        Assert.Contains(cure, told, StringComparison.Ordinal);
    }

    /// <summary>Whatever the key's own brackets: of a difference over what it is a share of as of 1 less a quotient.</summary>
    [Theory]
    [InlineData("1-wholemeal/flour", "=C7-C8/C7", "Write (C7-C8)/C7.")]
    [InlineData("(flour/2+seeds)/(flour/2+wholemeal)", "=C7/2+C9/C7/2+C8", "Write (C7/2+C9)/(C7/2+C8).")]
    [InlineData("flour*(wholemeal-seeds)/(wholemeal+pack)", "=C7*C8-C9/(C8+C11)", "Write C7*(C8-C9)/(C8+C11).")]
    public void Lost_brackets_are_called_brackets(string key, string formula, string cure)
    {
        var told = Unnamed(key, formula);

        Assert.StartsWith("It looks as if brackets are missing", told, StringComparison.Ordinal);
        Assert.EndsWith(cure, told, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("flour*salt", "=C7*C10/100", "C10 (salt) was divided by 100, though a percentage counts as a fraction", "Write C7*C10.")]
    [InlineData("flour/1000*seeds", "=C7*C9", "you did not divide by 1000", "Write C7*C9/1000.")]
    [InlineData("flour*100/seeds", "=C7/C9", "you did not multiply by 100", "Write C7/C9*100.")]
    [InlineData("flour/salt", "=(C7/C10)*100", "you multiplied by 100, which the method does not do there", "Write C7/C10.")]
    [InlineData(
        "flour*wholemeal/(seeds-pack*salt)",
        "=100*C7*C8/(C9-C11*C10)",
        "you multiplied by 100, which the method does not do there",
        "Write C7*C8/(C9-C11*C10)."
    )]
    [InlineData("flour*seeds", "=C7*C9/1000", "you divided by 1000, which the method does not do there", "Write C7*C9.")]
    [InlineData("flour*(1+salt)", "=C7*(1+C10)*100", "you multiplied by 100, which the method does not do there", "Write C7*(1+C10).")]
    public void A_step_of_tens_is_said_where_it_stands_or_is_missing(string key, string formula, string what, string cure)
    {
        var told = Told(
            key,
            formula,
            Outcome.Incorrect,
            new AnswerFinding.OffByTens(100, IsTooLarge: true) { Formula = Named(formula), Cells = Cells }
        );

        Assert.Contains(what, told, StringComparison.Ordinal);
        Assert.EndsWith(cure, told, StringComparison.Ordinal);
    }

    /// <summary>“You did not divide by 2” is untrue of somebody who did, elsewhere in the formula.</summary>
    [Theory]
    [InlineData("flour/2/(flour/2+wholemeal)", "=(C7/2)/(C7+C8)", "did not divide by 2 in one of the places where it belongs")]
    [InlineData("flour/2/(flour/2+wholemeal)", "=C7/(C7/2+C8)", "did not divide by 2 in one of the places where it belongs")]
    [InlineData("flour/2/wholemeal", "=C7/C8", "did not divide by 2.")]
    public void What_is_missing_in_one_place_and_stands_in_another_is_told_so(string key, string formula, string what) =>
        Assert.Contains(what, Unnamed(key, formula), StringComparison.Ordinal);

    [Theory]
    [InlineData(
        "wholemeal/flour",
        "=C7-C8",
        "It looks as if C8 (whole wheat flour, g) was subtracted from C7 (bread flour, g), where it has to be divided by it."
    )]
    [InlineData(
        "flour-wholemeal",
        "=C8/C7",
        "It looks as if C8 (whole wheat flour, g) was divided by C7 (bread flour, g), where it has to be subtracted from it."
    )]
    public void Another_operation_the_other_way_round_is_one_thing(string key, string formula, string what)
    {
        var isQuotient = key.Contains('/', StringComparison.Ordinal);
        var (used, belongs) = isQuotient
            ? (BinaryOperator.Subtract, BinaryOperator.Divide)
            : (BinaryOperator.Divide, BinaryOperator.Subtract);
        var told = Told(
            key,
            formula,
            Outcome.Incorrect,
            new AnswerFinding.NearMiss(
                [
                    new KeyEdit.OtherOperation(key, Named(formula)[1..], belongs, used),
                    new KeyEdit.TurnedRound(key, Named(formula)[1..], belongs),
                ],
                Named(formula),
                Cells,
                IsShown: true
            )
        );

        Assert.StartsWith(what, told, StringComparison.Ordinal);
    }

    [Fact]
    public void What_comes_near_enough_is_not_praised_as_the_method()
    {
        const string formula = "=C7*(1+C10)";

        Assert.Equal(
            "Right for your numbers, and near enough for all points. But it is not the method: it looks as if you multiplied by (1+C10) (C10: salt), where you need to divide by (1-C10) (C10: salt). Write C7/(1-C10).",
            Told("flour/(1-salt)", formula, Outcome.Sound, new AnswerFinding.Right { Formula = Named(formula), Cells = Cells })
        );
        // 28.35 for 28.3495 is no other method.
        Assert.Equal(
            "Right, and your formula follows the sheet's numbers.",
            Told("flour/28.3495", "=C7/28.35", Outcome.Sound, new AnswerFinding.Right { Formula = "=flour/28.35", Cells = Cells })
        );
    }

    /// <summary>Obeyed, the formula was typed over and its share lost; and a wrong percentage is no better for its sign.</summary>
    [Fact]
    public void Nobody_is_told_to_type_a_percentage_over_a_formula()
    {
        AnswerFinding beside = new AnswerFinding.HundredfoldPercent(55);

        Assert.Contains(
            "so type the sign",
            Told("flour/wholemeal", null, Outcome.ValueOnly, new AnswerFinding.RightTyped(), beside),
            StringComparison.Ordinal
        );
        var formula = Told("flour/wholemeal", "=C7/C8*100", Outcome.Sound, new AnswerFinding.Right(), beside);
        Assert.DoesNotContain("type the sign", formula, StringComparison.Ordinal);
        Assert.Contains("Leave the step to percent", formula, StringComparison.Ordinal);
        Assert.DoesNotContain(
            "Your cell holds",
            Told("flour/wholemeal", "=C8/C7*100", Outcome.Incorrect, new AnswerFinding.NotRight(), beside),
            StringComparison.Ordinal
        );
    }

    /// <summary>A cure that is longer than the method, and writes once more what it undoes elsewhere, teaches nothing.</summary>
    [Theory]
    [InlineData("flour*16+wholemeal", "=(C7+C8)*16", "Write C7*16+C8.")]
    [InlineData("flour+wholemeal", "=C7*(1+C8)", "Write C7+C8.")]
    public void No_cure_takes_back_what_it_puts_in(string key, string formula, string cure) =>
        Assert.EndsWith(cure, Unnamed(key, formula), StringComparison.Ordinal);

    /// <summary>Nobody was to be told that their cells are not used: they are, by way of others.</summary>
    [Fact]
    public void What_is_used_by_way_of_other_cells_is_not_called_unused()
    {
        var told = Told(
            "flour*wholemeal*seeds+pack",
            "=F26*F27",
            Outcome.Incorrect,
            new AnswerFinding.NotRight { Formula = "=SQRT(flour)*wholemeal*wholemeal*pack", Cells = Cells }
        );

        Assert.Equal(
            "This is not right, and we could not see what happened. Lay your formula beside the worked solution of part a; in your cells it is C7*C8*C9+C11. What the method uses and your formula does not: C9 (seeds, g).",
            told
        );
    }

    /// <summary>85 g and one more filled as many packs: a whole number agrees by chance, and grams are no share.</summary>
    [Theory]
    [InlineData("ROUNDUP(seeds/(1-salt)/pack,0)", "=ROUNDUP(C9/C11,0)")]
    [InlineData("ROUNDUP(flour*seeds/(1-salt)/pack,0)", "=ROUNDUP(C7*C9/C11,0)")]
    public void No_amount_is_called_a_share(string key, string formula) =>
        Assert.DoesNotContain("1+C", Unnamed(key, formula), StringComparison.Ordinal);

    [Fact]
    public void A_rounding_of_the_right_kind_to_other_digits_is_told_as_that() =>
        Assert.Equal(
            "The method is right, but ROUNDUP rounds to other digits here than the method does. Write ROUNDUP(C7/C11,0) instead of ROUNDUP(C7/C11,1).",
            Told(
                "ROUNDUP(flour/pack,0)",
                "=ROUNDUP(C7/C11,1)",
                Outcome.Incorrect,
                new AnswerFinding.RoundsWithin("ROUNDUP(flour/pack,1)", "ROUNDUP(flour/pack,0)", Cells)
            )
        );

    /// <summary>To keep all digits would be wrong where the method rounds.</summary>
    [Theory]
    [InlineData("flour*salt", "show them to keep all digits")]
    [InlineData("ROUNDUP(flour/pack,0)", "show them why the method rounds with ROUNDUP")]
    public void A_class_that_rounded_is_shown_what_the_method_does(string key, string words) =>
        Assert.Equal(
            words,
            RoundedOfClassWords.Show(new("water", "How much?", CellFormula.Of("=" + key), "g", Tolerance.Absolute(0.5), 2, true, []))
        );

    /// <summary>Digits of a rounding are no quantity.</summary>
    [Fact]
    public void One_pack_too_many_is_told_as_one_too_many() =>
        Assert.Contains(
            "1 was added, which the method does not do there",
            Unnamed("ROUNDUP(flour/pack,0)", "=ROUNDUP(C7/C11,0)+1"),
            StringComparison.Ordinal
        );

    private static string Unnamed(string key, string formula) =>
        Told(key, formula, Outcome.Incorrect, new AnswerFinding.NotRight { Formula = Named(formula), Cells = Cells });

    /// <summary>Over the names as the judge has it: what a range holds are its cells.</summary>
    private static string Named(string formula)
    {
        var named = formula.Replace("C7:C9", "C7,C8,C9", StringComparison.Ordinal);
        foreach (var (name, cell) in Cells.OrderByDescending(cell => cell.Value.Length))
            named = named.Replace(cell, name, StringComparison.Ordinal);
        return named;
    }

    private static string Told(string key, string? formula, Outcome outcome, params AnswerFinding[] findings)
    {
        var part = new Part("water", "How much?", CellFormula.Of("=" + key), "g", Tolerance.Absolute(0.5), 2, true, []);
        var exercise = new Exercise("dough", "Dough", "mixing", ExerciseLevel.Standard, 5, "arithmetic", "Mix.", Givens, [], [part], []);
        return FindingWords.Of(
            new AnswerGrade(exercise, part, outcome, 0, 2, CellValue.Blank, 1, formula, findings, new Dictionary<string, double>())
        );
    }
}
