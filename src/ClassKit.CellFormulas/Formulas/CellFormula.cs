using ClassKit.CellFormulas.Printing;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.CellFormulas.Formulas;

/// <summary>A parsed cell formula: what stands behind <c>=</c> in a spreadsheet cell. Immutable.</summary>
/// <remarks>
/// The language is that of files, ECMA-376 Part 1, 18.17: commas between arguments, a point in numbers, function names in English.
/// </remarks>
public sealed class CellFormula
{
    private string? _canonical;
    private IReadOnlyList<string>? _names;

    private CellFormula(string text, FormulaNode root)
    {
        Text = text;
        Root = root;
    }

    /// <summary>The formula as written, with its leading <c>=</c>.</summary>
    public string Text { get; }

    /// <summary>The syntax tree; the spans of its nodes count characters of <see cref="Text"/>.</summary>
    public FormulaNode Root { get; }

    /// <summary>
    /// The defined names it uses, each once in the order of first use, without those that LET binds. Two spellings that differ in letter
    /// case are one name.
    /// </summary>
    public IReadOnlyList<string> Names => _names ??= FreeNames.In(Root);

    /// <summary>Parses a text, with or without its leading <c>=</c>. Never throws, whatever the text.</summary>
    public static FormulaParse Parse(string? text)
    {
        text ??= "";
        if (!text.StartsWith('='))
            text = "=" + text;
        var (root, error) = Parser.Parse(text);
        return root is null ? new(error!) : new(new CellFormula(text, root));
    }

    /// <summary>Parses a text known to be a formula, such as one in a test.</summary>
    /// <exception cref="FormatException">It is none; the message shows where.</exception>
    public static CellFormula Of(string text)
    {
        var parse = Parse(text);
        return parse.Formula ?? throw new FormatException(parse.Error!.ToString());
    }

    /// <summary>The formula that a tree stands for, with the parentheses that keep its shape and no others.</summary>
    /// <param name="root">Made by hand, or out of the trees of other formulas.</param>
    /// <exception cref="FormatException">It would be larger than a formula can be.</exception>
    public static CellFormula OfTree(FormulaNode root)
    {
        ArgumentNullException.ThrowIfNull(root);
        return Of(CanonicalText.Of(Brackets.Needed(Brackets.Without(root))));
    }

    /// <summary>The formula that is read where a tree is written down as it stands, with no parentheses but its own.</summary>
    /// <param name="root">A tree with parentheses in which something was changed.</param>
    /// <exception cref="FormatException">It would be larger than a formula can be.</exception>
    public static CellFormula OfWritten(FormulaNode root)
    {
        ArgumentNullException.ThrowIfNull(root);
        return Of(CanonicalText.Of(root));
    }

    /// <summary>The syntax tree without parentheses: its shape says what belongs together.</summary>
    public FormulaNode Shape => Brackets.Without(Root);

    /// <summary>
    /// The formula with other operands in the places of its names, so that <c>=flour*hydration</c> becomes <c>=B5*B6</c>.
    /// </summary>
    /// <param name="reference">For a name, the text of the operand to put there (<c>B5</c>, <c>'Sheet one'!B5</c>, <c>640</c>, <c>-3</c>,
    /// <c>A1+1</c>), or null to leave the name. What would bind differently in its new place is put in parentheses.</param>
    /// <exception cref="FormatException">A text given is no operand, or the result would be larger than a formula can be.</exception>
    public CellFormula ReplaceNames(Func<string, string?> reference)
    {
        ArgumentNullException.ThrowIfNull(reference);
        return Of(CanonicalText.Of(NameReplacement.In(Root, name => reference(name) is { } operand ? Of(operand).Root : null)));
    }

    /// <summary>The formula as it reads when its cell is copied to another place: references without <c>$</c> move along.</summary>
    /// <param name="rows">How far down; negative for up.</param>
    /// <param name="columns">How far right; negative for left.</param>
    /// <returns>A formula in which references that left the sheet are <c>#REF!</c>.</returns>
    public CellFormula Shift(int rows, int columns) => Of(CanonicalText.Of(new Shifting(rows, columns).Rewrite(Root)));

    /// <summary>
    /// The text that a file stores: canonical, without <c>=</c>, newer functions with the prefix <c>_xlfn.</c> that programs expect.
    /// </summary>
    public string ToFileText() => CanonicalText.ForFile(Root);

    /// <summary>
    /// The canonical text, with its leading <c>=</c>: no spaces, names of functions in capitals, only the parentheses that were written.
    /// </summary>
    public override string ToString() => _canonical ??= CanonicalText.Of(Root);
}
