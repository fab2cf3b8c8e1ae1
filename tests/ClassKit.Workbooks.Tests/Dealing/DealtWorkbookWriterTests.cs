using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Tests.Exercises;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Filling;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Tests.Samples;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Tests.Dealing;

public sealed class DealtWorkbookWriterTests : IDisposable
{
    private readonly DealtStudent _student = SampleClass.Dealt.Students[1];
    private readonly XLWorkbook _workbook;

    public DealtWorkbookWriterTests() => _workbook = new(new MemoryStream(DealtWorkbookWriter.Write(SampleClass.Dealt, _student)));

    public void Dispose() => _workbook.Dispose();

    /// <summary>A class's workbooks come from one template; each must be what laying it out cell by cell gives, to the byte.</summary>
    [Theory]
    [InlineData("Ada Lovelace", "ada-1")]
    [InlineData("Ben & Sons <\"Ü\">, the Baker", "ben-02")]
    [InlineData("王小明", "wang")]
    [InlineData("=Ben", "ben-3")]
    [InlineData("", "nameless")]
    public void A_workbook_from_the_template_is_the_one_laid_out_by_itself(string name, string id)
    {
        var writer = new DealtWorkbookWriter(SampleClass.Dealt);
        foreach (var dealt in SampleClass.Dealt.Students)
        {
            var student = dealt with { Who = new(id, name) };

            Assert.Equal(writer.LayOut(student), writer.Write(student));
        }
    }

    /// <summary>Options stand in an order of the student's own, some on two lines, and two lists may share their words.</summary>
    [Theory]
    [InlineData("Cold")]
    [InlineData(
        "Wet & <heavy>, all through, from the crust to the middle, so that the pores of the crumb are shut and it sticks to the knife when it is cut cold"
    )]
    public void A_workbook_with_options_is_the_one_laid_out_by_itself_too(string words)
    {
        OptionList faults = new(
            "faults",
            ChoiceKind.Match,
            [
                new("cold", "Cold"),
                new("old", "Old"),
                new(
                    "wet",
                    "Wet & <heavy>, all through, from the crust to the middle, so that the pores are shut, as they are in a crumb that was cut too soon"
                ),
            ]
        );
        OptionList causes = new(
            "causes",
            ChoiceKind.Match,
            [new("a_short", "A short one"), new("a_long", words), new("a_third", "A third")]
        );
        Part Choosing(string id, OptionList from) =>
            new(id, "Why?", CellFormula.Of("=2"), "", Tolerance.Absolute(0), 1, false, []) { Choice = new(from, "Because.") };
        var exercise = new Exercise(
            "choice",
            "Choice",
            "yeast",
            ExerciseLevel.Open,
            5,
            "common practice, no source",
            "There are {trays} trays.",
            [new("trays", "Trays", "", 1, 90, 1)],
            [],
            [Choosing("fault", faults), Choosing("cause", causes)],
            []
        );
        var dealt = Dealer
            .Deal(
                "lesson",
                "Lesson",
                [exercise],
                SampleClass.Dealt.Marking,
                new("Class", [.. Enumerable.Range(1, 12).Select(number => new Student($"s-{number}", $"Student {number}"))]),
                5
            )
            .Class!;
        var writer = new DealtWorkbookWriter(dealt);

        Assert.All(dealt.Students, student => Assert.Equal(writer.LayOut(student), writer.Write(student)));
    }

    /// <summary>
    /// Whatever an exercise brings, a choice, a drawing or an answer in words, its workbooks come from a template and are no other for it.
    /// </summary>
    [Theory]
    [MemberData(nameof(Shipped))]
    public void A_workbook_of_an_exercise_that_ships_is_the_one_laid_out_by_itself(string id)
    {
        var exercise = ShippedExercises.All.First(exercise => exercise.Id == id);
        var dealt = Dealer
            .Deal(
                "lesson",
                "Lesson",
                [exercise],
                SampleClass.Dealt.Marking,
                new("Class", [.. Enumerable.Range(1, 2).Select(number => new Student($"s-{number}", $"Student {number}"))]),
                5
            )
            .Class!;
        var writer = new DealtWorkbookWriter(dealt);

        Assert.All(dealt.Students, student => Assert.Equal(writer.LayOut(student), writer.Write(student)));
    }

    public static TheoryData<string> Shipped => [.. ShippedExercises.All.Select(exercise => exercise.Id)];

