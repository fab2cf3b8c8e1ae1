namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>The words of refusals: what was found, and what to hand in instead. They can be sent to the student as they are.</summary>
internal static class Refusals
{
    private const string SaveAgain = "Open your workbook in a spreadsheet program, save it as Excel workbook (.xlsx), and hand that file in.";
    private const string SendAgain = "Please hand it in again; if it still fails, open it in a spreadsheet program and save it as a new .xlsx file first.";
    private const string NoFormulas = "It shows numbers but none of the formulas behind them. Please hand in the workbook itself: in the program or app that you worked in, save or share a copy as Excel workbook (.xlsx).";

    public static Refusal Empty { get; } = new(RefusalKind.Empty, "The file is empty. " + SendAgain);

    public static Refusal OnlyZeros { get; } = new(
        RefusalKind.Empty, "The file has the right size but nothing in it, as after an upload that broke off. " + SendAgain);

    public static Refusal Truncated { get; } = new(
        RefusalKind.Truncated, "The file is cut off: it starts as a workbook, but its end is missing, as after an upload that broke off. " + SendAgain);

    public static Refusal PasswordProtected { get; } = new(
        RefusalKind.PasswordProtected, "The workbook is protected with a password to open. Open it, remove that password, save, and hand it in again.");

    /// <summary>Something that is no spreadsheet, and that a workbook could have been saved as by mistake.</summary>
    public static Refusal OtherKind(string kind) => new(RefusalKind.OtherKind, $"The file is {kind}, not a workbook. {SaveAgain}");

    /// <summary>A likeness of a workbook, on paper or on a screen.</summary>
    public static Refusal Likeness(string kind) => new(RefusalKind.OtherKind, $"The file is {kind}, not a workbook. {NoFormulas}");

    /// <summary>An archive of a kind that is not opened here.</summary>
    public static Refusal Packed(string kind) => new(RefusalKind.OtherKind, $"The file is {kind}, not a workbook. Please unpack it and hand in the workbook (.xlsx) that is inside.");

    public static Refusal OtherSpreadsheet(string kind) => new(
        RefusalKind.OtherSpreadsheet, $"The file is {kind}, not an Excel workbook (.xlsx). " + SaveAgain);

    public static Refusal Damaged(string what) => new(RefusalKind.Damaged, $"The workbook is damaged: {what}. " + SendAgain);

    public static Refusal TooLarge(string what) => new(
        RefusalKind.TooLarge, $"The workbook is far larger than a practice workbook can be: {what}. Copy your answers into a fresh copy of the workbook that you were given, and hand that in.");
}
