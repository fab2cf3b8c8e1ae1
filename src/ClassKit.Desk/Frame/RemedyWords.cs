using ClassKit.Content.Diagnostics;

namespace ClassKit.Desk.Frame;

/// <summary>What an instructor can do about something, as it is found on the desk.</summary>
internal static class RemedyWords
{
    /// <summary>Null where the desk has named the thing by itself, and where the words of the problem say all.</summary>
    public static string? Of(Remedy? remedy) =>
        remedy switch
        {
            Remedy.TakeOverPoints => "They wait among the decisions of this round.",
            Remedy.CheckContent => "The lesson’s page names the line.",
            Remedy.MakePractice => "Hand out another set in place of it.",
            Remedy.NameClassProfile => "The class’s page has it.",
            Remedy.RegradeUnderOtherMarking
            or Remedy.ShowDraws
            or Remedy.NameOtherDays
            or Remedy.NameDueMoment
            or Remedy.NameDealtFolder
            or Remedy.NameGradedFolder
            or Remedy.NameOutputFolder
            or Remedy.DropGraded
            or null => null,
        };
}
