using System.Diagnostics;
using System.Globalization;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Wording.Files;

/// <summary>
/// Why a returned file was not read: what was found and what to do, in sentences that can be sent to the student as they are.
/// </summary>
public static class RefusalWords
{
    private const string SendAgain =
        "Please hand it in again; if it still fails, open it in a spreadsheet program and save it as a new .xlsx file first.";
    private const string HandInItself = "Please hand in the workbook itself (.xlsx), not packed.";
    private const string HandInAgain = "Please hand in the workbook itself (.xlsx) again, not packed.";
    private const string Instructor =
        "This is nothing that the student did; the instructor can put it right or ask for the file once more, to hand it in again.";

    /// <summary>The sentences.</summary>
    public static string Of(Refusal refusal) =>
        refusal switch
        {
            Refusal.Empty => "The file is empty. " + SendAgain,
            Refusal.OnlyZeros => "The file has the right size but nothing in it, as after an upload that broke off. " + SendAgain,
            Refusal.CutOff => "The file is cut off: it starts as a workbook, but its end is missing, as after an upload that broke off. "
                + SendAgain,
            Refusal.PasswordProtected =>
                "The workbook is protected with a password to open. Open it, remove that password, save, and hand it in again.",
            Refusal.OtherKind other => FileKindWords.Of(other),
            Refusal.Damaged(var what) => $"The workbook is damaged: {DamageWords.Of(what)}. {SendAgain}",
            Refusal.TooLarge large =>
                $"The workbook is far larger than a practice workbook can be: {Of(large)}. Copy your answers into a fresh copy of the workbook that you were given, and hand that in.",
            Refusal.Oversized(var bytes) => string.Create(
                CultureInfo.InvariantCulture,
                $"The file is larger than any practice workbook ({bytes / (1024 * 1024)} MB). Please remove pictures from it and hand it in again."
            ),
            Refusal.Leftover(var by) => Of(by),
            Refusal.Link => "This is a link to another place; what it leads to was not looked at. Please hand in the workbook itself.",
            Refusal.FarFolder =>
                "This folder lies too deep, or is a link to another place; what is in it was not looked at. Please hand in the workbook itself.",
            Refusal.Packed(PackingFault.Password, _) => $"The file lies in a zip archive that is protected with a password. {HandInItself}",
            Refusal.Packed packed => $"{Of(packed)} {HandInAgain}",
            Refusal.Unopened(var why) => Of(why),
            _ => throw new UnreachableException($"No words for {refusal}."),
        };

    private static string Of(Refusal.TooLarge large)
    {
        var most = large.Most.ToString(CultureInfo.InvariantCulture);
        return large.What switch
        {
            Excess.FileMegabytes => $"the file is larger than {most} MB",
            Excess.UnpackedMegabytes => $"unpacked, it is larger than {most} MB",
            Excess.ElementMegabytes => $"an element of its part {large.Part} has more than {most} MB",
            Excess.PackingRatio => $"its part {large.Part} unpacks to more than {most} times its size",
            Excess.Parts => $"it has more than {most} parts, or very long names for them",
            Excess.Relations => $"a part of it points to more than {most} others",
            Excess.Depth => $"its elements lie more than {most} deep in one another",
            Excess.XmlNames => $"its XML has more than {most} different names",
            Excess.TextCharacters => $"a text in it has more than {most} characters",
            Excess.Sheets => $"it has more than {most} sheets",
            Excess.Names => $"it has more than {most} defined names",
            Excess.Tables => $"it has more than {most} tables",
            Excess.Cells => $"it has more than {most} filled cells",
            Excess.SharedTexts => $"it has more than {most} texts",
            Excess.SharedFormulas => $"it has more than {most} cells that share a formula",
            Excess.AllFormulaCharacters => $"its formulas have more than {most} characters together",
            Excess.AllTextCharacters => $"its texts have more than {most} characters together",
        };
    }

    private static string Of(LeftoverKind by) =>
        by switch
        {
            LeftoverKind.LockFile => "The lock file of a program that had the workbook open.",
            LeftoverKind.MacFile => "What a Mac adds beside every file that it packs.",
            LeftoverKind.SystemFile => "A file that an operating system or a backup left there.",
        };

    private static string Of(Refusal.Packed packed) =>
        packed.What switch
        {
            PackingFault.Broken => "The zip archive is cut off or damaged and cannot be opened.",
            PackingFault.Empty => "The zip archive has no files in it.",
            PackingFault.TooManyFiles => string.Create(
                CultureInfo.InvariantCulture,
                $"The zip archive holds more than {packed.Most} files; the rest of them was not looked at."
            ),
            PackingFault.TooManyNames => string.Create(
                CultureInfo.InvariantCulture,
                $"The zip archive holds more than {packed.Most} files, or files with very long names."
            ),
            PackingFault.TooDeep => string.Create(
                CultureInfo.InvariantCulture,
                $"More than {packed.Most} zip archives are packed into one another here."
            ),
            PackingFault.DamagedInside => "The file is damaged inside its zip archive.",
            PackingFault.ImpossibleSize => "The file is damaged inside its zip archive: the archive gives it a size that no file has.",
            PackingFault.OtherSize => "The file is damaged inside its zip archive: its size is not what the archive says.",
            PackingFault.Bomb => "Far more comes out of the zip archive that the file lies in than belongs to practice workbooks.",
            PackingFault.Password => "The file lies in a zip archive that is protected with a password.",
        };

    private static string Of(OpeningFault why) =>
        why switch
        {
            OpeningFault.NotAllowed => $"It lies where it may not be opened: the right to read it is missing. {Instructor}",
            OpeningFault.Gone =>
                $"It was there when grading began and was gone when it was to be read, or its name cannot be used on this system. {Instructor}",
            OpeningFault.LongName => $"Its name, or the names of the folders around it, are too long to open it. {Instructor}",
            OpeningFault.Disk => $"It could not be read from the disk or network that it lies on. {Instructor}",
            OpeningFault.OurError =>
                "It could not be judged because of an error in the program that grades. This is nothing that the student did: the instructor has been told and looks at it by hand. There is no need to hand it in again.",
        };
}
