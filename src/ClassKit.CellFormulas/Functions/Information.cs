using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>What kind of value something is (OpenFormula 1.3, 6.13).</summary>
internal static class Information
{
    public static readonly FunctionRow[] Rows =
    [
        Is("ISBLANK", value => value.IsBlank),
        Is("ISERR", value => value.IsError && value.Error != CellError.NotAvailable),
        Is("ISERROR", value => value.IsError),
        Is("ISLOGICAL", value => value.Kind == CellValueKind.Logical),
        Is("ISNA", value => value.IsError && value.Error == CellError.NotAvailable),
        Is("ISNONTEXT", value => !value.IsText),
        Is("ISNUMBER", value => value.IsNumber),
        Is("ISTEXT", value => value.IsText),
        new("ISEVEN", 1, 1, "V", call => Numbers.Truncate(call.Number(0)) % 2 == 0),
        new("ISODD", 1, 1, "V", call => Numbers.Truncate(call.Number(0)) % 2 != 0),
        new("ISREF", 1, 1, "R", call => call.Value(0).Reference is not null, FunctionTraits.SeesErrors),
        new("NA", 0, 0, "", _ => CellError.NotAvailable),
        new(
            "ERROR.TYPE",
            1,
            1,
            "V",
            call => call.Any(0) is { IsError: true } value ? (int)value.Error : CellError.NotAvailable,
            FunctionTraits.SeesErrors
        ),
        new("TYPE", 1, 1, "R", Type, FunctionTraits.SeesErrors),
        new("N", 1, 1, "R", N),
    ];

    private static FunctionRow Is(string name, Func<CellValue, bool> test) =>
        new(name, 1, 1, "V", call => test(call.Any(0)), FunctionTraits.SeesErrors);

    private static FormulaValue Type(Call call)
    {
        var value = call.Value(0);
        if (value.Array is not null || value.Reference is { IsCell: false })
            return 64;
        return call.Any(0).Kind switch
        {
            CellValueKind.Text => 2,
            CellValueKind.Logical => 4,
            CellValueKind.Error => 16,
            _ => 1,
        };
    }

    /// <summary>A number as it is, a logical as 0 or 1, anything else as 0; of a range its first cell.</summary>
    private static FormulaValue N(Call call)
    {
        var first = call.First(0);
        return first.Kind switch
        {
            CellValueKind.Number or CellValueKind.Error => first,
            CellValueKind.Logical => first.Logical ? 1 : 0,
            _ => 0,
        };
    }
}
