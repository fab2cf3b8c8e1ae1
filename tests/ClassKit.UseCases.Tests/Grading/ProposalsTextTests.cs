using System.Text;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Content.Learning;
using ClassKit.Content.Sources;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.Summaries;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Grading;

/// <summary>What stands ready to be listed: found by an exercise of somebody's own of which one part had two such methods.</summary>
public sealed class ProposalsTextTests
{
    public static TheoryData<KeyEdit, string> Named =>
        new()
        {
            { new KeyEdit.OtherConstant("32", "30"), "took_30_for_32" },
            { new KeyEdit.OtherConstant("1.8", "2"), "took_2_for_1_8" },
            { new KeyEdit.OtherOperation("a*b", "a/b", BinaryOperator.Multiply, BinaryOperator.Divide), "divide_for_multiply" },
            { new KeyEdit.TurnedRound("full-empty", "empty-full", BinaryOperator.Subtract), "full_empty_turned_round" },
            { new KeyEdit.ShareForRest("loss", "1-loss"), "rest_for_loss" },
            { new KeyEdit.ShareForRest("1-loss", "loss"), "without_rest_of_loss" },
            { new KeyEdit.OtherUnit("oven", "oven*1.8+32", "°C", "°F"), "oven_in_other_unit" },
            { new KeyEdit.LeftOut("(full-tare)/2", "full/2", "tare", BinaryOperator.Subtract), "without_tare" },
        };

    /// <summary>What stands in an exercise for years says what was done, and to what.</summary>
    [Theory]
    [MemberData(nameof(Named))]
    public void A_proposal_is_called_by_what_was_done(KeyEdit edit, string id)
    {
        var exercise = SmallClass.Dealt.Exercises[0];
        var text = ProposalsText.Write([
            new WrongMethod(exercise, exercise.Parts[0], CellFormula.Of("=1"), [edit], [SmallClass.Ada.Who, SmallClass.Ben.Who], 3),
        ]);

        Assert.Contains($"### Misconception: {id}\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_remark_to_the_instructor_is_no_part_of_the_words_to_students()
    {
        var exercise = SmallClass.Dealt.Exercises[0];
        var part = exercise.Parts[0];
        List<WrongMethod> methods =
        [
            .. new[] { "=1", "=2", "=3" }.Select(formula => new WrongMethod(
                exercise,
                part,
                CellFormula.Of(formula),
                [],
                [SmallClass.Ada.Who, SmallClass.Ben.Who],
                3
            )),
        ];
        var text = ProposalsText.Write(methods);
        var source = new Library(ListedTree.InMemory([KeyValuePair.Create("proposed.md", Encoding.UTF8.GetBytes(text))])).At("proposed.md");

        var read = ProposedMisconception.Read(source).Model!;

        Assert.Contains("Met by 2 of 3.", text, StringComparison.Ordinal);
        Assert.Equal(["another_way", "another_way_2", "another_way_3"], read.Select(piece => piece.Id));
        Assert.All(read, piece => Assert.Equal((exercise.Id, part.Id), (piece.Exercise, piece.Part)));
        Assert.All(read, piece => Assert.DoesNotContain("Met by", piece.Markdown, StringComparison.Ordinal));
        Assert.All(read, piece => Assert.DoesNotContain("Ask one of them", piece.Markdown, StringComparison.Ordinal));
    }
}
