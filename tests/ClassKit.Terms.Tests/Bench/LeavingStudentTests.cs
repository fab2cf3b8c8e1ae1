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
            var form = new BenchForm("Bench work", Scale, [["", "", ""], ["", "", ""]], "Class", [.. Enumerable.Range(0, random.Next(2, 9)).Select(at => new Student($"s{at}", $"S {at}") { Team = seed % 2 == 0 ? null : $"T{random.Next(4)}" })], random.Next(1, 5));
            var teams = form.Teams;
            if (ClassTeam.Of(form.Students) is { Count: > 0 } named) form = form with { Teams = named.Count };
            var fields = Fields(form, random);
            var leaving = form.Students[random.Next(form.Students.Count)].Id;
            List<Student> rest = [.. form.Students.Where(student => student.Id != leaving)];
            var after = form with { Students = rest, Teams = ClassTeam.Of(rest) is { Count: > 0 } still ? still.Count : teams };
            var left = LeavingStudent.From(form, after, fields);

            var (one, other) = (BenchFilling.Of(form, fields, "x").Sheet.Without(new HashSet<string> { leaving }), BenchFilling.Of(after, left, "x").Sheet);

            Assert.DoesNotContain(left.Keys, key => key.StartsWith($"student.{leaving}.", StringComparison.Ordinal));
            Assert.Equal(one.Marker, other.Marker);
            Assert.Equal(one.Places.OrderBy(seen => seen.Key).Select(seen => (seen.Key, string.Join(' ', seen.Value))), other.Places.OrderBy(seen => seen.Key).Select(seen => (seen.Key, string.Join(' ', seen.Value))));
            Assert.Equal(one.Begun.Keys.Order(), other.Begun.Keys.Order());
            Assert.Equal(one.Comments.OrderBy(said => said.Key), other.Comments.OrderBy(said => said.Key));
        }
    }

    private static Dictionary<string, string> Fields(BenchForm form, Random random)
    {
        Dictionary<string, string> fields = new() { [BenchForm.Marker] = "Kim" };
        void Put(string name, string value, double often)
        {
            if (random.NextDouble() < often) fields[name] = value;
        }

        string Level() => Scale.LevelNames[random.Next(3)];
        for (var team = 1; team <= form.Teams; team++)
        {
            for (var at = 0; at < 2; at++) Put(BenchForm.OfTeam(team, at), Level(), 0.8);
            Put(BenchForm.CommentOfTeam(team), $"team {team}", 0.5);
        }
        foreach (var student in form.Students)
        {
            for (var at = 0; at < 2; at++) Put(BenchForm.OfStudent(student, at), Level(), 0.3);
            Put(BenchForm.CommentOfStudent(student), student.Id, 0.3);
            Put(BenchForm.TeamOfStudent(student), random.Next(3) == 0 ? BenchForm.Away : form.TeamName(random.Next(form.Teams) + 1), 0.3);
        }
        return fields;
    }
}
