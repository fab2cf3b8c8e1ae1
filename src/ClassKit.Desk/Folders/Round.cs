using System.Globalization;

namespace ClassKit.Desk.Folders;

/// <summary>
/// One set of practice on its way: handed out, come back, judged, followed up. Each stage is a folder of its own, made by the use case of
/// that stage.
/// </summary>
/// <param name="Class">The key of the class.</param>
/// <param name="Folder">Where it lies.</param>
public sealed record Round(string Class, string Folder)
{
    /// <summary>How addresses call it.</summary>
    public string Name => Path.GetFileName(Folder);

    /// <summary>Its place among the class's rounds, from 1; 0 for a folder that is no round.</summary>
    public int Number => int.TryParse(Name.Split('-')[0], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;

    /// <summary>What students get and what they must not see.</summary>
    public string Dealt => Path.Combine(Folder, "dealt");

    /// <summary>What students handed in.</summary>
    public string Returned => Path.Combine(Folder, "returned");

    /// <summary>Files that came and are no work of this round, out of the way.</summary>
    public string SetAside => Path.Combine(Folder, "set-aside");

    /// <summary>Answers on paper, typed into a workbook.</summary>
    public string Paper => Path.Combine(Folder, "paper", "paper-answers.xlsx");

    /// <summary>Grades and feedback.</summary>
    public string Graded => Path.Combine(Folder, "graded");

    /// <summary>Practice aimed at what each student missed.</summary>
    public string FollowUp => Path.Combine(Folder, "follow-up");

    /// <summary>What the round is called in which the practice that followed this one is handed out, but for its number.</summary>
    public string Follows => "after-" + Name;

    /// <summary>The name of a round's folder.</summary>
    public static string NameOf(int number, string what) => string.Create(CultureInfo.InvariantCulture, $"{number:00}-{PlainKey.Of(what)}");
}
