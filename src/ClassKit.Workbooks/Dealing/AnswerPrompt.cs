using ClassKit.Exercises.Layout;
using ClassKit.Grading.Answers;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Dealing;

/// <summary>
/// What an answer cell says when it is chosen, and when words are typed into it. It refuses nothing: a student's work is never lost to a
/// rule of ours.
/// </summary>
internal static class AnswerPrompt
{
    public static void Put(IXLCell cell, AnswerPlace place)
    {
        var prompt = cell.SetDataValidation();
        prompt.IgnoreBlanks = true;
        if (place.Part.InWords is not null)
            prompt.TextLength.EqualOrLessThan(TypedWords.Most);
        else if (place.Part.Choice is { } choice)
            prompt.List(
                $"\"{string.Join(',', Enumerable.Range(0, choice.From.Options.Count).Select(letter => (char)('A' + letter)))}\"",
                true
            );
        else
            prompt.Custom($"=ISNUMBER({cell.Address.ToStringRelative()})");
        prompt.ShowInputMessage = true;
        prompt.InputTitle = place.Tag;
        prompt.InputMessage = AnswerNote.Prompt(place.Part);
        prompt.ErrorStyle = XLErrorStyle.Warning;
        // A letter in another dress, or an option's own words, are read as well.
        prompt.ShowErrorMessage = place.Part.Choice is null;
        prompt.ErrorTitle = place.Tag;
        prompt.ErrorMessage = AnswerNote.Warning(place.Part);
    }
}
