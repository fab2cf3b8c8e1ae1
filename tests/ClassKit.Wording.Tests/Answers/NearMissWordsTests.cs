using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.Results;
using ClassKit.Wording.Answers;

namespace ClassKit.Wording.Tests.Answers;

/// <summary>The cases are those in which two teachers who read a hundred of these sentences found one untrue or unclear.</summary>
public sealed class NearMissWordsTests
{
    private static readonly IReadOnlyDictionary<string, string> Cells = new Dictionary<string, string> { ["flour"] = "C7", ["room"] = "C8", ["want"] = "C9", ["loss"] = "C10", ["friction"] = "C11" };

    private static readonly Given[] Givens =
    [
        new("flour", "Flour", "°C", 18, 24, 1), new("room", "Room", "°C", 18, 24, 1), new("want", "Dough wanted", "°C", 22, 28, 1),
        new("loss", "Lost in the oven", "%", 0.05m, 0.2m, 0.01m), new("friction", "Rise by mixing", "°C", 2, 12, 1),
    ];

    [Fact]
    public void Missing_brackets_are_called_brackets_whatever_operation_they_amount_to()
    {
        var told = Told("3*want-(room+flour)-friction", "=3*C9-C8+C7-C11", "=3*want-(room-flour)-friction", new KeyEdit.OtherOperation("room+flour", "room-flour", BinaryOperator.Add, BinaryOperator.Subtract));

        Assert.StartsWith("It looks as if brackets are missing, or stand around something else. Write it as 3*C9-(C8+C7)-C11.", told, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_student_did_not_write_is_not_called_theirs()
    {
        var told = Told("flour*(want-room)/(want-friction)", "=C7*(C9-C8)/(C11-C9)", "=flour*(room-want)/(want-friction)", new KeyEdit.TurnedRound("want-room", "room-want", BinaryOperator.Subtract));

        Assert.StartsWith("Your formula comes to the same as C7*(C8-C9)/(C9-C11), which is", told, StringComparison.Ordinal);
        Assert.DoesNotContain("Write", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_that_also_stands_where_it_belongs_is_named_with_its_spot()
    {
        var told = Told("flour*(1+loss)", "=C7*(1+C7)", "=flour*(1+flour)", new KeyEdit.OtherCell("loss", "flour", IsWhole: false));

        Assert.StartsWith("It looks as if C7 (flour, °C) stands twice, and C10 (lost in the oven) is missing.", told, StringComparison.Ordinal);

        told = Told("loss+flour*(1+loss)", "=C10+C7*(1+C7)", "=loss+flour*(1+flour)", new KeyEdit.OtherCell("loss", "flour", IsWhole: false));

        Assert.Contains("Where you have 1+C7, write 1+C10.", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_the_sign_that_differs_is_shown()
    {
        var told = Told("flour*want/(room*loss)", "=C7*C9*(C8*C10)", "=flour*want*(room*loss)", new KeyEdit.OtherOperation("flour*want/(room*loss)", "flour*want*(room*loss)", BinaryOperator.Divide, BinaryOperator.Multiply));

        Assert.StartsWith("It looks as if you multiplied where the method divides. Put / instead of *, before (C8*C10).", told, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("flour/room/room", "you divided by “room” twice")]
    [InlineData("flour/room-room", "“room” was taken away twice")]
    public void What_counts_twice_is_said_with_what_was_done(string written, string words) =>
        Assert.Contains(words, NearMissWords.OfMethod([new KeyEdit.CountedTwice("flour/room", written, "room")], Of("flour/room")), StringComparison.Ordinal);

    [Fact]
    public void Who_typed_a_number_reads_of_no_cell()
    {
        var told = Told("flour*loss", null, "=flour*(1-loss)", new KeyEdit.ShareForRest("loss", "1-loss"));

        Assert.Equal("From your number, it looks as if you worked with what is left without “lost in the oven”, where that share itself belongs. Compare it with the worked solution of this part.", told);
    }

    [Theory]
    [InlineData("=C70+C8", "C7+C8", false)]
    [InlineData("=2*($C$7+C8)", "C7+C8", true)]
    [InlineData("=(C7-32)+1.8", "C7-32+1.8", true)]
    public void A_piece_stands_in_a_formula_whatever_its_dollars_and_needless_brackets(string formula, string piece, bool stands) => Assert.Equal(stands, new FormulaShape(formula).Holds(piece));

    private static string Told(string key, string? formula, string miss, KeyEdit edit)
    {
        var exercise = Of(key);
        var finding = new AnswerFinding.NearMiss([edit], miss, Cells, IsShown: formula is not null);
        return FindingWords.Of(new AnswerGrade(exercise, exercise.Parts[0], Outcome.Incorrect, 0, 2, CellValue.Blank, 1, formula, [finding], new Dictionary<string, double>()));
    }

    private static Exercise Of(string key)
    {
        var part = new Part("water", "How warm?", CellFormula.Of("=" + key), "°C", Tolerance.Absolute(0.5), 2, true, []);
        return new("dough", "Dough", "mixing", ExerciseLevel.Standard, 5, "arithmetic", "Mix.", Givens, [], [part], []);
    }
}
