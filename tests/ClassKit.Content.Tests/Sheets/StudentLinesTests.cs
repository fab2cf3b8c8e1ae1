using System.Text;
using ClassKit.Content.Sheets;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Tests.Sheets;

/// <summary>RFC 4180: a record in quotes may run over lines, and lines end in any way.</summary>
public class StudentLinesTests
{
    private static readonly SoughtStudent Ada = new(
        new("ada-berg", "Ada Berg"),
        [new("ada-berg", "Ada Berg"), new("ben-okoye", "Ben Okoye")]
    );

    [Theory]
    [InlineData("id,name\nada-berg,Ada Berg\nben-okoye,Ben Okoye\n", "id,name\nben-okoye,Ben Okoye\n", 1)]
    [InlineData("\uFEFFname;mark\r\nBen Okoye;2\r\n\r\nada berg;3", "\uFEFFname;mark\r\nBen Okoye;2\r\n\r\n", 1)]
    [InlineData(
        "# remark\nstudent,why\nada-berg,\"two\nlines, \"\"so\"\"\"\nben-okoye,\"and\r\nmore\"\n",
        "# remark\nstudent,why\nben-okoye,\"and\r\nmore\"\n",
        1
    )]
    [InlineData("student\tpart\rada-berg\ta\rada-berg\tb\rben-okoye\ta\r", "student\tpart\rben-okoye\ta\r", 2)]
    [InlineData("id,name\nben-okoye,Ben Okoye with Ada Berg\n", "id,name\nben-okoye,Ben Okoye with Ada Berg\n", 0)]
    public void The_students_records_go_and_every_other_byte_stays(string table, string left, int taken)
    {
        var without = StudentLines.Without(Encoding.UTF8.GetBytes(table), Ada)!.Value;

        Assert.Equal((left, taken), (Encoding.UTF8.GetString(without.Left), without.Taken));
    }

    /// <summary>
    /// Letters as spreadsheet programs of western Europe and Excel's “Unicode text” save them; a byte that is a letter of no table stays,
    /// too.
    /// </summary>
    [Theory]
    [InlineData("windows-1252", "")]
    [InlineData("utf-16", "\uFEFF")]
    [InlineData("utf-16BE", "\uFEFF")]
    public void Letters_of_other_tables_stay_as_they_were_byte_for_byte(string letters, string mark)
    {
        var encoding = CodePagesEncodingProvider.Instance.GetEncoding(letters) ?? Encoding.GetEncoding(letters);
        byte[] Table(string text) => encoding.GetBytes(mark + text);

        var without = StudentLines.Without(Table("id;name\r\nada-berg;Ada Berg\r\nben-okoye;Zoë – “Ben” ½ €\r\n"), Ada)!.Value;

        Assert.Equal(1, without.Taken);
        Assert.Equal(Table("id;name\r\nben-okoye;Zoë – “Ben” ½ €\r\n"), without.Left);
        Assert.Equal(
            [.. "ben-okoye,"u8, 0x81, 0x0A],
            StudentLines.Without([.. "student,x\nada-berg,1\nben-okoye,"u8, 0x81, 0x0A], Ada)!.Value.Left[10..]
        );
    }

    [Fact]
    public void What_is_no_table_that_can_be_put_together_again_is_left_alone()
    {
        Assert.Null(
            StudentLines.Without(
                [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes("id,name\nada-berg,Ada\nben-okoye,Ben\n"), 1],
                Ada
            )
        );
        Assert.Null(StudentLines.Without(Encoding.UTF8.GetBytes("id,name\nada-berg,\"Ada\nben-okoye,Ben\n"), Ada));
        Assert.Null(StudentLines.Without(Encoding.UTF8.GetBytes("id,name\u2028ada-berg,Ada\nben-okoye,Ben\n"), Ada));
    }
}
