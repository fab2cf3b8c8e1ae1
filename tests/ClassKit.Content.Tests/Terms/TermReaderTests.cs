using ClassKit.Content.Diagnostics;
using ClassKit.Content.Terms;
using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Work;

namespace ClassKit.Content.Tests.Terms;

public sealed class TermReaderTests : IDisposable
{
    private const string Sound = """
        ---
        roster: roster.csv
        rule: rule.md
        marks: marks.csv
        ---

        # Autumn

        ## Work

        | Work | Kind | Category | Out of | Marks | Resit | Second marker |
        |---|---|---|---|---|---|---|
        | Percentages | typed marks | Calculations | 24 | | | |
        | Deal one | calculations | Calculations | | graded | | |
        | Day one | bench work | Bench work | bench.md | day-one.csv | day-one-again.csv | day-one-second.csv |
        | Essay | written answers | Written work | 12.5 | | | |
        """;

    private const string Marks = """
        student;Essay;essay resit;Percentages;Deal one
        ada;10,5;;18 late;
        Ben Okoro;absent;7;;excused
        cleo;not due;;24;Not Due
        """;

    private const string Rubric = """
        # Bench

        ## Criteria

        | Criterion | Weight | Not yet (0) | Secure (2) | Excellent (3) |
        |---|---|---|---|---|
        | Safe and clean work | 2 | no | yes | very |
        | Mixing, timing | 1.5 | no | yes | very |
        """;

    private const string DayOne =
        "student,Safe and clean work,\"Mixing, timing\",comment\nada,Secure,3,quick\nBen Okoro,excellent,Not yet,\ncleo,,,away\n";

    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private Reading<TermPlan> Read(
        string term = Sound,
        string marks = Marks,
        string dayOne = DayOne,
        string roster = "id,name\nada,Ada Lindholm\nben,Ben Okoro\ncleo,Cleo Marsh\n"
    )
    {
        Directory.CreateDirectory(Path.Combine(_folder.Path, "graded"));
        _folder.Write("rule.md", File.ReadAllText(Path.Combine(Repository.Rubrics, "term-grade.md")));
        _folder.Write("roster.csv", roster);
        _folder.Write("bench.md", Rubric);
        _folder.Write("day-one.csv", dayOne);
        _folder.Write("day-one-second.csv", "student,Safe and clean work,\"Mixing, timing\"\nada,3,3\n");
        _folder.Write("day-one-again.csv", "student,Safe and clean work,\"Mixing, timing\"\ncleo,2,2\n");
        _folder.Write("marks.csv", marks.ReplaceLineEndings("\n"));
        return TermReader.Read(_folder.Write("term.md", term.ReplaceLineEndings("\n")));
    }

    [Fact]
    public void A_term_is_read_with_all_that_it_names()
    {
        var plan = Read();

        Assert.True(plan.Succeeded, string.Join('\n', plan.Problems));
        Assert.Equal(("Autumn", 3, "Grade of the term"), (plan.Model.Title, plan.Model.Class.Students.Count, plan.Model.Rule.Title));
        Assert.Equal(
            [
                ("Percentages", WorkKind.TypedMarks, "Calculations", 24m),
                ("Deal one", WorkKind.CalculationSet, "Calculations", null),
                ("Day one", WorkKind.BenchWork, "Bench work", 10.5m),
                ("Essay", WorkKind.WrittenAnswers, "Written work", 12.5m),
            ],
            plan.Model.Works.Select(work => (work.Title, work.Kind, work.Category, work.OutOf))
        );
        Assert.EndsWith("graded", Assert.Single(plan.Model.Works[1].Graded), StringComparison.Ordinal);
    }

