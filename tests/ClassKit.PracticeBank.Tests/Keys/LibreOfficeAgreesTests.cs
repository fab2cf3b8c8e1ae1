using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Tests.Differential;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Variants;
using ClassKit.PracticeBank.Tests.Bank;

namespace ClassKit.PracticeBank.Tests.Keys;

/// <summary>
/// The keys in a spreadsheet that is not ours: a sheet an exercise, a row a variant, givens in cells and keys as formulas over them.
/// </summary>
public sealed class LibreOfficeAgreesTests
{
    private const int VariantsEach = 200;

    [Fact]
    public void LibreOffice_computes_the_same_answers_on_two_hundred_variants_of_every_exercise()
    {
        var variants = ShippedBank.Exercises.ToDictionary(
            exercise => exercise.Id,
            exercise => Variants.Draw(exercise, VariantsEach).ToList()
        );
        var values = LibreOfficeValues.Of(new([.. ShippedBank.Exercises.Select(exercise => Sheet(exercise, variants[exercise.Id]))], []));
        var compared = 0;
        foreach (var exercise in ShippedBank.Exercises)
        {
            for (var row = 1; row <= VariantsEach; row++)
            {
                foreach (var part in exercise.Parts)
                {
                    var ours = CellValue.FromNumber(variants[exercise.Id][row - 1].Answers[part.Id]);
                    var theirs = values.GetValueOrDefault(new(exercise.Id, row, Column(exercise, part.Id)));
                    Assert.True(
                        Agreement.Between(ours, theirs),
                        $"{exercise.Id}/{part.Id}: we have {ours}, LibreOffice {theirs}, with {VariantKey.Of(exercise, variants[exercise.Id][row - 1].Givens)}"
                    );
                    compared++;
                }
            }
        }
        Assert.Equal(VariantsEach * ShippedBank.Exercises.Sum(exercise => exercise.Parts.Count), compared);
    }

    private static SheetSnapshot Sheet(Exercise exercise, List<Variant> variants)
    {
        var cells = new Dictionary<(int Row, int Column), CellContent>();
        for (var row = 1; row <= variants.Count; row++)
        {
            foreach (var (given, value) in variants[row - 1].Givens)
                cells[(row, Column(exercise, given))] = new(CellValue.FromNumber((double)value), null);
            foreach (var part in exercise.Parts)
                cells[(row, Column(exercise, part.Id))] = new(CellValue.Blank, OverCells(exercise, part.Key, row).ToFileText());
        }
        return new(exercise.Id, cells);
    }

    private static CellFormula OverCells(Exercise exercise, CellFormula key, int row) =>
        key.ReplaceNames(name => new CellAddress(exercise.Id, row, Column(exercise, name)).Cell);

    /// <summary>Givens first, then parts; from 1.</summary>
    private static int Column(Exercise exercise, string name) =>
        1
        + exercise
            .Givens.Select(given => given.Id)
            .Concat(exercise.Parts.Select(part => part.Id))
            .TakeWhile(id => !string.Equals(id, name, StringComparison.OrdinalIgnoreCase))
            .Count();
}
