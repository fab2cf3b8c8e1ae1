using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Content.Sources;
using ClassKit.ItemBanks.Packages;
using ClassKit.Notes;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Exporting;

/// <summary>Makes an item bank of a lesson's exercises for programs that deliver tests.</summary>
public static class ExportItems
{
    /// <summary>The kind of folder that its file goes into.</summary>
    public const string Kind = "item-bank";

    /// <summary>How many variants of each exercise are made when no number is named.</summary>
    public const int DefaultVariants = 10;

    private const string FileName = "item-bank.zip";

    /// <summary>Makes the bank.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static ItemBank Run(ItemBankRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var lesson = request.Lesson;
        return request.AsTemplates
            ? ItemBank.OfTemplates(lesson.Id, lesson.Exercises, request.Variants, request.Seed, run.Draws())
            : ItemBank.OfVariants(lesson.Id, lesson.Exercises, request.Variants, request.Seed, run.Draws());
    }

    /// <summary>The request for a lesson's folder, or everything that is wrong with the lesson.</summary>
    public static Reading<ItemBankRequest> Read(Source lessonFolder, int variants, bool asTemplates, ulong seed)
    {
        var lesson = LessonReader.Read(lessonFolder);
        return lesson.Succeeded ? new(new(lesson.Model, variants, asTemplates, seed), []) : new(null, lesson.Problems);
    }

    /// <summary>The file of a bank.</summary>
    public static Produced Write(ItemBankRequest request, ItemBank bank)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(bank);
        return new(
            [new(FileName, stream => stream.Write(bank.Package))],
            [new Note.Banked(bank.Items, request.Lesson.Exercises.Count, FileName), .. bank.Notes.Select(note => new Note.OfBank(note))],
            []
        )
        {
            Open = [FileName],
        };
    }
}
