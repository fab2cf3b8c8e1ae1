using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Bench;

namespace ClassKit.Terms.Tests.Bench;

/// <summary>Forms at random, filled in at random: whoever stays has the levels, teams and comments that they had.</summary>
public class LeavingStudentTests
{
    private static readonly BenchScale Scale = new([("Weighing", 1), ("Mixing", 2)], [0, 1, 2], ["Not yet", "Secure", "Excellent"]);

    [Fact]
    public void Nobody_elses_marks_change_when_a_student_leaves()
    {
        for (var seed = 0; seed < 300; seed++)
        {
            var random = new Random(seed);
            var form = new BenchForm(
                "Bench work",
                Scale,
                [
                    ["", "", ""],
                    ["", "", ""],
                ],
                "Class",
                [
                    .. Enumerable
                        .Range(0, random.Next(2, 9))
                        .Select(at => new Student($"s{at}", $"S {at}") { Team = seed % 2 == 0 ? null : $"T{random.Next(4)}" }),
                ],
                random.Next(1, 5)
            );
            var teams = form.Teams;
            if (ClassTeam.Of(form.Students) is { Count: > 0 } named)
                form = form with { Teams = named.Count };
            var fields = Fields(form, random);
            var leaving = form.Students[random.Next(form.Students.Count)].Id;
            List<Student> rest = [.. form.Students.Where(student => student.Id != leaving)];
            var after = form with { Students = rest, Teams = ClassTeam.Of(rest) is { Count: > 0 } still ? still.Count : teams };
            var left = LeavingStudent.From(form, after, fields);

            var (one, other) = (
                BenchFilling.Of(form, fields, "x").Sheet.Without(new HashSet<string> { leaving }),
                BenchFilling.Of(after, left, "x").Sheet
            );

            // Whoever came later has nothing of it, and the form is found again by who stands in it.
            var came = after with { Students = [new("new", "New"), .. after.Students] };
            if (ClassTeam.Of(form.Students).Count == 0)
                Assert.DoesNotContain("new", BenchFilling.Of(came, LeavingStudent.From(form, came, fields), "x").Sheet.Places.Keys);

            Assert.DoesNotContain(left.Keys, key => key.StartsWith($"student.{leaving}.", StringComparison.Ordinal));
            Assert.Equal(one.Marker, other.Marker);
            Assert.Equal(
                one.Places.OrderBy(seen => seen.Key).Select(seen => (seen.Key, string.Join(' ', seen.Value))),
                other.Places.OrderBy(seen => seen.Key).Select(seen => (seen.Key, string.Join(' ', seen.Value)))
            );
            Assert.Equal(one.Begun.Keys.Order(), other.Begun.Keys.Order());
            Assert.Equal(one.Comments.OrderBy(said => said.Key), other.Comments.OrderBy(said => said.Key));
        }
    }

    /// <summary>As a page of the kitchen saves it: everybody's team is said.</summary>
    [Fact]
    public void A_form_is_found_again_by_who_stands_in_it_unless_they_are_another_class()
    {
        var form = new BenchForm(
            "Bench work",
            Scale,
            [
                ["", "", ""],
                ["", "", ""],
            ],
            "Class",
            [.. Enumerable.Range(0, 9).Select(at => new Student($"s.{at}", $"S {at}") { Team = $"T{at % 3}" })],
            3
        );
        var fields = form
            .Students.Index()
            .ToDictionary(one => BenchForm.TeamOfStudent(one.Item), one => form.TeamName(form.TeamOf(one.Index)));
        BenchForm? Found(params IEnumerable<Student> now) =>
            EarlierForm.Of(form with { Students = [.. now] }, EarlierForm.ListedIn(fields), one => one.IsOf(form.Identity, null));

        var found = Found([.. form.Students.Skip(4), new("new", "New")])!;
        Assert.Equal((form.Identity, 3), (found.Identity, found.Teams));
        Assert.Equal(
            form.Students.Select(student => (student.Id, student.Team)),
            found.Students.Select(student => (student.Id, student.Team))
        );
        Assert.Null(Found(form.Students.Skip(5)));
        Assert.Null(Found(form.Students.Skip(4).Select(student => student with { Id = student.Id + "x" })));
        Assert.Null(
            EarlierForm.Of(form with { Rubric = "Other", Students = [.. form.Students.Skip(1)] }, EarlierForm.ListedIn(fields), one =>
                one.IsOf(form.Identity, null)
            )
        );
        Assert.True(EarlierForm.IsCalledBy(form, "Bench work – Class"));
        Assert.False(EarlierForm.IsCalledBy(form, "Bench work – Other"));
    }

    private static Dictionary<string, string> Fields(BenchForm form, Random random)
    {
        Dictionary<string, string> fields = new() { [BenchForm.Marker] = "Kim" };
        void Put(string name, string value, double often)
        {
            if (random.NextDouble() < often)
                fields[name] = value;
        }

        string Level() => Scale.LevelNames[random.Next(3)];
        for (var team = 1; team <= form.Teams; team++)
        {
            for (var at = 0; at < 2; at++)
                Put(BenchForm.OfTeam(team, at), Level(), 0.8);
            Put(BenchForm.CommentOfTeam(team), $"team {team}", 0.5);
        }
        foreach (var student in form.Students)
        {
            for (var at = 0; at < 2; at++)
                Put(BenchForm.OfStudent(student, at), Level(), 0.3);
            Put(BenchForm.CommentOfStudent(student), student.Id, 0.3);
            Put(BenchForm.TeamOfStudent(student), random.Next(3) == 0 ? BenchForm.Away : form.TeamName(random.Next(form.Teams) + 1), 0.3);
        }
        return fields;
    }
}
