using ClassKit.Exercises.Cohorts;

namespace ClassKit.Exercises.Tests.Cohorts;

public class SoughtStudentTests
{
    private static readonly SoughtStudent Min = new(
        new("min-jun", "Min Jun", "min@example.org"),
        [new("min-jun", "Min Jun"), new("min-jun-park", "Min-jun Park"), new("olive", "Olive")]
    );

    [Theory]
    [InlineData("min-jun", true)]
    [InlineData("MIN-JUN (2)", true)]
    [InlineData("min-jun late", true)]
    [InlineData("set 1 min-jun", true)]
    [InlineData("min-jun-park", false)]
    [InlineData("min-jun.park", false)]
    [InlineData("amin-jun", false)]
    [InlineData("", false)]
    public void A_file_bears_an_id_only_where_it_is_no_part_of_a_longer_one(string name, bool isTheirs) =>
        Assert.Equal(isTheirs, Min.IsIdOf(name));

    [Theory]
    [InlineData("Done by Min Jun.", true)]
    [InlineData("min@example.org", true)]
    [InlineData("min-jun-park", false)]
    [InlineData("Benmin Jun", false)]
    public void A_name_counts_as_a_whole_word(string text, bool isNamed) => Assert.Equal(isNamed, Min.IsNamedIn(text));

    /// <summary>As programs write names into files, and lists of schools.</summary>
    [Theory]
    [InlineData("José Álvarez.xlsx")]
    [InlineData("Jose\u0301 A\u0301lvarez.xlsx")]
    [InlineData("Alvarez_Jose_flour.docx")]
    [InlineData("alvarez, jose")]
    [InlineData("\"Álvarez, José\",9")]
    [InlineData("JOSÉ  ÁLVAREZ")]
    [InlineData("José\u00A0Álvarez")]
    [InlineData("JoseAlvarez_2")]
    [InlineData("Muellers list: Jose Alvarez")]
    public void A_name_is_seen_however_a_program_wrote_it(string text)
    {
        var sought = new SoughtStudent(new("s01", "José Álvarez"), []);

        Assert.True(sought.IsNamedIn(text));
        // What goes of itself goes by what stands there to the letter.
        Assert.Equal(text.Contains("José Álvarez", StringComparison.OrdinalIgnoreCase), sought.IsMeantBy(text));
    }

    [Theory]
    [InlineData("Mueller, Anna", true)]
    [InlineData("Anna Muller", true)]
    [InlineData("Annam Uller", false)]
    [InlineData("Anna and Müller", false)]
    [InlineData("Müller", false)]
    public void Umlauts_may_be_written_out(string text, bool isNamed) =>
        Assert.Equal(isNamed, new SoughtStudent(new("s02", "Anna Müller"), []).IsNamedIn(text));

    [Fact]
    public void A_row_is_a_students_only_in_a_column_of_students()
    {
        var olive = new SoughtStudent(new("olive", "Olive"), Min.Others);

        // Olive is a student and a fruit: in a list of ingredients nobody else of the class stands in that column.
        Assert.Empty(StudentRows.Of(Cells(["id", "price"], ["olive", "3"], ["butter", "2"]), olive));
        Assert.Equal([1], StudentRows.Of(Cells(["id", "price"], ["olive", "3"], ["min-jun", "2"]), olive).Order());
        Assert.Equal([1], StudentRows.Of(Cells(["Student", "points"], ["olive", "3"]), olive).Order());
    }

    [Fact]
    public void Points_that_are_somebodys_number_are_no_students()
    {
        var twelve = new SoughtStudent(new("12", "Ann Lee"), [new("12", "Ann Lee"), new("14", "Ben Okoye"), new("9", "Cleo Marín")]);

        Assert.Equal([1], StudentRows.Of(Cells(["student", "Percentages"], ["12", "14"], ["14", "12"], ["9", "12"]), twelve).Order());
        Assert.Equal([1], StudentRows.Of(Cells(["Student ID", "Points"], ["12", "14"], ["14", "12"]), twelve).Order());
        Assert.False(twelve.IsNamedIn("Bake for 12 minutes."));
        Assert.True(twelve.IsNamedIn("12: Ann Lee"));
        Assert.Empty(StudentRows.Of(Cells(["Sums", "Points"], ["12", "14"], ["14", "12"]), twelve));
    }

    [Fact]
    public void Of_two_of_one_name_the_id_tells()
    {
        var sought = new SoughtStudent(new("ann-lee", "Ann Lee"), [new("ann-lee", "Ann Lee"), new("ann-lee-2", "Ann Lee")]);

        Assert.Equal([1], StudentRows.Of(Cells(["id", "name"], ["ann-lee", "Ann Lee"], ["ann-lee-2", "Ann Lee"]), sought).Order());
    }

    [Theory]
    [InlineData("10236;Ann Lee;6", true)]
    [InlineData("10235;Ann Lee;6", false)]
    [InlineData("10236;Ann Lee;see 10235", false)]
    [InlineData("10236;Ann Lee;ann@example.org", false)]
    [InlineData("Ann Lee;6", false)]
    [InlineData("10237;Ann Lee;6", false)]
    public void What_has_a_namesakes_id_alone_is_the_namesakes(string line, bool isOthers)
    {
        var sought = new SoughtStudent(
            new("10235", "Ann Lee", "ann@example.org"),
            [new("10235", "Ann Lee"), new("10236", "Ann Lee"), new("10237", "Ben Okoye")]
        );

        Assert.Equal(isOthers, sought.IsOfNamesake(line.Split(';')));
    }

    private static List<(int Row, int Column, string Text)> Cells(params string[][] rows) =>
        [.. rows.SelectMany((row, at) => row.Select((text, column) => (at, column, text)))];
}