    [Fact]
    public void A_term_is_printed_on_the_paper_of_its_class_and_dated_by_its_clocks()
    {
        _folder.Write(
            "class.md",
            File.ReadAllText(Path.Combine(Repository.Demo, "class.md"))
                .Replace("prices: prices.md\n", "", StringComparison.Ordinal)
                .Replace("paper: A4", "paper: Letter", StringComparison.Ordinal)
        );

        var plan = Read(Complaint.Break(Sound, "roster: roster.csv", "class: class.md\nroster: roster.csv"));

        Assert.True(plan.Succeeded, string.Join('\n', plan.Problems));
        Assert.Equal((Paper.Letter, "Europe/Paris"), (plan.Model.Class.Paper, plan.Model.Class.TimeZone!.Id));
    }

    [Fact]
    public void Typed_marks_are_points_or_words()
    {
        Dictionary<string, PlannedWork> works = Read().Model!.Works.ToDictionary(work => work.Title);

        Assert.Equal(
            [
                ("ada", 1, MarkState.Marked, 10.5m),
                ("ben", 1, MarkState.Absent, 0),
                ("ben", 2, MarkState.Marked, 7),
                ("cleo", 1, MarkState.NotDue, 0),
            ],
            works["Essay"].Typed.Select(typed => (typed.Student, typed.Sitting, typed.Mark.State, typed.Mark.Points))
        );
        Assert.Equal([Lateness.Late, Lateness.InTime], works["Percentages"].Typed.Select(typed => typed.Mark.Lateness));
        Assert.Equal([MarkState.Excused, MarkState.NotDue], works["Deal one"].Typed.Select(typed => typed.Mark.State));
    }

    [Fact]
    public void Bench_work_is_levels_of_the_rubric_and_two_markers_make_a_mean()
    {
        var bench = Read().Model!.Works[2].Bench;

        // Ada: 2 · 2 + 1.5 · 3 = 8.5, and 2 · 3 + 1.5 · 3 = 10.5 of 10.5. Ben, whom one marked: 2 · 3 + 0.
        Assert.Equal([("ada", 9.5m), ("ben", 6m)], bench[0].Marks(MarkerRule.Mean).Select(marked => (marked.Student, marked.Mark.Points)));
        Assert.Equal([("ada", 8.5m), ("ben", 6m)], bench[0].Marks(MarkerRule.First).Select(marked => (marked.Student, marked.Mark.Points)));
        Assert.Equal(
            ("Safe and clean work", 2.5m / 3),
            bench[0].Marks(MarkerRule.Mean).First().Mark.Criteria.Select(criterion => (criterion.Criterion, criterion.Share)).First()
        );
        Assert.Equal([("cleo", 7m)], bench[1].Marks(MarkerRule.Mean).Select(marked => (marked.Student, marked.Mark.Points)));
    }

    [Fact]
    public void Single_students_are_asked_less_of_one_work_and_their_total_is_smaller()
    {
        const string roster = "id,name,leaves out\nada,Ada Lindholm,\"Mixing, timing for Day one\"\nben,Ben Okoro,\ncleo,Cleo Marsh,\n";
        var works = Read(
            marks: Complaint.Break(Marks, "10,5", "8 of 10"),
            dayOne: Complaint.Break(DayOne, "ada,Secure,3,quick", "ada,Secure,,quick"),
            roster: roster
        ).Model!.Works;

        // Ada is asked for one criterion of weight 2 with a best level of 3: Secure is 4 of 6, the second marker's 3 is 6; the mean 5 of 6.
        // Ben has all of 10.5.
        var marks = works[2].Bench[0].Marks(MarkerRule.Mean).ToDictionary(marked => marked.Student, marked => marked.Mark);
        Assert.Equal((5m, 6m), (marks["ada"].Points, marks["ada"].OutOf));
        Assert.Equal(
            [("Safe and clean work", 2.5m / 3)],
            marks["ada"].Criteria.Select(criterion => (criterion.Criterion, criterion.Share))
        );
        Assert.Equal((6m, 10.5m), (marks["ben"].Points, marks["ben"].OutOf));
        Assert.Empty(works[2].Bench[0].First.Begun);

        // 8 of 10 where all others are asked for 12.5.
        Assert.Equal(
            (8m, 10m),
            works[3].Typed.Where(typed => typed.Student == "ada").Select(typed => (typed.Mark.Points, typed.Mark.OutOf)).Single()
        );
    }

