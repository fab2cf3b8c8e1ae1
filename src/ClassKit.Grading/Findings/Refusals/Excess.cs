namespace ClassKit.Grading.Findings.Refusals;

/// <summary>What a returned workbook can have too much of.</summary>
public enum Excess
{
    /// <summary>Bytes; the most are told in megabytes.</summary>
    FileMegabytes,

    /// <summary>Bytes when unpacked; the most are told in megabytes.</summary>
    UnpackedMegabytes,

    /// <summary>Bytes of one element of a part; the most are told in megabytes.</summary>
    ElementMegabytes,

    /// <summary>How many times its packed size a part has.</summary>
    PackingRatio,

    /// <summary>Parts, or letters in their names.</summary>
    Parts,

    /// <summary>Other parts that one part points to.</summary>
    Relations,

    /// <summary>Levels of elements in one another.</summary>
    Depth,

    /// <summary>Different names of elements.</summary>
    XmlNames,

    /// <summary>Characters of one text.</summary>
    TextCharacters,

    /// <summary>Sheets.</summary>
    Sheets,

    /// <summary>Defined names.</summary>
    Names,

    /// <summary>Tables.</summary>
    Tables,

    /// <summary>Filled cells.</summary>
    Cells,

    /// <summary>Texts that cells share.</summary>
    SharedTexts,

    /// <summary>Cells that share a formula.</summary>
    SharedFormulas,

    /// <summary>Characters of all formulas.</summary>
    AllFormulaCharacters,

    /// <summary>Characters of all texts.</summary>
    AllTextCharacters,
}
