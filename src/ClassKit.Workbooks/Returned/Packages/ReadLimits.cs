namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>
/// How much of a returned workbook is read before it is refused. Files come from anywhere; none may cost the machine its memory or its
/// time.
/// </summary>
/// <remarks>The defaults are some hundred times what a practice workbook holds, photographs of dough included.</remarks>
public sealed record ReadLimits
{
    /// <summary>The limits used unless others are given.</summary>
    public static ReadLimits Default { get; } = new();

    /// <summary>
    /// Those for what students return: no practice workbook has a fiftieth of these cells, and each may be a formula that grading follows.
    /// </summary>
    public static ReadLimits Practice { get; } = new() { Cells = 100_000, SharedTexts = 100_000 };

    /// <summary>Those for what this program has just made itself, which is as large as the class that it is about: none.</summary>
    internal static ReadLimits Own { get; } =
        new()
        {
            FileBytes = int.MaxValue,
            UnpackedBytes = long.MaxValue,
            Ratio = int.MaxValue,
            Entries = int.MaxValue,
            Sheets = int.MaxValue,
            Cells = int.MaxValue,
            Names = int.MaxValue,
            Tables = int.MaxValue,
            ElementBytes = int.MaxValue,
            DirectoryBytes = int.MaxValue,
            Relationships = int.MaxValue,
            SharedTexts = int.MaxValue,
            AllTextLength = long.MaxValue,
            TextLength = int.MaxValue,
            FormulaLength = int.MaxValue,
            SharedFormulas = int.MaxValue,
            AllFormulasLength = long.MaxValue,
        };

    /// <summary>The file itself, in bytes.</summary>
    public int FileBytes { get; init; } = 50 * 1024 * 1024;

    /// <summary>All parts that are read, unpacked, in bytes. Pictures are never unpacked.</summary>
    public long UnpackedBytes { get; init; } = 64 * 1024 * 1024;

    /// <summary>How many times larger a part of more than <see cref="RatioFromBytes"/> may get by unpacking.</summary>
    public int Ratio { get; init; } = 400;

    /// <summary>The unpacked size, in bytes, from which <see cref="Ratio"/> holds; small parts of much the same pack very well.</summary>
    public long RatioFromBytes { get; init; } = 4 * 1024 * 1024;

    /// <summary>The entries of the zip archive.</summary>
    public int Entries { get; init; } = 4_000;

    /// <summary>The sheets of the workbook.</summary>
    public int Sheets { get; init; } = 250;

    /// <summary>The cells with something in them, over all sheets.</summary>
    public int Cells { get; init; } = 250_000;

    /// <summary>The defined names.</summary>
    public int Names { get; init; } = 10_000;

    /// <summary>The tables, over all sheets.</summary>
    public int Tables { get; init; } = 1_000;

    /// <summary>From one element's mark to the next, with its attributes or text, in bytes.</summary>
    public int ElementBytes { get; init; } = 1024 * 1024;

    /// <summary>The bytes of all entries' names in the zip archive, with what else its directory says of them.</summary>
    public int DirectoryBytes { get; init; } = 1024 * 1024;

    /// <summary>The pointers from one part to others.</summary>
    public int Relationships { get; init; } = 10_000;

    /// <summary>The texts that cells refer to by number.</summary>
    public int SharedTexts { get; init; } = 250_000;

    /// <summary>The characters of all texts together, shared ones counted once.</summary>
    public long AllTextLength { get; init; } = 8_000_000;

    /// <summary>The characters of a text; spreadsheet programs allow as many.</summary>
    public int TextLength { get; init; } = 32_767;

    /// <summary>The characters of a formula; spreadsheet programs allow as many.</summary>
    public int FormulaLength { get; init; } = 8_192;

    /// <summary>The cells whose formula is written once in another cell.</summary>
    public int SharedFormulas { get; init; } = 20_000;

    /// <summary>
    /// The characters of all formulas together, those that are written once and shared by many cells counted for every cell.
    /// </summary>
    public long AllFormulasLength { get; init; } = 2_000_000;
}
