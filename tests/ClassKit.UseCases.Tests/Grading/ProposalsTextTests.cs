using System.Text;
using ClassKit.CellFormulas.Formulas;
using ClassKit.Content.Learning;
using ClassKit.Content.Sources;
using ClassKit.Grading.Summaries;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Grading;

/// <summary>What stands ready to be listed: found by an exercise of somebody's own of which one part had two such methods.</summary>
public sealed class ProposalsTextTests
{
    [Fact]
    public void A_remark_to_the_instructor_is_no_part_of_the_words_to_students()
    {
        var exercise = SmallClass.Dealt.Exercises[0];
        var part = exercise.Parts[0];
        List<WrongMethod> methods = [.. new[] { "=1", "=2", "=3" }.Select(formula => new WrongMethod(exercise, part, CellFormula.Of(formula), [], [SmallClass.Ada.Who, SmallClass.Ben.Who], 3))];
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
