using ClassKit.Content;
using ClassKit.ItemBanks;

namespace ClassKit.UseCases;

/// <summary>Makes an item bank of a lesson's exercises for programs that deliver tests.</summary>
public static class ExportItems
{
    /// <summary>The command, and the kind of its output folder.</summary>
    public const string Kind = "item-bank";

    /// <summary>How many variants of each exercise are made when no number is named.</summary>
    public const int DefaultVariants = 10;

    private const string FileName = "item-bank.zip";

    /// <summary>Reads a lesson and makes the bank.</summary>
    /// <param name="lessonFolder">The lesson.</param>
    /// <param name="variants">How many variants of each exercise.</param>
    /// <param name="asTemplates">True for items whose numbers the delivering program draws.</param>
    /// <param name="seed">Decides the draws.</param>
    public static Produced Make(string lessonFolder, int variants, bool asTemplates, ulong seed)
    {
        var reading = LessonReader.Read(lessonFolder);
        if (!reading.Succeeded) return Produced.Nothing(reading.Problems);
        var lesson = reading.Model;
        var bank = asTemplates
            ? ItemBank.OfTemplates(lesson.Id, lesson.Exercises, variants, seed)
            : ItemBank.OfVariants(lesson.Id, lesson.Exercises, variants, seed);
        return new(
            [new(FileName, bank.Package)],
            [$"{bank.Items} items of {lesson.Exercises.Count} exercises in {FileName}, a package of 1EdTech QTI 3.0. They ask for numbers only: whether a formula was used, no such item can tell.", .. bank.Notes],
            []);
    }
}
