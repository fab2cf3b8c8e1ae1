using System.Diagnostics;
using System.Globalization;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Wording.Quoting;

namespace ClassKit.Wording.Files;

/// <summary>What is broken in a workbook.</summary>
internal static class DamageWords
{
    public static string Of(Damage damage) =>
        damage switch
        {
            Damage.Archive => "its zip archive contradicts itself",
            Damage.Unpacking(var part) => $"{part} cannot be unpacked",
            Damage.Checksum(var part) => $"{part} broke on its way, it does not match its checksum",
            Damage.NoXml(var part) => $"{part} is empty or starts with a document type, as no spreadsheet program writes it",
            Damage.BrokenXml(var part, var line, var column) => string.Create(
                CultureInfo.InvariantCulture,
                $"{part} is no well-formed XML at line {line}, column {column}"
            ),
            Damage.NoSheets(var part) => $"{part} lists no sheets",
            Damage.NowhereSheet(var sheet) => $"sheet '{Quoted.Of(sheet)}' is listed, but not where it lies",
            Damage.MissingSheet(var sheet, var part) => $"sheet '{Quoted.Of(sheet)}' is listed, but its part {part} is missing",
            Damage.RowNumber(var sheet, var number) => $"sheet '{Quoted.Of(sheet)}' has a row numbered '{Quoted.Of(number)}'",
            Damage.CellName(var sheet, var address) => $"sheet '{Quoted.Of(sheet)}' has a cell called '{Quoted.Of(address)}'",
            Damage.BeyondSheet(var sheet) => $"sheet '{Quoted.Of(sheet)}' has cells beyond its last row or column",
            Damage.SharedFormula(var cell) => $"cell {cell} shares a formula that is not there",
            Damage.MissingText(var cell) => $"{ShownName.Of(cell.ToString())} refers to a text that is not there",
            Damage.NoNumber no =>
                $"{(no.Cell.Length == 0 ? $"sheet '{Quoted.Of(no.Sheet)}'" : $"'{Quoted.Of(no.Sheet)}'!{no.Cell}")} holds '{Quoted.Of(no.Text)}' where a {(no.IsDate ? "date" : "number")} should be",
            _ => throw new UnreachableException($"No words for {damage}."),
        };
}
