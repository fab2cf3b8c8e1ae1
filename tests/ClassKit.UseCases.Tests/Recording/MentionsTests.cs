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
