using ClassKit.Grading;
using ClassKit.Grading.Intake;

namespace ClassKit.UseCases.Intake;

/// <summary>Reads and judges one returned item. Whatever goes wrong is what becomes of this item, and of no other.</summary>
internal static class ItemJudging
{
    public static JudgedFile Judge(ClassGrader grader, ReturnedItem item) =>
        Guarded.Of(
            () =>
                FileReading.MayBeWorkbook(item)
                    ? grader.JudgeOnce(FileReading.Identity(item), () => FileReading.Read(item), item.Path, item.Dated)
                    : grader.Judge(FileReading.Read(item)),
            failure => NotJudged(grader, FileReading.Failed(item, failure))
        );

    /// <summary>Whose it seems to be by its name; where even the name is too much for us, nobody's.</summary>
    private static JudgedFile NotJudged(ClassGrader grader, ReturnedFile failed) =>
        Guarded.Of(() => grader.Judge(failed), _ => ClassGrader.OfNobody(failed));
}
