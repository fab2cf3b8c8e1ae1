using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Wording.Mending;

namespace ClassKit.Wording.Answers;

/// <summary>
/// What to write for a formula to be right. Whoever does it letter by letter has the right formula: the whole of it where that is short,
/// and else a piece, in brackets unless it is one cell or number, that was tried in its place.
/// </summary>
/// <param name="exercise">The exercise.</param>
/// <param name="part">The part.</param>
/// <param name="typed">The student's formula as it stands in the cell.</param>
/// <param name="sheet">The student's sheet.</param>
internal sealed class MendWords(Exercise exercise, Part part, string typed, SheetTerms sheet)
{
    /// <summary>What is longer is no longer taken in at a glance. Source: the instructor who read 840 of these sentences.</summary>
    private const int Glance = 36;

    /// <summary>What is longer than this nobody types off a page.</summary>
    private const int Most = 72;

    private readonly string _key = new FormulaShape(part.Key.ToString()).Plain;

    /// <summary>The whole right formula; empty if it is too long for that.</summary>
    public string Whole() => Write(_key, Most);

    /// <summary>The right formula in the student's cells, without its <c>=</c>; null if it is too long or they are not known.</summary>
    public string? InCells() => Write(_key, Glance) is { Length: > 0 } ? sheet.Cells(_key) : null;

    /// <summary>What to change for a reading of the student's own formula.</summary>
    public string Of(OwnReading reading)
    {
        var (written, right) = (reading.Written, reading.Right);
        var mended = Mended(reading.Mended);
        if (reading.Change is OwnChange.OtherLeaf && Piece(written, right, " Write {0} where you have {1}.") is { } leaf)
            return leaf;
        return Write(mended, Glance) is { Length: > 0 } whole
            ? whole
            : Piece(written, right, " Write {0} instead of {1}.") ?? Write(mended, Most);
    }

    /// <summary>What to write where one piece of the formula stands; the whole right formula where the piece does not tell its place.</summary>
    public string InPlace(Flat written, Flat right) => Piece(written, right, " Write {0} instead of {1}.") ?? Write(_key, Most);

    /// <summary>Grouped as the student does; as the key has it where that is the same in the same order.</summary>
    private string Mended(Flat mended)
    {
        var key = Flat.Of(part.Key.Shape);
        mended = WithoutOnes(mended);
        return mended.Text(isGrouped: false) == key.Text(isGrouped: false)
            ? _key
            : mended.Text(isGrouped: typed.Contains("/(", StringComparison.Ordinal) || typed.Contains("-(", StringComparison.Ordinal));
    }

    /// <summary>A factor of 1 that a change has left over is no part of anybody's method.</summary>
    private static Flat WithoutOnes(Flat formula) =>
        formula switch
        {
            Flat.Row { IsSum: false } row when row.Items.Where(item => !IsOne(item)).ToList() is { Count: > 0 } others => Flat.InRow(
                isSum: false,
                others.Select(item => item with { Term = WithoutOnes(item.Term) })
            ),
            Flat.Row row => Flat.InRow(row.IsSum, row.Items.Select(item => item with { Term = WithoutOnes(item.Term) })),
            Flat.Power power => new Flat.Power(WithoutOnes(power.Base), WithoutOnes(power.Exponent)),
            Flat.Call call => call with { Arguments = [.. call.Arguments.Select(WithoutOnes)] },
            _ => formula,
        };

    private static bool IsOne(Flat.Item item) => item is { IsInverse: false, Term: Flat.Leaf { Node: NumberNode { Value: 1 } } };

    /// <summary>The advice on a piece that stands once in what was typed, if the whole is right when it is followed; else null.</summary>
    private string? Piece(Flat written, Flat right, string advice)
    {
        foreach (var isGrouped in new[] { false, true })
        {
            var (old, other) = (sheet.Cells(written.Text(isGrouped)), sheet.Cells(right.Text(isGrouped)));
            var mend = right is Flat.Leaf or Flat.Call ? other : $"({other})";
            if (old.Length > Glance || mend.Length > Glance || !right.Leaves().All(HasCell) || Replaced(old, mend) is not { } mended)
                continue;
            if (CellFormula.Parse(mended).Formula is { } formula && PartMending.Of(exercise, part).IsKey(sheet.Named(formula.Shape)))
                return string.Format(System.Globalization.CultureInfo.InvariantCulture, advice, mend, old);
        }
        return null;
    }

    private bool HasCell(Flat.Leaf leaf) => leaf.Node is not NameNode name || sheet.HasCell(name.Name);

    /// <summary>The text with a piece replaced where it stands just once.</summary>
    private string? Replaced(string old, string mend)
    {
        var places = Enumerable.Range(1, Math.Max(0, typed.Length - old.Length)).Where(at => StandsAt(old, at)).ToList();
        return places is [var only] ? $"{typed[..only]}{mend}{typed[(only + old.Length)..]}" : null;
    }

    private bool StandsAt(string old, int at) =>
        string.Compare(typed, at, old, 0, old.Length, StringComparison.OrdinalIgnoreCase) == 0
        && !(IsOfName(typed[at - 1]) && IsOfName(old[0]))
        && !(at + old.Length < typed.Length && IsOfName(typed[at + old.Length]) && IsOfName(old[^1]));

    private static bool IsOfName(char letter) => char.IsLetterOrDigit(letter) || letter is '.' or '_' or '$';

    /// <summary>Empty, too, where we do not know in which cell something stands.</summary>
    private string Write(string formula, int most) =>
        CellFormula.Of("=" + formula).Names.All(sheet.HasCell) && sheet.Cells(formula) is var cells && cells.Length <= most
            ? $" Write {cells}."
            : "";
}
