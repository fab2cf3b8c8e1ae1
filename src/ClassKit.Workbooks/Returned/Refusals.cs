namespace ClassKit.Workbooks;

/// <summary>The words of refusals.</summary>
internal static class Refusals
{
    private const string SaveAgain = "Open your workbook in a spreadsheet program, save it as Excel workbook (.xlsx), and hand that file in.";
    private const string SendAgain = "Please hand it in again; if it still fails, open it in a spreadsheet program and save it as a new .xlsx file first.";

    public static Refusal Empty { get; } = new(RefusalKind.Empty, "The file is empty. " + SendAgain);

    public static Refusal OnlyZeros { get; } = new(
        RefusalKind.Empty, "The file has the right size but nothing in it, as after an upload that broke off. " + SendAgain);

    public static Refusal Truncated { get; } = new(
        RefusalKind.Truncated, "The file is cut off: it starts as a workbook, but its end is missing, as after an upload that broke off. " + SendAgain);

    public static Refusal PasswordProtected { get; } = new(
        RefusalKind.PasswordProtected, "The workbook is protected with a password to open. Open it, remove that password, save, and hand it in again.");

    public static Refusal OtherKind(string kind) => new(
        RefusalKind.OtherKind, $"The file is not a workbook but {kind}; giving it the ending .xlsx does not convert it. " + SaveAgain);

    public static Refusal OtherSpreadsheet(string kind) => new(
        RefusalKind.OtherSpreadsheet, $"The file is {kind}, not an Excel workbook (.xlsx). " + SaveAgain);

    public static Refusal Damaged(string what) => new(RefusalKind.Damaged, $"The workbook is damaged: {what}. " + SendAgain);

    public static Refusal TooLarge(string what) => new(
        RefusalKind.TooLarge, $"The workbook is far larger than a practice workbook can be: {what}. Copy your answers into a fresh copy of the workbook that you were given, and hand that in.");
}
