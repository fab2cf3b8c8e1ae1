using ClassKit.Content.Sources;
using ClassKit.UseCases.Checking;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Tests.Checking;

/// <summary>The shipped buns rise at 28 °C; their method names a proofing place, and the shipped kitchen is at 24 °C.</summary>
public class WarmRisesTests
{
    [Theory]
    [InlineData("24 °C", true, false)]
    [InlineData("24 °C", false, true)]
    [InlineData("26 °C", false, false)]
    public void A_rise_that_nothing_keeps_warm_is_doubted(string kitchen, bool hasProofer, bool isDoubted)
    {
        Dictionary<string, byte[]> files = [];
        foreach (var folder in new[] { "lessons/one-tin-three-lifts", "lessons/practice", "rubrics" })
        {
            foreach (var file in Directory.EnumerateFiles(Repository.PathOf(folder), "*", SearchOption.AllDirectories))
                files[Path.GetRelativePath(Repository.PathOf("."), file).Replace('\\', '/')] = File.ReadAllBytes(file);
        }
        Change("lessons/one-tin-three-lifts/formulas/batter_buns.md", text =>
            hasProofer ? text : text.Replace(", proofing place", "", StringComparison.Ordinal)
        );
        files["class.md"] = File.ReadAllBytes(Repository.PathOf("demo-cohort/class.md"));
        files["prices.md"] = File.ReadAllBytes(Repository.PathOf("demo-cohort/prices.md"));
        Change("class.md", text => text.Replace("kitchen temperature: 24 °C", $"kitchen temperature: {kitchen}", StringComparison.Ordinal));
        var proof = CheckContent.Run(
            new(new Library(ListedTree.InMemory(files)), ["lessons/one-tin-three-lifts", "class.md"]) { ProvesExercises = false },
            Run.Unwatched
        );

        var told = proof.Doubts.Where(doubt => doubt.Found.Contains("nothing keeps it warm", StringComparison.Ordinal)).ToList();
        Assert.Equal(isDoubted, told.Count == 1);
        if (isDoubted)
            Assert.Equal(
                $"Batter buns: `First rise` is at 28 °C, the kitchen of Tuesday bakers at 24 °C, and nothing keeps it warm",
                told[0].Found
            );

        void Change(string file, Func<string, string> change) =>
            files[file] = System.Text.Encoding.UTF8.GetBytes(change(System.Text.Encoding.UTF8.GetString(files[file])));
    }
}
