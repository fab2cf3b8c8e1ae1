using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Filling;

namespace ClassKit.Workbooks.Tests.Samples;

/// <summary>The first sample student's workbook with every kind of answer in it.</summary>
internal static class FilledWorkbook
{
    public static readonly DealtStudent Student = SampleClass.Dealt.Students[0];

    public static readonly byte[] Dealt = DealtWorkbookWriter.Write(SampleClass.Dealt, Student);

    public static readonly byte[] Bytes = WorkbookFiller.Fill(
        Dealt,
        [
            new EnterFormula(Answer("hydration", "water"), "=C7*C8"),
            new EnterFormula(Answer("hydration", "dough"), "=C7+C12+hydration_flour*hydration_salt"),
            new EnterNumber(Answer("hydration", "share"), 0.6),
            new EnterText(Answer("water_temperature", "base_temperature"), "76,5"),
            new EnterFormula(Answer("water_temperature", "water"), "=C7/0"),
            new EnterFormula(Scratch("hydration", 0), $"='{Answer("water_temperature", "water").Sheet}'!C7*3"),
            new EnterText(Scratch("hydration", 1), "=not a formula"),
        ]
    );

    public static CellAddress Answer(string exercise, string part) =>
        SampleClass.Dealt.LayOut().Of(exercise).Answers.Single(place => place.Part.Id == part).Address;

    public static CellAddress Given(string exercise, string name) =>
        SampleClass.Dealt.LayOut().Of(exercise).Givens.Single(place => place.Given.Id == name).Address;

    public static CellAddress Scratch(string exercise, int row)
    {
        var first = PracticeLayout.For(SampleClass.Exercises).Of(exercise).ScratchFrom;
        return first with { Row = first.Row + row };
    }
}
