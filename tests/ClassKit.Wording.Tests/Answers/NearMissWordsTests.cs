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
/// The cases are those in which four teachers who read two hundred of these sentences found one untrue or unclear, or knew a better one.
/// </summary>
public sealed class NearMissWordsTests
{
    private static readonly IReadOnlyDictionary<string, string> Cells = new Dictionary<string, string>
    {
        ["flour"] = "C7",
        ["room"] = "C8",
        ["want"] = "C9",
        ["loss"] = "C10",
        ["friction"] = "C11",
    };

    private static readonly Given[] Givens =
    [
        new("flour", "Flour", "°C", 18, 24, 1),
        new("room", "Room", "°C", 18, 24, 1),
        new("want", "Dough wanted", "°C", 22, 28, 1),
        new("loss", "Lost in the oven", "%", 0.05m, 0.2m, 0.01m),
        new("friction", "Rise by mixing", "°C", 2, 12, 1),
    ];

    [Fact]
    public void Missing_brackets_are_called_brackets_whatever_operation_they_amount_to()
    {
        var told = Told(
            "3*want-(room+flour)-friction",
            "=3*C9-C8+C7-C11",
            "=3*want-(room-flour)-friction",
            new KeyEdit.OtherOperation("room+flour", "room-flour", BinaryOperator.Add, BinaryOperator.Subtract)
        );

        Assert.StartsWith(
            "It looks as if brackets are missing, or stand around something else: a spreadsheet works from left to right, and multiplies and divides before it adds and subtracts. Write 3*C9-(C8+C7)-C11.",
            told,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_the_student_did_not_write_is_not_called_theirs()
    {
        KeyEdit found = new KeyEdit.TurnedRound("want-room", "room-want", BinaryOperator.Subtract);

        var told = Told("flour*(want-room)/(want-friction)", "=C7*(C9-C8)/(C11-C9)", "=flour*(room-want)/(want-friction)", found);

        Assert.Equal(
            "It looks as if C9 (dough wanted, °C) was subtracted from C11 (rise by mixing, °C), and not the other way round. Write C7*(C9-C8)/(C9-C11).",
            told
        );

        told = Told("flour*(want-room)/(want-friction)", "=(C7*C8-C7*C9)/(C9-C11)", "=flour*(room-want)/(want-friction)", found);

        Assert.Equal(
            "It looks as if (C7*C9) (C7: flour, °C; C9: dough wanted, °C) was subtracted from (C7*C8) (C7: flour, °C; C8: room, °C), and not the other way round. Write (C7*C9-C7*C8)/(C9-C11).",
            told
        );
    }

    /// <summary>
    /// “Your formula comes to the same as C7*C11*(C8*C13), which is one step or two from the right one” led nowhere: the operator that is
    /// another stands there for all to see.
    /// </summary>
    [Fact]
    public void Brackets_that_change_nothing_do_not_hide_an_operator()
    {
        var told = Told(
            "flour*loss+want*room",
            "=C7*C10*C9*C8",
            "=flour*loss*(want*room)",
            new KeyEdit.OtherOperation("flour*loss+want*room", "flour*loss*(want*room)", BinaryOperator.Add, BinaryOperator.Multiply)
        );

        Assert.Equal(
            "It looks as if you multiplied by (C9*C8) (C9: dough wanted, °C; C8: room, °C), where you need to add it. Write C7*C10+C9*C8.",
            told
        );
    }

    /// <summary>1-C7-C8 is 1 less the sum of both, and was yet typed with a minus for a division.</summary>
    [Fact]
    public void A_sign_is_told_as_it_was_typed()
    {
        var told = Told(
            "1-flour/room",
            "=1-C7-C8",
            "=1-(flour+room)",
            new KeyEdit.OtherOperation("flour/room", "flour+room", BinaryOperator.Divide, BinaryOperator.Add)
        );

        Assert.Equal("It looks as if C8 (room, °C) was subtracted, where you need to divide by it. Write 1-C7/C8.", told);
    }

    [Theory]
    [InlineData("=(C7-32)/1.8/1.8", "you divided by 1.8 twice. Write (C7-32)/1.8.")]
    [InlineData("=(C7-32)*(1/1.8^2)", "you raised to the power 2, which the method does not do there. Write (C7-32)/1.8.")]
    public void What_is_there_twice_is_to_be_left_out_once(string formula, string words) =>
        Assert.Equal(
            $"It looks as if {words}",
            Told("(flour-32)/1.8", formula, "=(flour-32)/1.8/1.8", new KeyEdit.CountedTwice("(flour-32)/1.8", "(flour-32)/1.8/1.8", "1.8"))
        );

    /// <summary>Two of the numbers of one sheet were 16, and three of its labels said butter.</summary>
    [Theory]
    [InlineData("flour*16", "flour+16", "16 was added, where you need to multiply by it. Compare")]
    [InlineData(
        "flour/(want+room)",
        "flour+(want+room)",
        "what comes of “dough wanted” (°C) and “room” (°C) was added, where you need to divide by it. Compare"
    )]
    public void An_operation_is_told_with_what_it_was_done_with(string key, string miss, string words)
    {
        var (belongs, used) = (key[5] == '*' ? BinaryOperator.Multiply : BinaryOperator.Divide, BinaryOperator.Add);

        Assert.StartsWith(
            $"From your number, it looks as if {words}",
            Told(key, null, "=" + miss, new KeyEdit.OtherOperation(key, miss, belongs, used)),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(
        "flour*loss+want*room",
        "flour*loss+loss*room",
        "want",
        "loss",
        "you multiplied “room” (°C) by “lost in the oven” instead of by “dough wanted” (°C)"
    )]
    [InlineData("flour+room", "flour+want", "room", "want", "you added “dough wanted” (°C), and not “room” (°C), to “flour” (°C)")]
    [InlineData("flour-room", "flour-want", "room", "want", "you subtracted “dough wanted” (°C), and not “room” (°C), from “flour” (°C)")]
    [InlineData(
        "flour-room",
        "want-room",
        "flour",
        "want",
        "you subtracted “room” (°C) from “dough wanted” (°C) instead of from “flour” (°C)"
    )]
    [InlineData("flour/room", "flour/want", "room", "want", "you divided “flour” (°C) by “dough wanted” (°C) instead of by “room” (°C)")]
    [InlineData("flour/room", "want/room", "flour", "want", "you divided “dough wanted” (°C), and not “flour” (°C), by “room” (°C)")]
    [InlineData("flour*room", "flour*flour", "room", "flour", "you multiplied “flour” (°C) by itself instead of by “room” (°C)")]
    [InlineData("flour+room", "flour+flour", "room", "flour", "you added “flour” (°C), and not “room” (°C), to “flour” (°C)")]
    [InlineData(
        "flour*(1-loss)*room",
        "flour*(1-loss)*want",
        "room",
        "want",
        "you multiplied by “dough wanted” (°C) instead of by “room” (°C)"
    )]
    [InlineData(
        "ROUNDUP(flour/room,0)",
        "ROUNDUP(flour/want,0)",
        "room",
        "want",
        "you divided “flour” (°C) by “dough wanted” (°C) instead of by “room” (°C)"
    )]
    [InlineData("flour*(1+loss)^room", "flour*(1+room)^room", "loss", "room", "“room” (°C) was used instead of “lost in the oven”")]
    public void Of_a_typed_number_it_is_said_what_the_wrong_quantity_was_used_with(
        string key,
        string miss,
        string right,
        string written,
        string words
    ) =>
        Assert.StartsWith(
            $"From your number, it looks as if {words}.",
            Told(key, null, "=" + miss, new KeyEdit.OtherCell(right, written, IsWhole: false)),
            StringComparison.Ordinal
        );

    [Fact]
    public void What_was_turned_round_is_told_with_what_it_is_made_of() =>
        Assert.StartsWith(
            "From your number, it looks as if what comes of “room” (°C) and “dough wanted” (°C) was divided by “flour” (°C), and not the other way round.",
            Told(
                "flour/(room-want)*loss",
                null,
                "=(room-want)/flour*loss",
                new KeyEdit.TurnedRound("flour/(room-want)", "(room-want)/flour", BinaryOperator.Divide)
            ),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_constant_that_stands_twice_in_the_method_is_told_with_its_neighbour() =>
        Assert.StartsWith(
            "From your number, it looks as if you added 237, and not 273.15, to “flour” (°C).",
            Told("(flour+273.15)/(room+273.15)", null, "=(flour+237)/(room+273.15)", new KeyEdit.OtherConstant("273.15", "237")),
            StringComparison.Ordinal
        );

    [Fact]
    public void Who_typed_a_number_reads_what_to_do_and_then_no_more()
    {
        Assert.Equal(
            "From your number, it looks as if you divided by “room” (°C) twice. Divide by it once.",
            Told("flour/room", null, "=flour/room/room", new KeyEdit.CountedTwice("flour/room", "flour/room/room", "room"))
        );
        Assert.Equal(
            "From your number, it looks as if you multiplied by 2, which the method does not do there. Leave that out.",
            Told("flour/room", null, "=flour/room*2", new KeyEdit.TakenIn("flour/room", "flour/room*2", "2", BinaryOperator.Multiply))
        );
        Assert.Equal(
            "From your number, it looks as if you added 1 to “room” (°C), which the method does not do. Use it as it is.",
            Told("flour/room", null, "=flour/(1+room)", new KeyEdit.ShareForRest("room", "1+room"))
        );
    }

    [Fact]
    public void A_cell_that_also_stands_where_it_belongs_is_named_with_its_spot()
    {
        var told = Told("flour*(1+loss)", "=C7*(1+C7)", "=flour*(1+flour)", new KeyEdit.OtherCell("loss", "flour", IsWhole: false));

        Assert.StartsWith(
            "It looks as if C7 (flour, °C) was used instead of C10 (lost in the oven). Write C7*(1+C10).",
            told,
            StringComparison.Ordinal
        );

        told = Told(
            "loss+flour*(1+loss)",
            "=C10+C7*(1+C7)",
            "=loss+flour*(1+flour)",
            new KeyEdit.OtherCell("loss", "flour", IsWhole: false)
        );

        Assert.Contains("Write C10+C7*(1+C10).", told, StringComparison.Ordinal);

        // Written in another order, the second is another.
        told = Told(
            "loss+flour*(1+loss)",
            "=(1+C7)*C7+C10",
            "=loss+flour*(1+flour)",
            new KeyEdit.OtherCell("loss", "flour", IsWhole: false)
        );

        Assert.Contains("Write (1+C10)*C7+C10.", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_the_sign_that_differs_is_shown()
    {
        var told = Told(
            "flour*want/(room*loss)",
            "=C7*C9*(C8*C10)",
            "=flour*want*(room*loss)",
            new KeyEdit.OtherOperation("flour*want/(room*loss)", "flour*want*(room*loss)", BinaryOperator.Divide, BinaryOperator.Multiply)
        );

        Assert.StartsWith(
            "It looks as if you multiplied by (C8*C10) (C8: room, °C; C10: lost in the oven), where you need to divide by it. Write C7*C9/(C8*C10).",
            told,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("flour/room/room", "they divided by “room” (°C) twice")]
    [InlineData("flour/room-room", "“room” (°C) was subtracted, which the method does not do there")]
    public void What_counts_twice_is_said_with_what_was_done(string written, string words) =>
        Assert.Contains(
            words,
            NearMissWords.OfMethod(
                [new KeyEdit.CountedTwice("flour/room", written, "room")],
                Of("flour/room"),
                Of("flour/room").Parts[0],
                CellFormula.Of("=" + written)
            ),
            StringComparison.Ordinal
        );

    [Fact]
    public void Who_typed_a_number_reads_of_no_cell()
    {
        var told = Told("flour*loss", null, "=flour*(1-loss)", new KeyEdit.ShareForRest("loss", "1-loss"));

        Assert.Equal(
            "From your number, it looks as if you subtracted “lost in the oven” from 1, which the method does not do. Use it as it is.",
            told
        );
    }

    [Fact]
    public void A_wrong_cell_is_named_with_what_to_write_and_no_pointer_that_says_its_name_again()
    {
        var told = Told("flour*loss", "=C7*C8", "=flour*room", new KeyEdit.OtherCell("loss", "room", IsWhole: false));

        Assert.Equal("It looks as if C8 (room, °C) was used instead of C10 (lost in the oven). Write C10 where you have C8.", told);
    }

    [Theory]
    [InlineData("=-(C9/C8)", "It looks as if only the sign is wrong. Write C9/C8.")]
    [InlineData("=1/(C9/C8)", "It looks as if you worked out 1 divided by the right answer. Write C9/C8.")]
    [InlineData("=C9*C8", "It looks as if you multiplied by C8 (room, °C), where you need to divide by it. Write C9/C8.")]
    public void What_differs_in_the_students_own_formula_comes_before_what_comes_to_the_same(string formula, string words)
    {
        var told = Told("want/room", formula, "=room/want", new KeyEdit.TurnedRound("want/room", "room/want", BinaryOperator.Divide));

        Assert.StartsWith(words, told, StringComparison.Ordinal);
    }

    /// <summary>The line that the search's edit stands in has nothing to do with a sign before the whole.</summary>
    [Theory]
    [InlineData("=-(C9/(C8-C7))", "Write C9/(C8-C7).")]
    [InlineData("=C9/(C7-C8)", "In the worked solution, see “Warmer by”.")]
    public void A_line_of_the_worked_solution_is_named_only_for_what_is_told(string formula, string where)
    {
        var exercise = Of("want/(room-flour)");
        var part = exercise.Parts[0] with { Written = CellFormula.Of("=want/warmer") };
        exercise = exercise with { Parts = [part], Steps = [new("warmer", "Warmer by", CellFormula.Of("=room-flour"), "°C")] };
        var finding = new AnswerFinding.NearMiss(
            [new KeyEdit.TurnedRound("room-flour", "flour-room", BinaryOperator.Subtract)],
            "=want/(flour-room)",
            Cells,
            IsShown: true
        );

        var told = FindingWords.Of(
            new AnswerGrade(
                exercise,
                part,
                Outcome.Incorrect,
                0,
                2,
                CellValue.Blank,
                1,
                formula,
                [finding],
                new Dictionary<string, double>()
            )
        );

        Assert.EndsWith(where, told, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_several_sums_the_one_is_named_that_should_be_none()
    {
        var told = Told(
            "3*want-(room+flour)",
            "=3*C9-(C8*C7)",
            "=3*want-room*flour",
            new KeyEdit.OtherOperation("room+flour", "room*flour", BinaryOperator.Add, BinaryOperator.Multiply)
        );

        Assert.StartsWith(
            "It looks as if you multiplied by C7 (flour, °C), where you need to add it. Write 3*C9-(C8+C7).",
            told,
            StringComparison.Ordinal
        );
    }

    /// <summary>Where the method itself subtracts it twice, “twice” would be the right one.</summary>
    [Fact]
    public void What_the_method_does_more_than_once_was_done_once_too_often() =>
        Assert.StartsWith(
            "From your number, it looks as if “flour” (°C) was subtracted once too often.",
            Told(
                "(want-flour)*loss-flour",
                null,
                "=(want-flour)*loss-flour-flour",
                new KeyEdit.CountedTwice("(want-flour)*loss-flour", "(want-flour)*loss-flour-flour", "flour")
            ),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_step_between_units_that_the_method_takes_was_taken_twice()
    {
        var told = Told(
            "(want-32)/1.8-room",
            null,
            "=((want-32)/1.8-32)/1.8-room",
            new KeyEdit.OtherUnit("want", "(want-32)/1.8", "°F", "°C")
        );

        Assert.StartsWith(
            "From your number, it looks as if “dough wanted” was turned from °F into °C twice.",
            told,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_is_to_be_divided_is_no_missing_factor()
    {
        var told = Told(
            "flour/(1-loss)",
            "=1-C10",
            "=1-loss",
            new KeyEdit.LeftOut("flour/(1-loss)", "1-loss", "flour", BinaryOperator.Multiply)
        );

        Assert.StartsWith(
            "It looks as if C7 (flour, °C) is missing, which has to be divided by (1-C10) (C10: lost in the oven). Write C7/(1-C10).",
            told,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_was_done_in_one_of_two_places_was_not_left_out() =>
        Assert.StartsWith(
            "It looks as if you did not divide by 2 in one of the places where it belongs. Write C7/2+C7*C10/2.",
            Told(
                "flour/2+flour/2*loss",
                "=C7/2+C7*C10",
                "=flour/2+flour*loss",
                new KeyEdit.LeftOut("flour/2", "flour", "2", BinaryOperator.Divide)
            ),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_power_is_quoted_with_its_own_brackets_and_no_others()
    {
        var told = Told(
            "flour*(1-loss)^2",
            "=C7/(1-C10)^2",
            "=flour/(1-loss)^2",
            new KeyEdit.OtherOperation("flour*(1-loss)^2", "flour/(1-loss)^2", BinaryOperator.Multiply, BinaryOperator.Divide)
        );

        Assert.Contains("Write C7*(1-C10)^2.", told, StringComparison.Ordinal);

        told = Told(
            "flour*(1-loss)^2",
            "=C7",
            "=flour",
            new KeyEdit.LeftOut("flour*(1-loss)^2", "flour", "(1-loss)^2", BinaryOperator.Multiply)
        );

        Assert.Contains("you did not multiply by (1-C10)^2 (C10: lost in the oven).", told, StringComparison.Ordinal);
    }

    /// <summary>Who typed -4 for 4 may have turned a subtraction round or lost a sign: of their number nobody can tell which.</summary>
    [Fact]
    public void Of_a_typed_number_that_is_the_right_one_but_for_its_sign_that_is_said() =>
        Assert.Equal(
            "From your number, it looks as if only the sign is wrong. Subtract “room” (°C) from “dough wanted” (°C).",
            Told("want-room", null, "=room-want", new KeyEdit.TurnedRound("want-room", "room-want", BinaryOperator.Subtract))
        );

    /// <summary>There is a g in “rising”, and a °C only where it stands by itself.</summary>
    [Theory]
    [InlineData("Rising dough", "g", "rising dough, g")]
    [InlineData("Dough, g", "g", "dough, g")]
    [InlineData("Lost, % of the dough", "%", "lost, % of the dough")]
    public void A_unit_goes_without_saying_where_its_word_stands_in_the_label(string label, string unit, string words)
    {
        var exercise = Of("flour*loss") with { Givens = [new("flour", label, unit, 1, 9, 1), new("loss", "Loss", "%", 0.1m, 0.2m, 0.01m)] };

        Assert.Equal($"C7 ({words})", new SheetTerms(exercise, Cells).Term("flour"));
    }

    [Fact]
    public void An_earlier_answer_is_called_by_its_letter_and_without_a_cell_by_its_unit_too()
    {
        var exercise = Of("flour*loss");
        var asked = exercise with
        {
            Parts =
            [
                exercise.Parts[0] with
                {
                    Id = "warm_flour",
                },
                exercise.Parts[0] with
                {
                    Id = "rest",
                    Ask = "How much of all that was weighed out stays in the bowl?",
                },
            ],
        };
        var cells = new Dictionary<string, string> { ["warm_flour"] = "C12", ["rest"] = "C13" };

        Assert.Equal("C12 (warm flour, your part a)", new SheetTerms(asked, cells).Term("warm_flour"));
        Assert.Equal("C13 (rest, your part b)", new SheetTerms(asked, cells).Term("rest"));
        Assert.Equal("“rest” (part b, °C)", new SheetTerms(asked, new Dictionary<string, string>()).Term("rest"));
    }

    [Theory]
    [InlineData("=C70+C8", "C7+C8", false)]
    [InlineData("=2*($C$7+C8)", "C7+C8", true)]
    [InlineData("=(C7-32)+1.8", "C7-32+1.8", true)]
    public void A_piece_stands_in_a_formula_whatever_its_dollars_and_needless_brackets(string formula, string piece, bool stands) =>
        Assert.Equal(stands, new FormulaShape(formula).Holds(piece));

    private static string Told(string key, string? formula, string miss, KeyEdit edit)
    {
        var exercise = Of(key);
        var finding = new AnswerFinding.NearMiss([edit], miss, Cells, IsShown: formula is not null);
        return FindingWords.Of(
            new AnswerGrade(
                exercise,
                exercise.Parts[0],
                Outcome.Incorrect,
                0,
                2,
                CellValue.Blank,
                1,
                formula,
                [finding],
                new Dictionary<string, double>()
            )
        );
    }

    private static Exercise Of(string key)
    {
        var part = new Part("water", "How warm?", CellFormula.Of("=" + key), "°C", Tolerance.Absolute(0.5), 2, true, []);
        return new("dough", "Dough", "mixing", ExerciseLevel.Standard, 5, "arithmetic", "Mix.", Givens, [], [part], []);
    }
}
