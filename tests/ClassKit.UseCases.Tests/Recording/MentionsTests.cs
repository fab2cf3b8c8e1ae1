using ClassKit.Exercises.Cohorts;
using ClassKit.UseCases.Recording;

namespace ClassKit.UseCases.Tests.Recording;

/// <summary>Erasing one student leaves everybody else's entries alone, also of those whose names have the student's within them.</summary>
public sealed class MentionsTests
{
    [Theory]
    [InlineData("ana-li", "Ana Li", "diana-li", "Diana Li")]
    [InlineData("ann-lee", "Ann Lee", "joann-lee", "Joann Lee")]
    [InlineData("ana-li", "Ana Li", "ana-lind", "Ana Lind")]
    [InlineData("12", "Bo", "412", "Bonnie")]
    public void Whoever_has_the_name_within_their_own_keeps_their_file_and_flags(string id, string name, string otherId, string otherName)
    {
        var student = new Student(id, name);
        var file = $$"""{"file":"{{otherId}}.xlsx","fate":"graded","student":"{{otherId}}","name":"{{otherName}}"}""";
        var grade = $$"""{"student":"{{otherId}}","flags":[{"kind":"same-file","file":"{{otherId}}.xlsx"}]}""";

        Assert.Equal(file, Mentions.Without(file, student));
        Assert.Equal(grade, Mentions.Without(grade, student));
    }

    /// <summary>Many schools have bare numbers for ids: in entries of ours they are ids, and go like any other.</summary>
    [Fact]
    public void An_id_that_is_a_number_is_found_where_ids_and_files_stand()
    {
        var student = new Student("20413", "Bo Li");

        Assert.DoesNotContain(
            "20413",
            Mentions.Without("""{"student":"diana-li","flags":[{"kind":"alike","with":["20413"]},{"kind":"late"}]}""", student)!,
            StringComparison.Ordinal
        );
        Assert.Null(Mentions.Without("""{"file":"week 3/20413.xlsx","fate":"set-aside"}""", student));
        const string other = """{"file":"120413.xlsx","fate":"graded","student":"120413"}""";
        Assert.Equal(other, Mentions.Without(other, student));
    }

    [Fact]
    public void What_names_the_student_goes()
    {
        var student = new Student("ana-li", "Ana Li");

        Assert.Null(Mentions.Without("""{"file":"week 3/ana-li.xlsx","fate":"graded","student":"ana-li"}""", student));
        var left = Mentions.Without("""{"student":"diana-li","flags":[{"kind":"alike","with":"Ana Li"},{"kind":"late"}]}""", student)!;
        Assert.DoesNotContain("Ana Li", left.Replace("Diana Li", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("late", left, StringComparison.Ordinal);
    }
}
