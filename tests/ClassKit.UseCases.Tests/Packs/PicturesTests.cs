using System.Text;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Choosing;
using ClassKit.Pages;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Practising;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Checking.FirstDay;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Packs;

/// <summary>Pictures of a lesson, a bread and an exercise stand on the pages as part of them.</summary>
public class PicturesTests
{
    private const string Folder = "lessons/milk-scones";

    private static readonly byte[] Scone = Pixels.Png(40, 30);

    private static readonly Library Library = new TeachingFolder()
        .Change(
            TeachingFolder.Lesson,
            "### What this is about\n",
            "### What this is about\n\n![A scone *cut* open, \"layers\" to be seen](scone.png)\n"
        )
        .Change(TeachingFolder.Formula, "Best on the day.", "Best on the day. ![The crumb](../crumb.jpg)")
        .Change(TeachingFolder.Wet, "level: standard", "level: standard\npicture: ../scone.png\npicture shows: A bowl & a jug")
        .Put(Folder + "/scone.png", Scone)
        .Put(Folder + "/crumb.jpg", Pixels.Jpeg(40, 30))
        .Library;

    [Fact]
    public void A_pack_shows_them_with_their_words()
    {
        var files = PackFiles.Of(BuildPack.Run(BuildPack.Read(Library.At(Folder), Library.At("class.md")).Model!, Run.Unwatched).Model!);

        Assert.Contains(
            $"<img class=\"authored\" src=\"data:image/png;base64,{Convert.ToBase64String(Scone)}\" alt=\"A scone cut open, &quot;layers&quot; to be seen\" />",
            Text("handout.html"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "src=\"data:image/jpeg;base64,",
            string.Concat(files.Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal)).Select(file => Text(file.Path))),
            StringComparison.Ordinal
        );

        string Text(string path) => Encoding.UTF8.GetString(files.Single(file => file.Path == path).Content);
    }

    [Fact]
    public void Practice_shows_that_of_its_exercise()
    {
        var set = PracticeSet.Of(Content.Lessons.LessonReader.Read(Library.At(Folder)).Model!);

        var page = Encoding.UTF8.GetString(PracticeFiles.Of(MakePractice.Run(new(set, 5), Run.Unwatched).Model!)[0].Content);

        Assert.Contains("alt=\"A bowl &amp; a jug\"", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"image/png\"", "\"text/html\"")]
    [InlineData("\"Base64\": [", "\"Base64\": [ \"<\",")]
    public void A_picture_in_a_deals_file_that_is_none_is_refused(string from, string to)
    {
        var dealt = DealPractice
            .Run(
                new(
                    PracticeSet.Of(Content.Lessons.LessonReader.Read(Library.At(Folder)).Model!),
                    new("Class", [new("ada", "Ada")]),
                    new(SetWish.None, IsSpread: false, 5)
                ),
                Run.Unwatched
            )
            .Model!.Dealt;
        var text = DealtJson.Write(dealt);
        var changed = System.Text.RegularExpressions.Regex.Replace(
            text,
            System.Text.RegularExpressions.Regex.Escape(from),
            to,
            System.Text.RegularExpressions.RegexOptions.IgnoreCase
        );

        Assert.NotEqual(text, changed);
        Assert.False(DealtJson.Read("dealt.json", changed).Succeeded);
    }

    /// <summary>Whoever marks by the key, and whoever reads what became of an answer, sees what the student saw.</summary>
    [Fact]
    public void Sheets_key_and_feedback_show_that_of_its_exercise()
    {
        var dealt = DealPractice
            .Run(
                new(
                    PracticeSet.Of(Content.Lessons.LessonReader.Read(Library.At(Folder)).Model!),
                    new("Class", [new("ada", "Ada")]),
                    new(SetWish.None, IsSpread: false, 5)
                ),
                Run.Unwatched
            )
            .Model!.Dealt;
        // As grading reads it from the folder, with the lesson gone by then.
        var read = DealtJson.Read("dealt.json", DealtJson.Write(dealt)).Model!;
        var graded = GradeClass
            .Run(
                new(read, ReturnedFiles.Of([new Upload("ada.xlsx", () => new MemoryStream(SmallClass.Filled(dealt, dealt.Students[0])))])),
                Run.Unwatched
            )
            .Grades;

        foreach (
            var page in new[]
            {
                HtmlPages.Sheet(dealt, dealt.Students[0]),
                string.Concat(HtmlPages.AnswerKey(read)),
                HtmlPages.Feedback(graded.Students[0], read),
            }
        )
            Assert.Contains(
                $"src=\"data:image/png;base64,{Convert.ToBase64String(Scone)}\" alt=\"A bowl &amp; a jug\"",
                page,
                StringComparison.Ordinal
            );
    }
}