    [Fact]
    public void A_criterion_that_is_left_out_must_be_one_of_the_rubric_and_not_all_of_them()
    {
        Assert.Contains(
            Read(roster: "id,name,leaves out\nada,Ada Lindholm,Safe and clean wrk for Day one\nben,Ben Okoro,\ncleo,Cleo Marsh,\n").Doubts,
            doubt =>
                doubt.Found.Contains("no such criterion", StringComparison.Ordinal)
                && doubt.Expected.Contains("Did you mean `Safe and clean work`", StringComparison.Ordinal)
        );
        Assert.Contains(
            Read(
                roster: "id,name,leaves out\nada,Ada Lindholm,\"Safe and clean work for Day one; Mixing, timing for Day one\"\nben,Ben Okoro,\ncleo,Cleo Marsh,\n"
            ).Problems,
            problem => problem.Found.Contains("`ada` leaves out every criterion", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("roster: roster.csv", "roster: rooster.csv", "There is no file", "Did you mean roster.csv?")]
    [InlineData(
        "| Calculations | 24 |",
        "| Calculation | 24 |",
        "`Calculation` is no category of the rule",
        "Did you mean `Calculations`?"
    )]
    [InlineData("| typed marks |", "| typed |", "The kind is `typed`", "Known here")]
    [InlineData("| Calculations | 24 |", "| Calculations | 0 |", "`Out of` is 0", "above 0")]
    [InlineData("| Calculations | 24 |", "| Calculations | |", "The cell in the column `Out of` is empty", "Fill it in")]
    [InlineData("| Essay |", "| Deal one |", "The work `Deal one` is here a second time", "a name of its own")]
    [InlineData("| Essay |", "| Essay resit |", "No work can be called `Essay resit`", "another name")]
    [InlineData("| Calculations | | graded |", "| Calculations | | garded |", "There is no folder", "Did you mean graded?")]
    [InlineData("| Calculations | | graded |", "| Calculations | | |", "`Deal one` has no graded folder", "the folder that grading made")]
    [InlineData(
        "| Calculations | | graded | | |",
        "| Calculations | 10 | graded | | |",
        "`Deal one` says what it is out of",
        "Leave the cell empty"
    )]
    [InlineData("| Calculations | 24 | | | |", "| Calculations | 24 | | | second.csv |", "is no bench work", "Leave the cell empty")]
    [InlineData("| Calculations | 24 | | | |", "| Calculations | 24 | own.csv | | |", "`Percentages` names a file of its own", "`marks:`")]
    [InlineData("| bench.md | day-one.csv |", "| | day-one.csv |", "does not say by which rubric", "practical rubric")]
    [InlineData("| bench.md | day-one.csv |", "| bench.md | |", "`Day one` has no first table", "`Marks`")]
    public void A_mistake_in_a_term_is_named(string find, string replacement, string found, string remedy, int problems = 1)
    {
        var sound = Sound.ReplaceLineEndings("\n");
        Complaint.Among(Read(Complaint.Break(sound, find, replacement)), problems, Complaint.LineOf(sound, find), found, remedy);
    }

    /// <summary>As a spreadsheet of a country with decimal commas writes them where it keeps fields apart by commas all the same.</summary>
    [Theory]
    [InlineData("\"11,5\"", 11.5, 12.5)]
    [InlineData("\"7,25 of 10,5\"", 7.25, 10.5)]
    [InlineData("\"11,5 late\"", 11.5, 12.5)]
    public void A_mark_with_a_decimal_comma_between_quotes_is_read(string cell, decimal points, decimal outOf)
    {
        var works = Read(
            marks: Marks.Replace("10,5", "10.5", StringComparison.Ordinal).Replace(';', ',').Replace("10.5", cell, StringComparison.Ordinal)
        ).Model!.Works;

        var mark = works[3].Typed.Single(typed => typed.Student == "ada").Mark;
        Assert.Equal((points, outOf), (mark.Points, mark.OutOf));
    }

    [Theory]
    [InlineData("10,5", "13", 2, "`Essay` has the mark 13, and it is out of 12.5", "from 0 to what is possible")]
    [InlineData("10,5", "11 of 10", 2, "`Essay` has the mark 11, and it is out of 10", "from 0 to what is possible")]
    [InlineData("10,5", "11 of 13", 2, "`Essay` has a mark of 13 points, and it is out of 12.5", "at most what everybody can")]
    [InlineData("10,5", "5 of 0", 2, "`Essay` has a mark of 0 points", "above 0")]
    [InlineData("10,5", "5 of ten", 2, "`Essay` has the mark `5 of ten`", "`8 of 10`")]
    [InlineData("10,5", "-1", 2, "`Essay` has the mark -1", "from 0")]
    [InlineData("10,5", "absnet", 2, "`Essay` has the mark `absnet`", "Did you mean `absent`?")]
    [InlineData("10,5", "1e3", 2, "`Essay` has the mark `1e3`", "Write points")]
    [InlineData("10,5", "=2+3", 2, "`Essay` has the mark `=2+3`", "Write points")]
    [InlineData(";excused", ";8", 3, "`Deal one` has typed points", "absent, excused or not due")]
    [InlineData("ada;", "adda;", 2, "Nobody on the roster is called `adda`", "Did you mean `ada`?")]
    [InlineData("cleo;", "ada;", 4, "`ada` is in line 2 already", "one line for each student")]
    [InlineData(";Percentages;", ";Percentage;", 1, "a column `Percentage`", "Did you mean `percentages`?")]
    public void A_mistake_in_the_table_of_marks_is_named(string find, string replacement, int line, string found, string remedy)
    {
        var reading = Read(marks: Complaint.Break(Marks.ReplaceLineEndings("\n"), find, replacement));

        Complaint.Among(reading, 1, line, found, remedy);
        Assert.EndsWith("marks.csv", reading.Problems[0].File, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ada,Secure,3,", "ada,Secured,3,", 2, "`ada` has `Secured` in `Safe and clean work`", "Did you mean `Secure`?")]
    [InlineData("ada,Secure,3,", "ada,Secure,1,", 2, "`ada` has `1` in `Mixing, timing`", "Excellent (3)")]
    [InlineData("Ben Okoro,", "ada,", 3, "`ada` is marked in a line above already", "one line for each student")]
    [InlineData("Ben Okoro,", "Ben Okro,", 3, "Nobody on the roster is called `Ben Okro`", "Did you mean `Ben Okoro`?")]
    public void A_mistake_in_a_table_of_the_bench_is_named(string find, string replacement, int line, string found, string remedy) =>
        Complaint.Among(Read(dayOne: Complaint.Break(DayOne, find, replacement)), 1, line, found, remedy);

    /// <summary>As a Mac exports it, with two blanks, in capitals, surname first, and an id in other letters.</summary>
    [Theory]
    [InlineData("O\u0308zge S\u0327en")]
    [InlineData("Özge  Şen")]
    [InlineData("ÖZGE ŞEN")]
    [InlineData("Şen Özge")]
    [InlineData("OZ")]
    public void A_student_is_known_however_a_program_wrote_the_name(string named) =>
        Assert.Equal("oz", Assert.Single(NamedStudent.Of(named, [new("oz", "Özge Şen"), new("ada", "Ada Berg")])).Id);

    /// <summary>Words are all that was seen of somebody who was sent away before the work began.</summary>
    [Fact]
    public void Words_of_a_student_without_a_level_are_read()
    {
        var day = Read(dayOne: Complaint.Break(DayOne, "Ben Okoro,excellent,Not yet,", "Ben Okoro,,,Burnt hand"))
            .Model!.Works.First(work => work.Title == "Day one")
            .Bench[0]
            .First;

        Assert.Equal("Burnt hand", day.Comments["ben"]);
        Assert.Equal(["ada"], day.Places.Keys);
    }

    /// <summary>In a term students leave: what was marked of them is left where it stands, and counts for nobody.</summary>
    [Fact]
    public void Somebody_who_has_left_the_class_keeps_nobody_elses_marks_from_counting()
    {
        var reading = Read(marks: Marks.ReplaceLineEndings("\n") + "\nzacharias;9;;;\n", dayOne: DayOne + "zacharias,Secure,3,\n");

        Assert.Empty(reading.Problems);
        Assert.Equal([5, 5], reading.Doubts.Select(doubt => doubt.Line));
        Assert.All(reading.Doubts, doubt =>
            Assert.Equal(("Nobody on the roster is called `zacharias`", Weight.Noted), (doubt.Found, doubt.Weight))
        );
        Assert.Equal(["ada", "ben"], reading.Model!.Works.First(work => work.Title == "Day one").Bench[0].First.Places.Keys.Order());
    }

    /// <summary>Ids of a school that are numbers lie close to one another: whoever left is not taken for whoever is nearest.</summary>
    [Fact]
    public void Nobody_is_guessed_to_be_another_by_a_number()
    {
        var reading = Read(
            dayOne: DayOne + "40021091,Secure,3,\n",
            roster: "id,name\nada,Ada Lindholm\nben,Ben Okoro\ncleo,Cleo Marsh\n40021021,Dana Reyes\n"
        );

        Assert.Empty(reading.Problems);
        Assert.Contains(reading.Doubts, doubt => doubt is { Found: "Nobody on the roster is called `40021091`", Weight: Weight.Noted });
    }

    [Fact]
    public void Most_of_another_class_is_another_class() =>
        Complaint.Among(
            Read(dayOne: DayOne + string.Concat(Enumerable.Range(0, 4).Select(at => $"zacharias-{at},Secure,3,\n"))),
            4,
            5,
            "Nobody on the roster is called `zacharias-0`",
            "Name a student by the id"
        );

    /// <summary>A level that is still to come keeps nobody else's marks from counting.</summary>
    [Fact]
    public void Who_is_not_marked_through_is_asked_about_and_what_is_complete_counts()
    {
        var reading = Read(dayOne: Complaint.Break(DayOne, "ada,Secure,3,", "ada,Secure,,"));

        Assert.Empty(reading.Problems);
        var doubt = Assert.Single(reading.Doubts);
        Assert.Equal((2, "`ada` has no level in `Mixing, timing`"), (doubt.Line, doubt.Found));
        var sheet = reading.Model!.Works.First(work => work.Title == "Day one").Bench[0].First;
        Assert.DoesNotContain("ada", sheet.Places.Keys);
        Assert.NotEmpty(sheet.Places);
        Assert.Null(sheet.LevelOf("ada", sheet.Begun["ada"].ToList().IndexOf(null)));
        Assert.Single(sheet.Begun["ada"], level => level is null);
    }

    [Fact]
    public void A_criterion_that_must_be_passed_has_to_be_in_the_rubric()
    {
        Read();
        _folder.Write("bench.md", Rubric.Replace("Safe and clean work", "Safety", StringComparison.Ordinal));
        _folder.Write("day-one.csv", DayOne.Replace("Safe and clean work", "Safety", StringComparison.Ordinal));

        var problems = TermReader.Read(Path.Combine(_folder.Path, "term.md")).Problems;

        Assert.Contains(problems, problem =>
            problem.Found.Contains("the rubric of `Day one` has no such criterion", StringComparison.Ordinal)
        );
    }

    /// <summary>Bytes that no spreadsheet writes, quotes left open, columns without end: refused in words.</summary>
    [Fact]
    public void Hostile_tables_are_refused_in_words()
    {
        foreach (
            var marks in new[]
            {
                "",
                "\0\0\0",
                "student;\"Essay\nada;3",
                new string(';', 50_000),
                "student\n" + new string('\n', 10_000),
                "student;Essay\nada;" + new string('9', 400),
                "student;Essay\nada;79228162514264337593543950336",
            }
        )
        {
            var reading = Read(marks: marks);
            Assert.True(reading.Succeeded || reading.Problems.All(problem => problem.Found.Length > 0 && problem.Expected.Length > 0));
        }
    }
}
