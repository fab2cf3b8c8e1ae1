using System.Text;
using ClassKit.Content.Classes;
using ClassKit.Content.Exercises;
using ClassKit.Content.Tests.Exercises;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;

namespace ClassKit.Content.Tests.Classes;

/// <summary>Corrections go to the end of the instructor's table in its own way, and it reads as before and after.</summary>
public sealed class CorrectionsAppenderTests : IDisposable
{
    private static readonly Correction Added = new("bo-2", "bread_water", "water", 0.5m, "Looked at it, and it is \"right\".");

    private readonly ContentFolder _folder = new();
    private readonly DealtClass _dealt;

    public CorrectionsAppenderTests()
    {
        var exercise = ExerciseReader.Read(_folder.Write("bread_water.md", SampleExercise.Text)).Model!;
        var roster = new Roster("Tuesday bakers", [new("ana", "Ana Lima"), new("bo", "Bo Li"), new("bo-2", "Bo Li")]);
        _dealt = Dealer.Deal("water", "Water", [exercise], new("marks", "Marks", 0.4m, 1, 0, 0.6m), roster, 1).Class!;
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(
        "student,part,points,reason\nana,bread_water.water,1,On paper\n",
        "bo-2,bread_water.water,0.5,\"Looked at it, and it is \"\"right\"\".\"\n"
    )]
    [InlineData(
        "student;part;points;reason\r\nana;bread_water.water;1;On paper",
        "\r\nbo-2;bread_water.water;0,5;\"Looked at it, and it is \"\"right\"\".\"\r\n"
    )]
    [InlineData("\uFEFFreason\tpoints\tpart\tstudent\r\n", "\"Looked at it, and it is \"\"right\"\".\"\t0,5\tbread_water.water\tbo-2\r\n")]
    [InlineData("", "student,part,points,reason\r\nbo-2,bread_water.water,0.5,\"Looked at it, and it is \"\"right\"\".\"\r\n")]
    public void The_table_keeps_every_byte_its_columns_separator_and_line_ends(string table, string expected)
    {
        var before = Encoding.UTF8.GetBytes(table);

        var lines = CorrectionsAppender.Lines(before, [Added]);

        Assert.Equal(expected, Encoding.UTF8.GetString(lines));
        var read = CorrectionsReader.Read(_folder.Write("corrections.csv", Encoding.UTF8.GetString([.. before, .. lines])), _dealt);
        Assert.Empty(read.Problems);
        Assert.Equal(Added, read.Model![^1]);
    }

    [Fact]
    public void Where_there_is_no_table_yet_one_is_begun() =>
        Assert.StartsWith(
            "student,part,points,reason\r\n",
            Encoding.UTF8.GetString(CorrectionsAppender.Lines(null, [Added])),
            StringComparison.Ordinal
        );
}
