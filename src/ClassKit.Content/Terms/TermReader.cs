using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.FrontMatter;
using ClassKit.Content.Outline;
using ClassKit.Content.Rosters;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Terms;

/// <summary>Reads the description of a term: roster, rule and table of marks in the front matter, the work as a table.</summary>
public static class TermReader
{
    /// <summary>The term, or everything that is wrong with its file and with those that it names.</summary>
    public static Reading<TermPlan> Read(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return source.Once(() => ReadFile(source));
    }

    private static Reading<TermPlan> ReadFile(Source source)
    {
        var problems = new ProblemList(source.Shown);
        if (SourceFile.Read(source, problems) is not { } text || FrontMatterBlock.Split(text, problems) is not { } block)
            return problems.Fail<TermPlan>();
        var fields = FrontMatterReader.Read(block.Yaml, problems);
        var named = new NamedPaths(source, problems);
        var profile = named.Read(fields.Optional("class"), ClassProfileReader.Read);
        var roster = named.Read(fields.Text("roster"), file => RosterReader.Read(file, profile?.Name));
        var rule = named.Read(fields.Text("rule"), GradeRuleReader.Read);
        var marks = fields.Optional("marks");
        fields.Finish();

        if (Document.Read(block.Markdown, problems) is not { } document)
            return problems.Fail<TermPlan>();
        var sections = new Sections(document.Sections, "##", problems, document.Deeper);
        var table = sections.Required("Work");
        sections.Finish();
        if (roster is null || rule is null)
            return new(null, [.. problems.Fail<TermPlan>().Problems, .. named.Problems]);

        var students = Namesakes.ToldApart(roster.Students);
        var works = WorkTable.Read(
            table,
            rule,
            new(students, named)
            {
                Cohort = profile?.Name ?? "",
                Teams = profile?.Teams ?? 1,
                Arranged = roster.ArrangementOf,
            },
            problems
        );

        // A row that is wrong above would be blamed on every cell of its column.
        if (problems.IsEmpty && named.Read(marks, file => MarksTableReader.Read(file, students, works)) is { } typed)
            works = [.. works.Select(work => work with { Typed = [.. typed[work.Title]] })];
        var reading = problems.Finish(() =>
            new TermPlan(
                source.Path,
                document.Title.Text,
                roster with
                {
                    Students = students,
                    TimeZone = profile?.TimeZone ?? roster.TimeZone,
                    Paper = profile?.Paper ?? roster.Paper,
                },
                rule,
                works,
                named.Paths
            )
            {
                Marks = marks is null ? null : named.File(marks.Value),
            }
        );
        return (named.Problems.Count == 0 ? reading : new(null, [.. reading.Problems, .. named.Problems])) with
        {
            Doubts = [.. reading.Doubts, .. named.Doubts],
        };
    }
}
