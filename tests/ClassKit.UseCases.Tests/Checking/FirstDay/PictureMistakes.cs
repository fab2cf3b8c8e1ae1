using ClassKit.UseCases.Tests.Samples;
using static ClassKit.UseCases.Tests.Checking.FirstDay.TeachingFolder;

namespace ClassKit.UseCases.Tests.Checking.FirstDay;

/// <summary>Pictures in the lesson and in an exercise.</summary>
internal static class PictureMistakes
{
    private const string Place = "### What this is about\n";

    public static IReadOnlyList<Mistake> All { get; } =
    [
        new(
            "a picture that is not there",
            folder => Show(folder, "![A scone cut open](scone.png)"),
            Lesson,
            100,
            "There is no picture `scone.png`",
            "Put the picture into the lesson's folder"
        ),
        new(
            "a picture without words",
            folder => Show(folder, "![](scone.png)").Put("lessons/milk-scones/scone.png", Pixels.Png(40, 30)),
            Lesson,
            100,
            "has no words",
            "what is to be seen"
        ),
        new(
            "a picture on the network",
            folder => Show(folder, "![A scone](https://example.org/scone.png)"),
            Lesson,
            100,
            "is not a file of this folder",
            "Save it beside the lesson"
        ),
        new(
            "a picture from another folder",
            folder => Show(folder, "![A scone](../../scone.png)").Put("scone.png", Pixels.Png(40, 30)),
            Lesson,
            100,
            "outside of the lesson's folder",
            "Put it into the folder"
        ),
        new(
            "a document under a picture's name",
            folder => Show(folder, "![A scone](scone.png)").Put("lessons/milk-scones/scone.png", "PK scone"),
            Lesson,
            100,
            "is no PNG or JPEG",
            "Save it as PNG or JPEG"
        ),
        new(
            "a drawing in SVG",
            folder =>
                Show(folder, "![A scone](scone.svg)").Put("lessons/milk-scones/scone.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>"),
            Lesson,
            100,
            "can hold programs",
            "Save it as PNG or JPEG"
        ),
        new(
            "a picture that was cut off",
            folder => Show(folder, "![A scone](scone.png)").Put("lessons/milk-scones/scone.png", Pixels.Png(40, 30)[..^20]),
            Lesson,
            100,
            "cut off or damaged",
            "Save it as PNG or JPEG"
        ),
        new(
            "a photograph as the camera made it",
            folder => Show(folder, "![A scone](scone.jpg)").Put("lessons/milk-scones/scone.jpg", new byte[3 * 1024 * 1024]),
            Lesson,
            100,
            "larger than 2 MB",
            "1600 pixels wide"
        ),
        new(
            "a poster",
            folder => Show(folder, "![A scone](scone.png)").Put("lessons/milk-scones/scone.png", Pixels.Png(9000, 30)),
            Lesson,
            100,
            "is 9000 × 30 pixels",
            "1600 pixels wide"
        ),
        new(
            "a blank in a picture's name",
            folder => Show(folder, "![A scone](my scone.png)").Put("lessons/milk-scones/my scone.png", Pixels.Png(40, 30)),
            Lesson,
            100,
            "called `my scone.png`",
            "without blanks"
        ),
        new(
            "an exercise's picture without words",
            folder =>
                folder
                    .Change(Wet, "level: standard", "level: standard\npicture: ../bowl.png")
                    .Put("lessons/milk-scones/bowl.png", Pixels.Png(40, 30)),
            Wet,
            4,
            "`../bowl.png` has no words",
            "`picture shows:`"
        ),
    ];

    private static TeachingFolder Show(TeachingFolder folder, string picture) =>
        folder.Change(Lesson, Place, Place + "\n" + picture + "\n");
}
