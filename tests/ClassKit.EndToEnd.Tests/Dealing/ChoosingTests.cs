using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.UseCases.Dealing;

namespace ClassKit.EndToEnd.Tests.Dealing;

/// <summary>Sets chosen on the command line, from a lesson and from the bank.</summary>
public sealed class ChoosingTests : IDisposable
{
    private static readonly string Bank = Path.Combine(Checkout.Demo.Root, "lessons", "practice");

    private readonly TemporaryFolder _folder = new();

    private string Out => _folder.Of("out");

    public void Dispose() => _folder.Dispose();

    private ClassKitRun Deal(string lesson, params string[] options)
    {
        var roster = _folder.Of("roster.csv");
        File.WriteAllText(roster, "id,name\nada,Ada Berg\nben,Ben Okoye\n");
        return ClassKitRun.Of(["deal", lesson, "--roster", roster, "--out", Out, .. options]);
    }

    private IReadOnlyList<Exercises.Authoring.Exercise> Dealt()
    {
        var file = Path.Combine(Out, DealtJson.FileName);
        return DealtJson.Read(file, File.ReadAllText(file)).Model!.Exercises;
    }

    [Fact]
    public void Exercises_by_name_come_from_the_lesson_and_from_the_bank_beside_it()
    {
        var run = Deal(Checkout.Demo.Lesson, "--exercise", "later_bake", "--exercise", "steam").Done();

        Assert.Equal(["later_bake", "steam"], Dealt().Select(exercise => exercise.Id));
        Assert.StartsWith("later_bake, steam: about ", run.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(Out, "workbooks", "ada.xlsx")));
    }

    /// <summary>Ben was there; Ada sits again, with other numbers.</summary>
    [Fact]
    public void A_resit_is_dealt_to_those_who_are_named()
    {
        Deal(Checkout.Demo.Lesson, "--exercise", "steam").Done();
        var first = DealtJson.Read("dealt.json", File.ReadAllText(Path.Combine(Out, DealtJson.FileName))).Model!;
        var run = ClassKitRun
            .Of(
                "deal",
                Checkout.Demo.Lesson,
                "--exercise",
                "steam",
                "--roster",
                _folder.Of("roster.csv"),
                "--out",
                _folder.Of("again"),
                "--resit-of",
                Out,
                "--only",
                "ada"
            )
            .Done();
        var again = DealtJson.Read("dealt.json", File.ReadAllText(Path.Combine(_folder.Of("again"), DealtJson.FileName))).Model!;

        Assert.Equal(["ada"], again.Students.Select(student => student.Who.Id));
        Assert.Equal(first.Identity!.Digest, again.Replaces!.Digest);
        Assert.NotEqual(first.Students[0].GivensOf("steam"), again.Students[0].GivensOf("steam"));
        Assert.Contains($"A resit of deal {first.Identity.Code}", run.Output, StringComparison.Ordinal);
        Assert.Contains(
            "`nobody`",
            ClassKitRun
                .Of("deal", Checkout.Demo.Lesson, "--roster", _folder.Of("roster.csv"), "--out", _folder.Of("third"), "--only", "nobody")
                .Problems,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(1, "There is no exercise called `later_bakee`. Did you mean `later_bake`?", "--exercise", "later_bakee")]
    [InlineData(2, "--level takes guided, standard or open, not hard", "--level", "hard")]
    [InlineData(2, "--minutes takes a whole number", "--minutes", "half an hour")]
    public void What_cannot_be_chosen_is_said(int exitCode, string problem, params string[] options)
    {
        var run = Deal(Bank, options);

        Assert.Equal(exitCode, run.ExitCode);
        Assert.Contains(problem, run.Problems, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Out));
    }
}