    [Fact]
    public void Every_given_stands_where_it_was_dealt_under_its_name_and_is_locked()
    {
        Assert.All(SampleClass.Dealt.LayOut().GivensOf(_student), given =>
        {
            var cell = Assert.Single(_workbook.NamedRange(given.DefinedName).Ranges).FirstCell();
            Assert.Equal((given.Address.Sheet, given.Address.Cell), (cell.Worksheet.Name, cell.Address.ToString()));
            Assert.Equal((double)given.Value, cell.GetDouble());
            Assert.True(cell.Style.Protection.Locked);
        });
    }

    [Fact]
    public void Every_answer_cell_is_blank_named_and_open_to_the_student()
    {
        Assert.All(SampleClass.Dealt.LayOut().AnswersOf(_student), answer =>
        {
            var cell = Assert.Single(_workbook.NamedRange(answer.DefinedName).Ranges).FirstCell();
            Assert.Equal((answer.Address.Sheet, answer.Address.Cell), (cell.Worksheet.Name, cell.Address.ToString()));
            Assert.True(cell.IsEmpty(XLCellsUsedOptions.Contents));
            Assert.False(cell.Style.Protection.Locked);
        });
    }

    [Fact]
    public void The_first_sheet_carries_the_student_s_id_beside_its_label()
    {
        var id = _workbook.Worksheet(1).Cell(StartPlan.Usual.StudentId.Cell);

        Assert.Equal(StartPlan.Usual.Sheet, _workbook.Worksheet(1).Name);
        Assert.Equal("ben-02", id.GetString());
        Assert.Equal(StartPlan.StudentIdLabel, id.CellLeft().GetString());
        Assert.Equal(
            id.Address.ToString(),
            Assert.Single(_workbook.NamedRange(StartPlan.StudentIdName).Ranges).FirstCell().Address.ToString()
        );
    }

    [Fact]
    public void A_name_that_looks_like_a_formula_is_written_as_text()
    {
        var name = _workbook.Worksheet(1).Cell("C3");

        Assert.Equal("=Ben & Sons <\"Ü\">, the Baker", name.GetString());
        Assert.False(name.HasFormula);
        Assert.True(name.Style.IncludeQuotePrefix);
    }

    [Fact]
    public void Every_row_of_an_answer_carries_its_tag_its_unit_and_what_counts()
    {
        var layout = PracticeLayout.For(SampleClass.Exercises);
        Assert.All(layout.Exercises.SelectMany(exercise => exercise.Answers), answer =>
        {
            var row = _workbook.Worksheet(answer.Address.Sheet).Row(answer.Address.Row);
            Assert.Equal(answer.Tag, row.Cell(PracticeColumns.Usual.Tag).GetString());
            Assert.Equal(answer.Part.Ask, row.Cell(PracticeColumns.Usual.Label).GetString());
            Assert.Contains(answer.Part.Unit.Sign, row.Cell(PracticeColumns.Usual.Unit).GetString(), StringComparison.Ordinal);
            Assert.Contains(
                answer.Part.FormulaAsked ? "Formula asked" : "A number is enough",
                row.Cell(PracticeColumns.Usual.Note).GetString(),
                StringComparison.Ordinal
            );
        });
    }

    /// <summary>
    /// A rule that refuses would lose an answer; one that only warns keeps it (ECMA-376 Part 1, 18.18.18: stop, warning, information).
    /// </summary>
    [Fact]
    public void Every_answer_cell_says_what_is_asked_and_refuses_nothing()
    {
        Assert.All(PracticeLayout.For(SampleClass.Exercises).Exercises.SelectMany(exercise => exercise.Answers), answer =>
        {
            var rule = Assert.Single(_workbook.Worksheet(answer.Address.Sheet).DataValidations, rule =>
                rule.Ranges.Any(range => range.Contains(answer.Address.Cell))
            );
            Assert.Equal(answer.Tag, rule.InputTitle);
            Assert.StartsWith(answer.Part.FormulaAsked ? "A formula, " : "A number, ", rule.InputMessage, StringComparison.Ordinal);
            Assert.Contains(
                answer.Part.Unit.IsNone ? "without a unit" : $"in {answer.Part.Unit}",
                rule.InputMessage,
                StringComparison.Ordinal
            );
            Assert.Equal(XLErrorStyle.Warning, rule.ErrorStyle);
            // The most that programs show (ECMA-376 Part 1, 18.3.1.32).
            Assert.True(rule.InputMessage.Length <= 255 && rule.ErrorMessage.Length <= 255 && rule.InputTitle.Length <= 32);
        });
    }

