using ClassKit.Grading.Findings.Quoting;

namespace ClassKit.Wording.Quoting;

/// <summary>What others chose or typed, as it can stand in a sentence of ours.</summary>
internal static class Quoted
{
    /// <summary>No more of a text is quoted to whoever typed it.</summary>
    private const int Longest = 40;

    /// <summary>The name of a file.</summary>
    public static string Of(ReturnedName file) => ShownName.Of(file.Path);

    /// <summary>All of a typed text.</summary>
    public static string Of(Quotation typed) => ShownName.Of(typed.Text);

    /// <summary>As much of a typed text as tells which it is.</summary>
    public static string Short(Quotation typed) =>
        ShownName.Of(typed.Text.Length <= Longest ? typed.Text : typed.Text[..(Longest - 1)] + "…");

    /// <summary>A cell with its sheet.</summary>
    public static string Of(CellPlace place) => place.IsOwnSheet ? ShownName.Of(place.Cell.ToString()) : place.Cell.ToString();
}
