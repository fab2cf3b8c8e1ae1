using ClassKit.CellFormulas.Tests.Support;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Evaluating;

/// <summary>XMATCH and XLOOKUP by halving, over keys of several kinds.</summary>
/// <remarks>
/// Microsoft's function reference: search mode 2 halves keys in ascending order, -2 in descending order, and keys in another order give
/// invalid results. Kinds come in the order numbers, texts, logicals (ECMA-376 Part 1, 18.17.2.6).
/// </remarks>
public class HalvingTests
{
    private static CellValue Value(string formula)
    {
        var book = new Book { ["H1"] = formula };
        string[] up = ["1", "2", "5", "'a", "'b", "TRUE"];
        for (var at = 0; at < up.Length; at++)
        {
            book[$"A{at + 1}"] = up[at];
            book[$"B{at + 1}"] = up[^(at + 1)];
        }

        return book.Value("H1");
    }

    [Theory]
    [InlineData("2", 2)]
    [InlineData("5", 3)]
    [InlineData("\"b\"", 5)]
    [InlineData("TRUE", 6)]
    public void What_stands_in_order_is_found(string wanted, int place)
    {
        Assert.Equal(place, Value($"=XMATCH({wanted},A1:A6,0,2)").Number);
        Assert.Equal(7 - place, Value($"=XMATCH({wanted},B1:B6,0,-2)").Number);
        foreach (var mode in (int[])[-1, 1])
        {
            Assert.Equal(place, Value($"=XMATCH({wanted},A1:A6,{mode},2)").Number);
            Assert.Equal(7 - place, Value($"=XMATCH({wanted},B1:B6,{mode},-2)").Number);
        }
    }

    [Theory]
    [InlineData("3", 2, 3)]
    [InlineData("9", 3, null)]
    [InlineData("0", null, 1)]
    [InlineData("\"aa\"", 4, 5)]
    [InlineData("\"c\"", 5, null)]
    [InlineData("FALSE", null, 6)]
    public void The_nearest_is_of_the_same_kind(string wanted, int? below, int? above)
    {
        AssertPlace(below, $"=XMATCH({wanted},A1:A6,-1,2)");
        AssertPlace(above, $"=XMATCH({wanted},A1:A6,1,2)");
        AssertPlace(7 - below, $"=XMATCH({wanted},B1:B6,-1,-2)");
        AssertPlace(7 - above, $"=XMATCH({wanted},B1:B6,1,-2)");
        AssertPlace(null, $"=XMATCH({wanted},A1:A6,0,2)");
        AssertPlace(null, $"=XMATCH({wanted},B1:B6,0,-2)");
    }

    private static void AssertPlace(int? place, string formula) =>
        Assert.Equal(place is { } at ? CellValue.FromNumber(at) : CellValue.FromError(CellError.NotAvailable), Value(formula));
}
