using System.Text.RegularExpressions;
using ClassKit.Content.Exercises;
using ClassKit.Content.Lessons;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Terms;

namespace ClassKit.Content.Tests;

/// <summary>Whoever copies a whole example out of a handbook has something that is read.</summary>
public sealed class HandbookExamplesTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_exercise_answered_with_letters_is_read()
    {
        var reading = ExerciseReader.Read(_folder.Write("tub.md", Example("lessons", "### One that is answered with letters")));

        Assert.True(reading.Succeeded, string.Join('\n', reading.Problems));
        Assert.Empty(reading.Doubts);
        Assert.All(reading.Model!.Parts, part => Assert.NotNull(part.Choice));
    }

    /// <summary>Every step that stands in the text of the handbook as an example, and every word that stands alone for a step's brackets.</summary>
    [Fact]
    public void Every_step_is_read()
    {
        var handbook = File.ReadAllText(Path.Combine(Repository.Root, "lessons", "README.md")).ReplaceLineEndings("\n");
        List<string> steps =
        [
            .. Regex.Matches(handbook, @"`1\. (?<step>\*\*(?![^`]*\bbefore )[^`]*)`").Select(match => match.Groups["step"].Value),
            .. Regex
                .Matches(handbook, "`(?<word>(warms|melts|tempers|cooks|boils|wait|each) [^`]+)`")
                .Select(match => $"**Do** (5–90 min, burner, {match.Groups["word"].Value}). Do it."),
        ];
        Assert.True(steps.Count > 18, $"{steps.Count}");
        foreach (var step in steps)
        {
            var problems = LessonFormulaReader
                .Read(_folder.Write("bread.md", $"---\nleavening: yeast\n---\n\n# Bread\n\nText.\n\n## Method\n\n1. {step}\n"))
                .Problems;
            Assert.DoesNotContain(problems, problem =>
                problem.Line == 11
                && (
                    problem.Found.Contains("brackets hold", StringComparison.Ordinal)
                    || problem.Found.Contains("This step reads", StringComparison.Ordinal)
                    || problem.Found.Contains("not an ingredient", StringComparison.Ordinal)
                    || problem.Found.Contains("temperature", StringComparison.Ordinal)
                )
            );
        }
    }

    /// <summary>By hand: 15 g of jam and 4 g of cashews are 19 g a piece; what is in them is declared and the dough is as it was.</summary>
    [Fact]
    public void The_filling_is_read()
    {
        var plain = File.ReadAllText(Repository.PathOf("src/ClassKit.Content/Starting/lessons/milk-scones/formulas/milk_scones.md"))
            .ReplaceLineEndings("\n");
        _folder.Write("ingredients.csv", File.ReadAllText(Repository.PathOf("src/ClassKit.Content/Starting/ingredients.csv")));
        var bun = plain.Replace(
            "\n## Method\n",
            "\n" + Example("lessons", "### Filled breads") + "\n## Method\n",
            StringComparison.Ordinal
        );
        var before = LessonFormulaReader.Read(_folder.Write("plain_bun.md", plain)).Model!;
        var reading = LessonFormulaReader.Read(_folder.Write("bun.md", bun));

        Assert.True(reading.Succeeded, string.Join('\n', reading.Problems));
        Assert.Empty(reading.Doubts);
        Assert.Equal(19, reading.Model!.FillingMass.Grams, 9);
        Assert.Equal(before.Formula.Lines, reading.Model.Formula.Lines);
        Assert.Equal(
            ["cashew"],
            reading
                .Model.Allergens.Select(allergen => allergen.Name)
                .Except([.. before.Allergens.Select(allergen => allergen.Name), "sulphites"])
        );
    }

    [Theory]
    [InlineData("40 g a batch")]
    [InlineData("15 g")]
    public void A_filling_is_so_much_a_piece(string amount)
    {
        var bun = File.ReadAllText(Repository.PathOf("src/ClassKit.Content/Starting/lessons/milk-scones/formulas/milk_scones.md"))
            .ReplaceLineEndings("\n")
            .Replace(
                "\n## Method\n",
                $"\n## Filling\n\n| Ingredient | Amount |\n|---|---|\n| Apricot jam | {amount} |\n\n## Method\n",
                StringComparison.Ordinal
            );
        _folder.Write("ingredients.csv", File.ReadAllText(Repository.PathOf("src/ClassKit.Content/Starting/ingredients.csv")));
        var problem = Assert.Single(LessonFormulaReader.Read(_folder.Write("bun.md", bun)).Problems);

        Assert.Contains(amount, problem.Found, StringComparison.Ordinal);
        Assert.Contains("`15 g a piece`", $"{problem}", StringComparison.Ordinal);
    }

    [Fact]
    public void The_tables_of_a_rule_and_of_a_term_are_read()
    {
        var rule = _folder.Write(
            "rule.md",
            "---\nresit: better\nabsent: zero\nrounding: 1 %\ntie: up\n---\n\n# Grade\n\n" + Example("rubrics", "## A rule for grades")
        );
        var read = GradeRuleReader.Read(rule);
        Assert.True(read.Succeeded, string.Join('\n', read.Problems));
        Assert.Empty(read.Doubts);

        _folder.Write("bench.md", File.ReadAllText(Repository.PathOf("rubrics/bench-work.md")));
        _folder.Write(
            "bench-day.csv",
            "student,safe and clean work,weighing,mixing,filling,timing and order,judging doneness,measuring and recording,explaining,comment\n"
        );
        _folder.Write("roster.csv", "name\nAna Lima\n");
        _folder.Write("marks.csv", "student,Notebook,Notebook resit\nAna Lima,12 late,8 of 10\n");
        var term = TermReader.Read(
            _folder.Write(
                "term.md",
                "---\nclass: class.md\nroster: roster.csv\nrule: rule.md\nmarks: marks.csv\n---\n\n# Spring\n\n"
                    + Example("demo-cohort", "## A term: term.md")
            )
        );
        // What the row leads to is not there; the table itself is understood.
        Assert.All(term.Problems, problem => Assert.Matches("There is no (file|folder)", problem.Found));
    }

    private static string Example(string handbook, string heading)
    {
        var text = File.ReadAllText(Path.Combine(Repository.Root, handbook, "README.md")).ReplaceLineEndings("\n");
        var from =
            text.IndexOf("```markdown\n", text.IndexOf($"\n{heading}\n", StringComparison.Ordinal), StringComparison.Ordinal)
            + "```markdown\n".Length;
        return text[from..text.IndexOf("\n```", from, StringComparison.Ordinal)] + "\n";
    }
}
