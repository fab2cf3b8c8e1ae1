using System.Globalization;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.Grading.OnPaper;
using ClassKit.Wording.Papers;
using ClassKit.Workbooks.OnPaper;
using ClassKit.Workbooks.Tests.Samples;

namespace ClassKit.Workbooks.Tests.OnPaper;

/// <summary>What an instructor types from paper is found, whichever program saved it, and nothing else is.</summary>
public sealed class PaperReaderTests
{
    private static readonly DealtClass Dealt = SampleClass.Dealt;
    private static readonly byte[] Written = PaperWriter.Write(Dealt);

    /// <summary>
    /// By hand in the first student's row: number, tick, number, another kind of tick, percent as a program with a percent cell stores 65.
    /// </summary>
    private const string Typing = """
        p = w['Paper']
        at = {c.value: c.column for c in p[6] if c.value}
        p.cell(7, at['1a']).value = 812.5
        p.cell(7, at['1a ✓']).value = 'yes'
        p.cell(7, at['1b']).value = 'about 900'
        p.cell(7, at['1b ✓']).value = 'perhaps'
        p.cell(7, at['1c']).value = 0.65

        """;

    [Fact]
    public void Nothing_typed_is_nobodys_work()
    {
        Assert.Empty(Read(Written).Work);
        Assert.Empty(Read(LibreOffice.SaveAgain(Written)).Work);
    }

    [Fact]
    public void Numbers_words_and_ticks_are_found_and_what_is_no_tick_is_named()
    {
        var typed = OpenPyXl.Run(Written, Typing).Saved;
        foreach (var file in (byte[][])[typed, LibreOffice.SaveAgain(typed)])
        {
            var reading = Read(file);
            var work = Assert.Single(reading.Work);

            Assert.Equal((Dealt.Students[0].Who.Id, "paper.xlsx row 7"), (work.Student.Who.Id, work.Place));
            Assert.Equal(["water 812.5 True", "dough about 900 False", "share 0.65 False"], work.Answers.Select(Shown));
            var fault = Assert.IsType<PaperFault.NoTick>(Assert.Single(reading.Faults));
            Assert.Equal((Dealt.Students[0].Who, "perhaps"), (fault.Student, fault.Found.Text));
            Assert.StartsWith($"{fault.Student.Shown}, 1", PaperFaultWords.Of(fault), StringComparison.Ordinal);
        }
    }

    /// <summary>Half of the teachers that one asks mark with a cross what is wrong.</summary>
    [Theory]
    [InlineData("x")]
    [InlineData("X")]
    [InlineData("×")]
    public void A_cross_is_no_tick_and_is_named_with_its_cell(string cross)
    {
        var reading = Read(OpenPyXl.Run(Written, Typing.Replace("'yes'", $"'{cross}'", StringComparison.Ordinal)).Saved);

        Assert.Equal("water 812.5 False", Shown(Assert.Single(reading.Work).Answers[0]));
        var fault = Assert.IsType<PaperFault.NoTick>(reading.Faults[0]);
        Assert.Equal(cross, fault.Found.Text);
        Assert.Contains("7", fault.Cell, StringComparison.Ordinal);
        Assert.Contains("Type ✓", PaperFaultWords.Of(fault), StringComparison.Ordinal);
    }

    /// <summary>Only the names were sorted: nobody knows whose the answers are.</summary>
    [Fact]
    public void A_row_with_one_students_id_and_anothers_name_is_nobodys()
    {
        var typed = OpenPyXl.Run(Written, Typing + "p.cell(7, at['Student']).value = 'Zoe Lund'\n").Saved;

        var reading = Read(typed);

        Assert.Empty(reading.Work);
        Assert.Equal(Dealt.Students[0].Who.Id, Assert.IsType<PaperFault.OtherName>(Assert.Single(reading.Faults)).Student.Id);
    }

    [Fact]
    public void Rows_that_were_sorted_and_columns_that_were_put_in_change_nothing_and_strangers_are_named()
    {
        var typed = OpenPyXl
            .Run(
                Written,
                Typing
                    + """
                    p.insert_rows(3, 2)
                    p.insert_cols(1)
                    p.cell(9, 3).value = 'nobody-99'
                    """
            )
            .Saved;
        var reading = Read(typed);

        Assert.Empty(reading.Work);
        Assert.Equal("nobody-99", Assert.IsType<PaperFault.UnknownStudent>(Assert.Single(reading.Faults)).Id.Text);
        Assert.Equal(
            3,
            Assert.Single(Read(OpenPyXl.Run(Written, Typing + "p.insert_rows(3, 2)\np.insert_cols(1)").Saved).Work).Answers.Count
        );
    }

    [Fact]
    public void Another_deals_workbook_a_picture_and_any_table_are_refused()
    {
        Assert.IsType<PaperRefusal.Unreadable>(Read("\u0089PNG"u8.ToArray()).Refusal);
        Assert.IsType<PaperRefusal.NoTable>(Read(OpenPyXl.Run(Written, "w['Paper']['B6'] = 'Nothing'").Saved).Refusal);
        var (ours, theirs) = (
            Dealt with
            {
                Identity = DealIdentity.Read(new('1', 64)),
            },
            Dealt with
            {
                Identity = DealIdentity.Read(new('2', 64)),
            }
        );
        Assert.Null(PaperReader.Read(PaperWriter.Write(ours), "paper.xlsx", "", ours).Refusal);
        Assert.IsType<PaperRefusal.OtherDeal>(PaperReader.Read(PaperWriter.Write(theirs), "paper.xlsx", "", ours).Refusal);
    }

    private static PaperReading Read(byte[] file) => PaperReader.Read(file, "paper.xlsx", new string('0', 64), Dealt);

    private static string Shown(PaperAnswer answer) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{answer.Part} {(answer.Written.Kind == CellValueKind.Number ? answer.Written.Number : answer.Written.Text)} {answer.MethodShown}"
        );
}
