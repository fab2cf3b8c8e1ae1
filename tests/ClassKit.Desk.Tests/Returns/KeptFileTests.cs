using ClassKit.Desk.Returns;

namespace ClassKit.Desk.Tests.Returns;

/// <summary>A file that is taken in is there afterwards, or whoever brought it still has it.</summary>
public sealed class KeptFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("classkit-handed-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Where_every_name_is_taken_by_another_it_is_not_called_kept()
    {
        var (into, file) = (Directory.CreateDirectory(Path.Combine(_folder, "into")).FullName, Path.Combine(_folder, "ada.xlsx"));
        File.WriteAllText(file, "hers");
        File.WriteAllText(Path.Combine(into, "ada.xlsx"), "another");
        for (var number = 2; number <= 1_000; number++)
            File.WriteAllText(Path.Combine(into, $"ada ({number}).xlsx"), "another");

        Assert.Throws<IOException>(() => HandIn.Keep(file, into, "ada.xlsx"));
        Assert.Equal("hers", File.ReadAllText(file));

        File.WriteAllText(Path.Combine(into, "ada (999).xlsx"), "hers");
        Assert.False(HandIn.Keep(file, into, "ada.xlsx"));
    }
}
