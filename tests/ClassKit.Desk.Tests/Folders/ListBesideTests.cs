using ClassKit.Desk.Folders;

namespace ClassKit.Desk.Tests.Folders;

/// <summary>Which list is a class's, where several lie beside its profile.</summary>
public sealed class ListBesideTests : IDisposable
{
    private const string Profile = "---\nstudents: 4\nteams: 2\npieces per team: 6\nperiod: 150 min\novens: 1\n---\n\n# Monday\n";

    private readonly string _folder = Directory.CreateTempSubdirectory("classkit-lists-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("roster - Copy.csv")]
    [InlineData("roster (old).csv")]
    [InlineData("Roster-2025.csv")]
    [InlineData("roster 2.xlsx")]
    public void A_copy_beside_it_never_takes_its_place(string copy)
    {
        Write("class.md", Profile);
        Write(copy, "name\nAda Berg\n");
        Write("roster.csv", "name\nBo Cole\n");

        Assert.Equal("roster.csv", ListOf("class"));
    }

    [Fact]
    public void Two_classes_of_one_folder_have_the_lists_that_they_name()
    {
        Write("monday.md", Profile.Replace("period", "roster: roster-monday.csv\nperiod", StringComparison.Ordinal));
        Write("thursday.md", Profile.Replace("period", "roster: roster-thursday.csv\nperiod", StringComparison.Ordinal));
        Write("roster-monday.csv", "name\nAda Berg\n");
        Write("roster-thursday.csv", "name\nBo Cole\n");

        Assert.Equal(["roster-monday.csv", "roster-thursday.csv"], [ListOf("monday"), ListOf("thursday")]);
    }

    [Fact]
    public void A_list_of_another_name_is_taken_where_it_is_the_only_one()
    {
        Write("class.md", Profile);
        Write("roster-2026.csv", "name\nAda Berg\n");

        Assert.Equal("roster-2026.csv", ListOf("class"));
    }

    private string? ListOf(string profile) => Path.GetFileName(new TeachingFolder(_folder).Class(profile)?.Roster);

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(_folder, name), text);
}
