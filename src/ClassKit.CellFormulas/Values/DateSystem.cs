namespace ClassKit.CellFormulas.Values;

/// <summary>From which day a workbook counts its dates.</summary>
public enum DateSystem
{
    /// <summary>Day 1 is 1900-01-01 and day 60 the 29 February 1900 that never was (ECMA-376 Part 1, 18.17.4.1).</summary>
    From1900,

    /// <summary>Day 0 is 1904-01-01 (ECMA-376 Part 1, 18.17.4.1).</summary>
    From1904,

    /// <summary>
    /// Day 0 is 1899-12-30, days before it are negative, and every day was one: OpenDocument spreadsheets that do not say otherwise
    /// (OpenDocument 1.3 Part 3, 9.4.2, <c>table:null-date</c>).
    /// </summary>
    From1899,
}