    [Fact]
    public void Tabs_are_short_and_the_ways_lead_from_each_sheet_to_the_one_before_and_after()
    {
        var names = _workbook.Worksheets.Select(sheet => sheet.Name).ToList();
        var linked = _workbook
            .Worksheets.Skip(1)
            .Select(sheet =>
                sheet.Hyperlinks.Select(link => link.InternalAddress[..link.InternalAddress.LastIndexOf('!')].Trim('\'')).ToList()
            )
            .ToList();

        Assert.All(names, name => Assert.True(name.Length <= 24, name));
        Assert.Equal(names.SkipLast(1), linked.Select(ways => ways[0]));
        Assert.Equal(names.Skip(2), linked.SkipLast(1).Select(ways => ways[1]));
        Assert.Single(linked[^1]);
    }

    [Fact]
    public void Givens_stay_in_view_where_they_leave_room_to_answer()
    {
        var layout = PracticeLayout.For(SampleClass.Exercises);
        var frozen = layout.Exercises.ToDictionary(
            exercise => exercise,
            exercise => _workbook.Worksheet(exercise.Sheet).SheetView.SplitRow
        );

        Assert.Contains(frozen, sheet => sheet.Value == sheet.Key.Givens[^1].Address.Row);
        Assert.All(frozen, sheet => Assert.Contains(sheet.Value, (int[])[0, sheet.Key.Givens[^1].Address.Row]));
        Assert.All(frozen, sheet =>
            Assert.True(Enumerable.Range(1, sheet.Value).Sum(row => _workbook.Worksheet(sheet.Key.Sheet).Row(row).Height) < 300)
        );
    }

    [Theory]
    [InlineData(0, "0 of 3 answered")]
    [InlineData(2, "2 of 3 answered")]
    public void A_sheet_says_how_many_of_its_answers_are_there(int typed, string said)
    {
        var layout = PracticeLayout.For(SampleClass.Exercises).Exercises.First(exercise => exercise.Answers.Count == 3);
        var filled = WorkbookFiller.Fill(
            DealtWorkbookWriter.Write(SampleClass.Dealt, _student),
            [.. layout.Answers.Take(typed).Select(answer => new EnterText(answer.Address, "x"))]
        );
        var workbook = ReturnedWorkbookReader.Read(filled).Workbook!;

        Assert.Equal(said, new WorkbookEvaluator(workbook).Evaluate(new(layout.Sheet, layout.WayRow, layout.Columns.Label)).Value.Text);
    }

    [Fact]
    public void The_problem_is_told_with_the_student_s_own_values_and_without_markup()
    {
        Assert.StartsWith(
            "A team mixes a dough for griddle buns with 1350\u00A0g of flour at 71\u00A0% hydration. The salt is 2.0\u00A0% of the flour.",
            _workbook.Worksheet(2).Cell("A4").GetString(),
            StringComparison.Ordinal
        );
        Assert.Contains("\n• the room at 23\u00A0°C,\n", _workbook.Worksheet(3).Cell("A4").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Sheets_are_protected_without_a_password_and_leave_room_to_work()
    {
        Assert.All(_workbook.Worksheets, sheet =>
        {
            Assert.True(sheet.Protection.IsProtected);
            Assert.False(sheet.Protection.IsPasswordProtected);
            Assert.True(
                sheet.Protection.AllowedElements.HasFlag(XLSheetProtectionElements.InsertRows | XLSheetProtectionElements.FormatCells)
            );
        });
        var scratch = PracticeLayout.For(SampleClass.Exercises).Exercises[0].ScratchTo;
        Assert.False(_workbook.Worksheet(scratch.Sheet).Cell(scratch.Cell).Style.Protection.Locked);
    }

    [Fact]
    public void Beside_the_words_all_columns_to_work_in_are_equally_wide()
    {
        var exercise = PracticeLayout.For(SampleClass.Exercises).Exercises[0];
        var sheet = _workbook.Worksheet(exercise.Sheet);

        var widths = sheet.Columns(exercise.ScratchFrom.Column + 1, exercise.ScratchTo.Column).Select(column => column.Width).ToList();

        Assert.Equal(4, widths.Count);
        Assert.Single(widths.Distinct());
    }

    [Fact]
    public void A_percentage_is_stored_as_a_fraction_and_shown_times_a_hundred()
    {
        var hydration = _workbook.NamedRange("hydration_hydration").Ranges.First().FirstCell();

        Assert.Equal(0.71, hydration.GetDouble());
        Assert.Equal("0 %", hydration.Style.NumberFormat.Format);
    }
}
