using System.Text;
using ClassKit.Content.Classes;
using ClassKit.UseCases.Dealing;

namespace ClassKit.Desk.Tests.Decisions;

/// <summary>A decision that is taken back leaves the instructor's table as it was without it, byte for byte.</summary>
public class UndoTests
{
    [Theory]
    [InlineData(
        "student,part,points,reason\r\namara-osei,1a,1,\"two\r\nlines\"\r\nBảo Nguyễn,1b,0,second\r\n",
        "student,part,points,reason\r\nBảo Nguyễn,1b,0,second\r\n"
    )]
    [InlineData(
        "student;part;points;reason\nbao-nguyen;1a;0,5;other\namara-osei;oven_dial.PART;1;last",
        "student;part;points;reason\nbao-nguyen;1a;0,5;other\n"
    )]
    public void One_line_goes_and_the_others_stay(string table, string expected)
    {
        var request = new DealPaths(
            "shipped:/lessons/one-tin-three-lifts",
            Repository.PathOf("demo-cohort/roster.csv"),
            new(Exercises.Choosing.SetWish.None with { Exercises = ["oven_dial"] }, IsSpread: false, 7)
        ).Read();
        var dealt = DealPractice.Run(request.Model!, UseCases.Running.Run.Unwatched).Model!.Dealt;
        var part = dealt.Exercises[0].Parts[0].Id;
        var answer = new HashSet<(string, string, string)> { ("amara-osei", "oven_dial", part) };
        var bytes = Encoding.UTF8.GetBytes(table.Replace("PART", part, StringComparison.Ordinal));
        Assert.Equal(expected, Encoding.UTF8.GetString(CorrectionsEraser.Without(bytes, dealt, answer)!));
        Assert.Null(CorrectionsEraser.Without(Encoding.UTF8.GetBytes(expected), dealt, answer));
    }
}
