using ClassKit.Workbooks.Look;

namespace ClassKit.Workbooks.Dealing;

/// <summary>How wide the columns of an exercise's sheet are, in characters.</summary>
/// <param name="Tag">The tags of givens and answers.</param>
/// <param name="Label">The words of a given or a question.</param>
/// <param name="Even">Each column beside the words: one value, one unit, two of a note, and even columns to work in.</param>
internal sealed record SheetWidths(double Tag, double Label, double Even)
{
    /// <summary>What an upright page holds with letters of 11 points hardly smaller, on A4 and Letter.</summary>
    private static readonly SheetWidths Usual = new(6, 40, 13);

    /// <summary>What it holds where letters of 11 points are printed half as large again.</summary>
    private static readonly SheetWidths Large = new(4, 24.5, 7.75);

    /// <summary>How wide a text across all columns may be.</summary>
    public double All => (Tag + Option) * (this == Large ? TextHeight.Averaged : 1);

    public double Note => 2 * Even;

    /// <summary>How wide an option may be.</summary>
    public double Option => Label + 2 * Even + Note;

    public static SheetWidths For(bool largePrint) => largePrint ? Large : Usual;
}
