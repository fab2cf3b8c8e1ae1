using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Exercises;
using ClassKit.Content.Tests.Exercises;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;

namespace ClassKit.Content.Tests.Classes;

public sealed class CorrectionsReaderTests : IDisposable
{
    private const string Header = "student,part,points,reason\n";

    private readonly ContentFolder _folder = new();
    private readonly DealtClass _dealt;

    public CorrectionsReaderTests()
    {
        var exercise = ExerciseReader.Read(_folder.Write("bread_water.md", SampleExercise.Text)).Model!;
        var roster = new Roster("Tuesday bakers", [new("ana", "Ana Lima"), new("bo", "Bo Li"), new("bo-2", "Bo Li")]);
        _dealt = Dealer.Deal("water", "Water", [exercise], new("marks", "Marks", 0.4m, 1, 0, 0.6m), roster, 1).Class!;
    }

    public void Dispose() => _folder.Dispose();

    private Reading<IReadOnlyList<Correction>> Read(string text) => CorrectionsReader.Read(_folder.Write("corrections.csv", text), _dealt);

    [Theory]
    [InlineData("student,part,points,reason\nana,bread_water.water,0.5,On paper\n")]
    [InlineData("student;part;points;reason\r\nAna Lima;bread_water.water;0,5;On paper\r\n")]
    [InlineData("reason,points,part,student\n\"On paper\",0.50,bread_water.water,ANA LIMA")]
    public void A_student_is_named_by_id_or_name_and_half_a_point_in_any_spelling(string text)
    {
        Assert.Equal([new Correction("ana", "bread_water", "water", 0.5m, "On paper")], Read(text).Model!);
    }

    [Theory]
    [InlineData("1a", 0)]
    [InlineData("1B", 1)]
    public void A_part_may_be_called_as_every_page_calls_it(string part, int place)
    {
        Assert.Equal(_dealt.Exercises[0].Parts[place].Id, Assert.Single(Read($"{Header}ana,{part},1,On paper\n").Model!).Part);
    }

    [Fact]
    public void A_table_without_lines_corrects_nothing()
    {
        Assert.Empty(Read(Header).Model!);
    }

    [Theory]
    [InlineData("anna,bread_water.water,1,x", "`anna`", "`ana`")]
    [InlineData("Bo Li,bread_water.water,1,x", "Several students", "id")]
    [InlineData("ana,bread_water.watr,1,x", "`bread_water.watr`", "`bread_water.water`")]
    [InlineData("ana,,1,x", "names no part", "bread_water.dough")]
    [InlineData("ana,bread_water.water,3,x", "`3`", "from 0 to 2")]
    [InlineData("ana,bread_water.water,-1,x", "`-1`", "from 0 to 2")]
    [InlineData("ana,bread_water.water,+1,x", "`+1`", "from 0 to 2")]
    [InlineData("ana,bread_water.dough,two,x", "`two`", "from 0 to 1.5")]
    [InlineData("ana,bread_water.water,1,", "no reason", "student reads it")]
    public void What_is_wrong_with_a_line_is_said_with_its_number_and_a_way_out(string line, string found, string remedy)
    {
        Complaint.Only(Read(Header + "ana,bread_water.dough,1,fine\n" + line + "\n"), 3, found, remedy);
    }

    [Fact]
    public void An_answer_is_corrected_once()
    {
        Complaint.Only(
            Read(Header + "ana,bread_water.water,1,one\nAna Lima,bread_water.water,2,two\n"),
            3,
            "line 2 already",
            "Keep the line"
        );
    }
}
