using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Differential;

/// <summary>When our value and LibreOffice's are the same.</summary>
internal static class Agreement
{
    /// <summary>
    /// Equal; numbers to 1e-10 of their size or, near zero, to 1e-12; an empty text is what an empty result reads as.
    /// LibreOffice has more errors than files can store, and stores those as <c>#VALUE!</c> or <c>#NUM!</c>: these two agree with any
    /// error.
    /// </summary>
    public static bool Between(CellValue ours, CellValue theirs)
    {
        if (ours.IsNumber && theirs.IsNumber)
        {
            var (a, b) = (ours.Number, theirs.Number);
            return Math.Abs(a - b) <= Math.Max(1e-12, 1e-10 * Math.Max(Math.Abs(a), Math.Abs(b)));
        }

        if (ours.IsError && theirs.IsError && theirs.Error is CellError.Value or CellError.Number)
            return true;
        if (ours.IsText && ours.Text.Length == 0)
            return theirs.IsBlank || theirs == ours;
        return ours == theirs;
    }
}
