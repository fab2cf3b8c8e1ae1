using ClassKit.Exercises.Choosing;
using ClassKit.UseCases.Dealing;

namespace ClassKit.UseCases.Tests.Dealing;

/// <summary>A class profile that names its list needs no other word of it.</summary>
public sealed class NamedListTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("classkit-list-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void The_list_that_the_class_names_is_dealt_to()
    {
        var request = Deal(null, "roster: list/group.csv\n");

        Assert.True(request.Succeeded, string.Join('\n', request.Problems));
        Assert.Equal(["Ana Lima"], request.Model!.Roster.Students.Select(student => student.Name));
    }

    [Fact]
    public void A_list_that_is_given_counts()
    {
        var other = Path.Combine(_folder.FullName, "other.csv");
        File.WriteAllText(other, "name\nBo Berg\n");

        Assert.Equal(["Bo Berg"], Deal(other, "roster: list/group.csv\n").Model!.Roster.Students.Select(student => student.Name));
    }

    [Fact]
    public void Without_either_what_to_do_is_said()
    {
        var problem = Assert.Single(Deal(null, "").Problems);

        Assert.Contains("Nothing says who is in the class", problem.Found, StringComparison.Ordinal);
        Assert.EndsWith("class.md", problem.File, StringComparison.Ordinal);
    }

    private ClassKit.Content.Diagnostics.Reading<DealRequest> Deal(string? roster, string line)
    {
        Directory.CreateDirectory(Path.Combine(_folder.FullName, "list"));
        File.WriteAllText(Path.Combine(_folder.FullName, "list", "group.csv"), "name\nAna Lima\n");
        File.Copy(Repository.PathOf("demo-cohort", "prices.md"), Path.Combine(_folder.FullName, "prices.md"), overwrite: true);
        var profile = Path.Combine(_folder.FullName, "class.md");
        var text = File.ReadAllText(Repository.PathOf("demo-cohort", "class.md")).ReplaceLineEndings("\n");
        File.WriteAllText(profile, "---\n" + line + text["---\n".Length..]);
        return new DealPaths(Repository.PathOf("lessons", "one-tin-three-lifts"), roster, new DealWish(SetWish.None, IsSpread: false, 1))
        {
            ClassFile = profile,
        }.Read();
    }
}
