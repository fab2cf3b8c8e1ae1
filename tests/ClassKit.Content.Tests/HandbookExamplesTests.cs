using ClassKit.Content.Exercises;
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
