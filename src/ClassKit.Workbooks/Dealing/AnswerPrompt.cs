using ClassKit.Exercises.Layout;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Dealing;

/// <summary>What an answer cell says when it is chosen, and when words are typed into it. It refuses nothing: a student's work is never lost to a rule of ours.</summary>
internal static class AnswerPrompt
{
    public static void Put(IXLCell cell, AnswerPlace place)
    {
        var prompt = cell.SetDataValidation();
        prompt.IgnoreBlanks = true;
        prompt.Custom($"=ISNUMBER({cell.Address.ToStringRelative()})");
        prompt.ShowInputMessage = true;
        prompt.InputTitle = place.Tag;
        prompt.InputMessage = AnswerNote.Prompt(place.Part);
        prompt.ErrorStyle = XLErrorStyle.Warning;
        prompt.ShowErrorMessage = true;
        prompt.ErrorTitle = place.Tag;
        prompt.ErrorMessage = AnswerNote.Warning(place.Part);
    }
}
