using ClassKit.Content.Forms;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Packs;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Observing;
using ClassKit.UseCases.Packs;

namespace ClassKit.UseCases.Tests.Observing;

/// <summary>A class may have been renamed since its forms were made; another class that had the same lesson is said.</summary>
public sealed class OtherClassFileTests
{
    [Theory]
    [InlineData("Tuesday", true)]
    [InlineData(null, false)]
    public void A_file_of_another_class_is_drawn_and_said(string? other, bool isSaid)
    {
        var request = BuildPack
            .Read(Path.Combine(Repository.Root, "lessons", "one-tin-three-lifts"), Path.Combine(Repository.Root, "demo-cohort", "class.md"))
            .Model!;
        var form = new ObservationForm(ComputedPack.Build(request.Lesson, request.Profile).Value);
        var bread = form.Breads[0];
        var fields = new Dictionary<string, string>
        {
            [ObservationForm.Team] = "Team 1",
            [ObservationForm.Field(bread, Measure.Height, 1)] = "81",
        };
        var bytes = FormFileWriter.Of(new FormFile(form.Identity, fields), $"{form.Lesson} · {other ?? form.Cohort}");

        var (team, why) = TeamFile.Read(new ReturnedItem("team-1.json", bytes, null), form);

        Assert.Equal("Team 1", team?.Team);
        if (isSaid)
            Assert.Contains(
                "says that it is of the class Tuesday, and was drawn all the same",
                Assert.Single(why),
                StringComparison.Ordinal
            );
        else
            Assert.Empty(why);
    }
}
