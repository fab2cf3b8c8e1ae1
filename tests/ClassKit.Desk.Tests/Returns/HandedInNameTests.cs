using System.Text;
using ClassKit.Desk.Returns;

namespace ClassKit.Desk.Tests.Returns;

/// <summary>Names that students and browsers give files, in any writing: none may stop what else was handed in.</summary>
public sealed class HandedInNameTests
{
    /// <summary>A name may be 255 bytes long on ext4 and most others (Linux, NAME_MAX), and a number may come to it.</summary>
    [Theory]
    [InlineData("a")]
    [InlineData("é")]
    [InlineData("練")]
    [InlineData("पा")]
    [InlineData("🥖")]
    public void A_long_name_of_any_writing_fits_and_keeps_its_ending(string letter)
    {
        var name = HandedInName.Of(string.Concat(Enumerable.Repeat(letter, 300)) + ".xlsx");

        Assert.InRange(Encoding.UTF8.GetByteCount(name), 150, 240);
        Assert.EndsWith(".xlsx", name, StringComparison.Ordinal);
        Assert.DoesNotContain('\uFFFD', Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(name)));
    }

    [Fact]
    public void A_plain_name_stays_as_it_is() => Assert.Equal("Thursday/練習 Übung.xlsx", HandedInName.Of("Thursday/練習 Übung.xlsx"));

    [Fact]
    public async Task Two_who_hand_in_at_once_do_not_take_each_others_files()
    {
        var folder = Directory.CreateTempSubdirectory("classkit-").FullName;
        try
        {
            await Task.WhenAll(
                Enumerable
                    .Range(0, 8)
                    .Select(at =>
                        Task.Run(() =>
                        {
                            var part = Path.Combine(folder, $"{at}.part");
                            File.WriteAllText(part, $"work {at}");
                            HandIn.Keep(part, Path.Combine(folder, "returned"), "work.xlsx");
                        })
                    )
            );

            Assert.Equal(
                Enumerable.Range(0, 8).Select(at => $"work {at}"),
                Directory.GetFiles(Path.Combine(folder, "returned")).Select(File.ReadAllText).Order()
            );
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
