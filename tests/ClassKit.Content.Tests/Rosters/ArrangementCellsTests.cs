using ClassKit.Content.Rosters;

namespace ClassKit.Content.Tests.Rosters;

/// <summary>Arrangements stand in columns of the roster, in the words that instructors write.</summary>
public sealed class ArrangementCellsTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("yes", "", "", true, 0)]
    [InlineData("x", "25 %", "", true, 0.25)]
    [InlineData("no", "25%", "", false, 0.25)]
    [InlineData("", "25", "", false, 0.25)]
    [InlineData("", "0.25", "", false, 0.25)]
    [InlineData("", "\"0,5\"", "", false, 0.5)]
    [InlineData("", "100 %", "2026-11-20 17:00", false, 1)]
    [InlineData("", "", "2026-11-20T17:00", false, 0)]
    public void Cells_are_understood(string large, string extra, string due, bool isLarge, double share)
    {
        var reading = RosterReader.Read(
            _folder.Write("class.csv", $"id,name,Large print,Extra time,Due\nana,Ana Lima,{large},{extra},{due}\nben,Ben Okoye,,,\n")
        );

        Assert.Empty(reading.Problems);
        var (id, arrangement) = Assert.Single(reading.Model!.Arrangements);
        Assert.Equal(
            ("ana", isLarge, (decimal)share, due.Length > 0),
            (id, arrangement.LargePrint, arrangement.ExtraTime, arrangement.Due is not null)
        );
    }

    [Theory]
    [InlineData("perhaps", "", "", "large print", "`yes`")]
    [InlineData("", "a bit", "", "extra time", "`25 %`")]
    [InlineData("", "-10 %", "", "extra time", "`25 %`")]
    [InlineData("", "900 %", "", "extra time", "`25 %`")]
    [InlineData("", "", "next Friday", "due", "`2026-11-20 17:00`")]
    [InlineData("", "", "none", "due", "`2026-11-20 17:00`")]
    public void What_is_not_understood_is_said_with_its_line_and_an_example(
        string large,
        string extra,
        string due,
        string column,
        string example
    )
    {
        var problem = Assert.Single(
            RosterReader
                .Read(_folder.Write("class.csv", $"id,name,large print,extra time,due\nana,Ana Lima,{large},{extra},{due}\n"))
                .Problems
        );

        Assert.Equal(2, problem.Line);
        Assert.Contains($"`{column}`", problem.Found, StringComparison.Ordinal);
        Assert.Contains(example, problem.Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("yes for steam", "25 %; 50 % for steam", "2026-11-20 17:00 for steam", "steam", true, 0.5, true)]
    [InlineData("yes for steam", "25 %; 50 % for steam", "2026-11-20 17:00 for steam", "yeast", false, 0.25, false)]
    [InlineData("yes; no for Rolls for Saturday", "25 %; no for Rolls for Saturday", "", "Rolls for Saturday", false, 0, false)]
    [InlineData("yes; no for Rolls for Saturday", "25 %; no for Rolls for Saturday", "", "Rolls", true, 0.25, false)]
    public void What_holds_for_one_work_alone_names_it(
        string large,
        string extra,
        string due,
        string work,
        bool isLarge,
        double share,
        bool isDue
    )
    {
        var reading = RosterReader.Read(
            _folder.Write("class.csv", $"id,name,Large print,Extra time,Due\nana,Ana Lima,{large},{extra},{due}\n")
        );

        Assert.Empty(reading.Problems);
        var there = reading.Model!.ArrangementOf("ana").In(work);
        Assert.Equal((isLarge, (decimal)share, isDue), (there.LargePrint, there.ExtraTime, there.Due is not null));
    }

    [Theory]
    [InlineData("", "25 %; 50 %", "")]
    [InlineData("", "a bit for steam", "")]
    [InlineData("", "25 %; 30 %; 50 % for steam", "")]
    [InlineData("", "", "soon for steam")]
    [InlineData("perhaps for steam", "", "")]
    public void What_is_said_twice_or_not_understood_of_one_work_is_refused(string large, string extra, string due) =>
        Assert.Single(
            RosterReader
                .Read(_folder.Write("class.csv", $"id,name,Large print,Extra time,Due\nana,Ana Lima,{large},{extra},{due}\n"))
                .Problems
        );

    [Theory]
    [InlineData("three_trays", "", "three_trays", "")]
    [InlineData("three_trays; dose", "muffins; Bench day one", "three_trays|dose", "muffins|Bench day one")]
    [InlineData("\"three_trays, dose dose\"", " muffins ", "three_trays|dose", "muffins")]
    public void A_smaller_set_and_excused_work_are_lists(string without, string excused, string ids, string works)
    {
        var reading = RosterReader.Read(_folder.Write("class.csv", $"id,name,Leaves out,Excused from\nana,Ana Lima,{without},{excused}\n"));

        Assert.Empty(reading.Problems);
        var arrangement = reading.Model!.ArrangementOf("ana");
        Assert.Equal((ids, works), (string.Join('|', arrangement.LeavesOut), string.Join('|', arrangement.ExcusedFrom)));
    }

    [Fact]
    public void What_is_no_name_of_an_exercise_is_said()
    {
        var problem = Assert.Single(
            RosterReader.Read(_folder.Write("class.csv", "id,name,leaves out\nana,Ana Lima,3rd one\n")).Problems,
            one => one.Found.Contains("`3rd`", StringComparison.Ordinal)
        );

        Assert.Equal(2, problem.Line);
        Assert.Contains("`three_trays; dose_baking_powder`", problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void A_roster_without_such_columns_arranges_nothing() =>
        Assert.Empty(RosterReader.Read(_folder.Write("class.csv", "id,name\nana,Ana Lima\n")).Model!.Arrangements);
}
