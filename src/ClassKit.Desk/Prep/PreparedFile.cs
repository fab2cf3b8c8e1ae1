using System.Text;
using ClassKit.Lessons.Packs;
using ClassKit.Pages.Packs;
using ClassKit.UseCases.Packs;

namespace ClassKit.Desk.Prep;

/// <summary>One page or workbook of a lesson prepared for a class.</summary>
/// <param name="Entry">What it is, and who may see it.</param>
/// <param name="Content">Its bytes.</param>
public sealed record PreparedFile(PackEntry Entry, byte[] Content)
{
    /// <summary>True for a page, false for a workbook.</summary>
    public bool IsPage => Entry.FileName.EndsWith(".html", StringComparison.Ordinal);

    /// <summary>The page's text.</summary>
    public string Html => Encoding.UTF8.GetString(Content);

    /// <summary>All of a pack, in the order in which an instructor needs them.</summary>
    public static IReadOnlyList<PreparedFile> Of(LessonPack pack)
    {
        var files = PackFiles.Of(pack).ToDictionary(file => file.Path);
        return
        [
            .. PackContents
                .Of(pack)
                .Concat(PackContents.Workbooks)
                .Where(entry => files.ContainsKey(entry.FileName))
                .Select(entry => new PreparedFile(entry, files[entry.FileName].Content)),
        ];
    }
}
