using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Bench;

namespace ClassKit.Terms.Tests.Bench;

/// <summary>What a filled-in form says of each student, worked out by hand: the team's levels, but for a student's own.</summary>
public sealed class BenchFillingTests
{
    private static readonly BenchForm Form = new(
        "Bench",
        new([("Safe", 2), ("Mixing", 1)], [0, 1, 2], ["Not yet", "Secure", "Excellent"]),
        [
            ["a", "b", "c"],
            ["d", "e", "f"],
        ],
        "Class",
        [new("ada", "Ada"), new("ben", "Ben"), new("cleo", "Cleo"), new("dan", "Dan")],
        2
    );

    [Fact]
    public void Members_have_their_teams_levels_and_a_students_own_stand_over_them()
    {
        var filled = Filled(
            ("team.1.0", "Secure"),
            ("team.1.1", "excellent"),
            ("team.2.0", "0"),
            ("team.2.1", "Secure"),
            ("student.ben.0", "Not yet"),
            ("marker", " Chef Ines ")
        );

        Assert.Empty(filled.Gaps);
        Assert.Equal("Chef Ines", filled.Sheet.Marker);
        Assert.Equal(["ada 1 2", "ben 0 2", "cleo 0 1", "dan 0 1"], Shown(filled));
    }

    [Fact]
    public void Who_is_in_another_team_has_that_teams_levels_and_who_was_away_has_none()
    {
        var filled = Filled(
            ("team.1.0", "Secure"),
            ("team.1.1", "Secure"),
            ("team.2.0", "Excellent"),
            ("team.2.1", "Excellent"),
            ("student.ada.team", "2"),
            ("student.ben.team", "away")
        );

        Assert.Empty(filled.Gaps);
        Assert.Equal(["ada 2 2", "cleo 2 2", "dan 2 2"], Shown(filled));
    }

    /// <summary>Where the roster has teams, members are those of the roster, and a student is put elsewhere by a team's name.</summary>
    [Fact]
    public void Teams_of_the_roster_are_the_forms()
    {
        var form = Form with
        {
            Students =
            [
                new("ada", "Ada") { Team = "Rye" },
                new("ben", "Ben") { Team = "Oat" },
                new("cleo", "Cleo") { Team = "Oat" },
                new("dan", "Dan") { Team = "rye" },
            ],
        };
        var filled = BenchFilling.Of(
            form,
            new Dictionary<string, string>
            {
                ["team.1.0"] = "0",
                ["team.1.1"] = "0",
                ["team.2.0"] = "2",
                ["team.2.1"] = "2",
                ["student.cleo.team"] = "RYE",
            },
            "file"
        );

        Assert.Equal(["Oat", "Rye"], [form.TeamName(1), form.TeamName(2)]);
        Assert.Empty(filled.Gaps);
        Assert.Equal(["ada 2 2", "ben 0 0", "cleo 2 2", "dan 2 2"], Shown(filled));
        Assert.Equal("Team 3", $"Team {(Form with { Teams = 3 }).TeamName(3)}");
    }

    [Fact]
    public void What_is_said_of_a_team_and_of_a_student_stands_together()
    {
        var filled = Filled(("team.1.comment", "Clean bench."), ("student.ben.comment", "Warned others."));

        Assert.Equal("Clean bench.", filled.Sheet.Comments["ada"]);
        Assert.Equal("Clean bench. Warned others.", filled.Sheet.Comments["ben"]);
        Assert.DoesNotContain("cleo", filled.Sheet.Comments.Keys);
    }

    [Fact]
    public void What_is_missing_or_unknown_is_named_and_takes_nobody_else_along()
    {
        var filled = Filled(
            ("team.1.0", "Secure"),
            ("team.2.0", "Secure"),
            ("team.2.1", "Secure"),
            ("student.dan.1", "superb"),
            ("student.cleo.team", "7")
        );

        // A level that nobody knows is not taken for the team's.
        Assert.Empty(Shown(filled));
        Assert.Equal([1, null], filled.Sheet.Begun["dan"]);
        Assert.Equal(
            [new BenchGap.UnknownLevel("student.dan.1", "superb"), new BenchGap.NoTeam(Form.Students[2], "7", 2)],
            filled.Gaps.Where(gap => gap is not BenchGap.NoLevel).OrderBy(gap => gap is BenchGap.NoTeam)
        );
        Assert.Equal(
            ["ada: Mixing", "ben: Mixing", "dan: Mixing"],
            filled.Gaps.OfType<BenchGap.NoLevel>().Select(gap => $"{gap.Student.Id}: {string.Join(' ', gap.Criteria)}")
        );
    }

    [Theory]
    [InlineData(24, 6, "1111222233334444555566661")]
    [InlineData(7, 3, "1112233")]
    [InlineData(2, 5, "13")]
    public void Until_somebody_says_otherwise_teams_are_as_even_as_can_be(int students, int teams, string expected)
    {
        var form = Form with { Students = [.. Enumerable.Range(0, students).Select(at => new Student($"s{at}", "S"))], Teams = teams };

        Assert.Equal(expected[..students], string.Concat(Enumerable.Range(0, students).Select(form.TeamOf)));
        var sizes = Enumerable.Range(0, students).GroupBy(form.TeamOf).Select(team => team.Count()).ToList();
        Assert.InRange(sizes.Max() - sizes.Min(), 0, 1);
    }

    [Fact]
    public void Another_class_list_rubric_or_number_of_teams_is_another_form()
    {
        BenchForm[] others =
        [
            new(Form.Rubric, Form.Scale, Form.Descriptors, Form.Cohort, [.. Form.Students.Take(3)], Form.Teams),
            new(Form.Rubric, Form.Scale, Form.Descriptors, Form.Cohort, Form.Students, 3),
            new(Form.Rubric, Form.Scale with { Levels = [0, 1, 3] }, Form.Descriptors, Form.Cohort, Form.Students, Form.Teams),
            new("Other", Form.Scale, Form.Descriptors, Form.Cohort, Form.Students, Form.Teams),
        ];

        Assert.Equal(others.Length + 1, others.Append(Form).Select(form => form.Identity).Distinct().Count());
    }

    /// <summary>
    /// What a class is called changes; whose marks are in a file does not. The earlier identity is put together as it was until 2026-11-29,
    /// with the name.
    /// </summary>
    [Theory]
    [InlineData("Bench · Class", "Class")]
    [InlineData("Bench · Old name", "Old name")]
    [InlineData("Bench", "")]
    public void A_form_is_the_same_after_its_class_was_renamed(string called, string nameThen)
    {
        var renamed = Form with { Cohort = "New name" };
        var earlier = ClassKit.Exercises.Identity.FormIdentity.Of(
            "bench marks",
            ["Bench", nameThen, "2", "Safe 2", "Mixing 1", "Not yet 0", "Secure 1", "Excellent 2", "ada", "ben", "cleo", "dan"]
        );

        Assert.Equal(Form.Identity, renamed.Identity);
        Assert.True(renamed.IsOf(Form.Identity, null));
        Assert.True(renamed.IsOf(earlier, called));
        Assert.False((renamed with { Teams = 3 }).IsOf(earlier, called));
        Assert.False(renamed.IsOf(earlier, "Other · " + nameThen));
    }

    private static BenchFilling Filled(params (string Name, string Value)[] fields) =>
        BenchFilling.Of(Form, fields.ToDictionary(field => field.Name, field => field.Value), "bench-marks");

    private static IEnumerable<string> Shown(BenchFilling filled) =>
        filled.Sheet.Places.Select(student => $"{student.Key} {string.Join(' ', student.Value)}");
}
