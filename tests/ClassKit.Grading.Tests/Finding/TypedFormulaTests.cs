using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Answers;
using ClassKit.Grading.Finding;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests.Finding;

/// <summary>
/// Formulas that stand as text, typed in the signs and the language of other keyboards and programs. Published: 225 - 138 = 87 °F, see the
/// exercise.
/// </summary>
public sealed class TypedFormulaTests
{
    private static string Cell(string given) => Layout.GivensOf(Ada).First(entry => entry.Name == given).Address.Cell;

    /// <summary>The text with cells in the places of names in braces.</summary>
    private static string WithCells(string text) =>
        Layout
            .GivensOf(Ada)
            .Aggregate(text, (filled, given) => filled.Replace($"{{{given.Name}}}", Cell(given.Name), StringComparison.Ordinal));

    [Theory]
    [InlineData("=3*{want}-{flour}-{room}-{friction}")]
    [InlineData(" =3*{want}-{flour}-{room}-{friction}")]
    [InlineData("'=3*{want}-{flour}-{room}-{friction}")]
    [InlineData("\u200E\u00A0=3*{want}-{flour}-{room}-{friction}")]
    [InlineData("=3×{want}−{flour}–{room}—{friction}")]
    [InlineData("=3·{want}\u2009-\u2009{flour}\u202F-\u00A0{room}-{friction}")]
    [InlineData("＝３＊{want}－{flour}－{room}－{friction}")]
    [InlineData("=٣*{want}-{flour}-{room}-{friction}")]
    [InlineData("=27÷9*{want}-{flour}-{room}-{friction}")]
    [InlineData("=(4-1¹)*{want}-{flour}-{room}-{friction}")]
    [InlineData("=3,0*{want}-{flour}-{room}-{friction}")]
    [InlineData("=1,5*{want}*2-({flour}+{room}+{friction})")]
    [InlineData("=RUNDEN(3*{want}-SUMME({flour};{room};{friction});0)")]
    [InlineData("=Runden(3,0*{want}-Summe({flour};{room};{friction});0)")]
    [InlineData("=SUM({want};{want};{want})-SUM({flour};{room};{friction})")]
    [InlineData("=ARRONDI(PRODUIT(3;{want})-SOMME({flour};{room};{friction});1)")]
    [InlineData("=SI({want}>0,5;3*{want}-SOMME({flour};{room};{friction});0)")]
    [InlineData("=REDONDEAR(PRODUCTO(3;{want})-SUMA({flour};{room};{friction});0)")]
    [InlineData("=ARROTONDA(PRODOTTO(3;{want})-SOMMA({flour};{room};{friction});0)")]
    [InlineData("=ARRED(MULT(3;{want})-SOMA({flour};{room};{friction});0)")]
    [InlineData("=AFRONDEN(PRODUCT(3;{want})-SOM({flour};{room};{friction});0)")]
    [InlineData("=ZAOKR(ILOCZYN(3;{want})-SUMA({flour};{room};{friction});0)")]
    [InlineData("=JEŻELI.BŁĄD(3*{want}-SUMA({flour};{room};{friction});0)")]
    [InlineData("=WURZEL(2,25)*2*{want}-{flour}-{room}-{friction}")]
    public void A_sound_formula_is_sound_however_it_was_typed(string text)
    {
        var grade = Grade(new ReturnedBook(Ada).AnswerInWords("temperature", WithCells(text)), "temperature");

        Assert.Equal(Outcome.Sound, grade.Outcome);
        Assert.Contains(new AnswerFinding.StoodAsText(), grade.Findings);
    }

    [Theory]
    [InlineData("=\"3,5;×\"", "=\"3,5;×\"")]
    [InlineData("='Blatt;1,5'!B2*2", "='Blatt;1,5'!B2*2")]
    [InlineData("=SUM(C7,5)", "=SUM(C7,5)")]
    [InlineData("=SUM(1,5)", "=SUM(1,5)")]
    [InlineData("=ROUND(C7*C8,1)", "=ROUND(C7*C8,1)")]
    [InlineData("=SUM(C7,8)*2", "=SUM(C7,8)*2")]
    [InlineData("=SUM(C7;1,5)", "=SUM(C7,1.5)")]
    [InlineData("=SUM({1,2;3,4})", "=SUM({1,2;3,4})")]
    [InlineData("=WENN(C7>1,5;\"SUMME(a;b)\";2)", "=IF(C7>1.5,\"SUMME(a;b)\",2)")]
    [InlineData("=„SUMME(1;2)“", "=\"SUMME(1;2)\"")]
    [InlineData("=C7*10²", "=C7*10^2")]
    [InlineData("=C7*10⁻³", "=C7*10^-3")]
    [InlineData("=(C7+1,5)*2", "=(C7+1.5)*2")]
    public void Only_what_says_that_it_is_another_languages_is_changed(string text, string expected)
    {
        Assert.Equal(expected, TypedFormula.Readings(text).First());
    }

    [Fact]
    public void No_name_of_one_language_means_two_functions_or_another_function_in_English()
    {
        using var table = new StreamReader(typeof(AnswerText).Assembly.GetManifestResourceStream("function-names.csv")!);
        var lines = table.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var pairs = lines
            .Skip(1)
            .Select(line => line.Split(','))
            .SelectMany(cells => cells.Skip(1).SelectMany(cell => cell.Split(' ')), (cells, name) => (English: cells[0], Name: name))
            .Distinct()
            .ToList();

        Assert.All(lines, line => Assert.Equal(8, line.Split(',').Length));
        Assert.Empty(pairs.GroupBy(pair => pair.Name).Where(name => name.Count() > 1).Select(name => name.Key));
        var english = pairs.Select(pair => pair.English).ToHashSet();
        Assert.All(pairs, pair =>
            Assert.True(
                pair.Name == pair.English || !IsEnglish(pair.Name),
                $"{pair.Name} is a function of files, and stands for {pair.English}"
            )
        );
        Assert.All(english, name => Assert.True(IsEnglish(name), $"{name} is no function that we work out"));
    }

    /// <summary>True for a function that ClassKit evaluates: called with no arguments it may fail, but not for its name.</summary>
    private static bool IsEnglish(string name) =>
        NamedEvaluation.Evaluate(CellFormula.Of($"={name}(1)"), new Dictionary<string, CellValue>())
            is { Status: EvaluationStatus.Computed, Value: var value }
        && !(value.IsError && value.Error == CellError.Name);
}
