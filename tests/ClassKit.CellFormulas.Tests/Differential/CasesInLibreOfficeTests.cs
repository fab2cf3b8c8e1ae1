using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Functions;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Tests.Support;

namespace ClassKit.CellFormulas.Tests.Differential;

/// <summary>The case files of functions, computed by LibreOffice: it agrees, or gives just what the file says it gives instead.</summary>
public class CasesInLibreOfficeTests
{
    /// <summary>Functions that LibreOffice before version 24.8 does not have.</summary>
    private static readonly string[] NewerThanSome =
    [
        "XLOOKUP",
        "XMATCH",
        "RANDARRAY",
        "SEQUENCE",
        "HSTACK",
        "VSTACK",
        "TAKE",
        "DROP",
        "CHOOSEROWS",
        "CHOOSECOLS",
        "TOCOL",
        "TOROW",
        "WRAPROWS",
        "WRAPCOLS",
        "EXPAND",
        "SORT",
        "SORTBY",
        "FILTER",
        "UNIQUE",
        "TEXTBEFORE",
        "TEXTAFTER",
        "TEXTSPLIT",
    ];

    [Fact]
    public void LibreOffice_agrees_with_the_case_files_or_differs_as_they_say()
    {
        var files = FunctionRegistry
            .All.Select(function => function.Name)
            .Except(NewerThanSome)
            .Order(StringComparer.Ordinal)
            .Select(name => CaseFile.Read("Functions", name))
            .ToList();
        var sheets = files.Select(file => new SheetSnapshot(
            "f_" + file.Name,
            file.ToBook()
                .Snapshot()
                .Sheets[0]
                .Cells.ToDictionary(
                    cell => cell.Key,
                    cell =>
                        cell.Value.Formula is { } formula ? cell.Value with { Formula = CellFormula.Of(formula).ToFileText() } : cell.Value
                )
        ));
        var values = LibreOfficeValues.Of(new([.. sheets], []));
        var differences = new List<string>();
        foreach (var file in files)
        {
            for (var at = 0; at < file.Cases.Count; at++)
            {
                var one = file.Cases[at];
                if (one.Expected is "volatile" or "unsupported")
                    continue;
                CellAddress.TryParse("f_" + file.Name, CaseFile.CellOf(at), out var address);
                var value = values.GetValueOrDefault(address);
                var expected = one.InLibreOffice ?? one.Expected;
                if (one.NearZero && value.IsNumber && Math.Abs(value.Number - Literal.Read(expected).Number) < 1e-9)
                    continue;
                if (expected == "\"*\"" ? value.IsText : Agreement.Between(Literal.Read(expected), value))
                    continue;
                differences.Add($"{file.Name}: {one.Formula} -> {one.Expected}, in LibreOffice {Literal.Write(value)}");
            }
        }

        Assert.True(differences.Count == 0, string.Join("\n", differences));
    }
}
