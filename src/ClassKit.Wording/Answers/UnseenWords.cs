using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Wording.Mending;
using ClassKit.Wording.Numbers;

namespace ClassKit.Wording.Answers;

/// <summary>
/// What is told of a wrong answer of which nobody sees how it came about: that, where to look, and what is seen without understanding: the
/// numbers that are typed into the formula, and what the method uses and the formula does not.
/// </summary>
internal static class UnseenWords
{
    /// <summary>What is longer is a list of labels, and nobody reads it to the end. Source: the instructors who read these sentences.</summary>
    private const int Longest = 260;

    /// <summary>What is told of an answer that is no near miss.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="found">What was found of it.</param>
    public static string Of(AnswerGrade answer, AnswerFinding.NotRight found) =>
        answer.Formula is not { } formula ? OfNumber(answer.Exercise, answer.Part)
        : found.Lacks is { } empty ? $"Your formula does not come to the right number. {UnusableCellWords.Of(empty)}"
        : found.Formula is not { } named ? Lay(answer.Exercise, answer.Part, null)
        : Of(answer.Exercise, answer.Part, formula, found.Cells ?? Cells(named, formula), named);

    /// <summary>The same of a near miss in which nobody would know their own formula again.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="part">The part.</param>
    /// <param name="formula">The student's formula.</param>
    /// <param name="cells">The cells by the names that keys use, as far as they are known.</param>
    /// <param name="named">The formula over these names, with what stands in other cells worked in; null where that is not known.</param>
    public static string Of(Exercise exercise, Part part, string? formula, IReadOnlyDictionary<string, string> cells, string? named = null)
    {
        if (new FormulaShape(formula).Tree is not { } tree)
            return OfNumber(exercise, part);
        var sheet = new SheetTerms(exercise, cells);
        if (Change(exercise, part, formula!, tree, sheet, named) is var (what, cure))
            return $"{what}.{cure}{SolutionPlace.Of([], exercise, part, isFormula: true, isCured: cure.Length > 0)}";
        var written = Flat.Of(sheet.Named(tree));
        List<string> typed =
        [
            .. Numbers(Arithmetic(written))
                .Except(exercise.Parts.SelectMany(other => Numbers(Flat.Of(other.Key.Shape))))
                .Where(number => number != "1"),
        ];
        List<string> unused = [.. Unused(part, written, named).Select(name => sheet.Term(name))];
        var seen = (typed, unused) switch
        {
            ({ Count: 0 }, { Count: 0 }) => "",
            ({ Count: 0 }, _) => $" What the method uses and your formula does not: {Phrases.List(unused)}.",
            (_, { Count: 0 }) => $" Typed into it: {Phrases.List(typed)}. Is that from your sheet?",
            _ =>
                $" Typed into it: {Phrases.List(typed)}. Is that from your sheet? What the method uses and your formula does not: {Phrases.List(unused)}.",
        };
        return Lay(exercise, part, new MendWords(exercise, part, formula!, sheet).InCells()) + seen;
    }

    /// <summary>
    /// The one thing to change in a formula, in the words of its sheet, and what to write; null where there is none that could be told so.
    /// What stands in cells of the student's own is worked in.
    /// </summary>
    public static (string What, string Cure)? Change(
        Exercise exercise,
        Part part,
        string formula,
        FormulaNode tree,
        SheetTerms sheet,
        string? named
    )
    {
        var written = Flat.Of(sheet.Named(tree));
        var isThrough = IsThroughOtherCells(written);
        if (isThrough && (named is null || CellFormula.Parse(named).Formula is null))
            return null;
        if (isThrough)
            written = Flat.Of(CellFormula.Of(named!).Shape);
        if (PartMending.Of(exercise, part).Change(written) is not { } reading || !sheet.Tells(reading))
            return null;
        var what =
            $"{(isThrough && !HasRange(tree) ? "With your other cells worked in, it" : "It")} looks as if {OwnChangeWords.What(reading.Change, sheet)}";
        return what.Length > Longest ? null : (what, new MendWords(exercise, part, formula, sheet).Of(reading));
    }

    private static bool HasRange(FormulaNode node) => node is ReferenceNode { IsCell: false } || node.Children().Any(HasRange);

    /// <summary>True of a formula that uses cells in which nothing of the exercise stands.</summary>
    public static bool IsThroughOtherCells(Flat written) => written.Leaves().Any(leaf => leaf.Node is ReferenceNode);

    /// <summary>What the key uses and a formula does not; nothing where cells lead to what we do not see.</summary>
    private static IEnumerable<string> Unused(Part part, Flat written, string? named)
    {
        var known = written.Leaves().Select(leaf => leaf.Sorted).ToHashSet(StringComparer.Ordinal);
        if (named is not null && CellFormula.Parse(named).Formula is { } over)
            known.UnionWith(over.Names.Select(name => name.ToUpperInvariant()));
        else if (IsThroughOtherCells(written))
            return [];
        return part.Key.Names.Where(name => !known.Contains(name.ToUpperInvariant()));
    }

    private static string Lay(Exercise exercise, Part part, string? inCells) =>
        $"This is not right, and we could not see what happened. Lay your formula beside the worked solution of part {Letter(exercise, part)}{(inCells is null ? "." : $"; in your cells it is {inCells}.")}";

    private static string OfNumber(Exercise exercise, Part part) =>
        $"This is not the right number for part {Letter(exercise, part)}, and we could not see how it came about. Lay your steps beside the worked solution, number by number.";

    /// <summary>The cells of the names that stand in a formula: the same tree stands over both.</summary>
    private static Dictionary<string, string> Cells(string named, string typed)
    {
        var cells = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        if (CellFormula.Parse(named).Formula is { } over && CellFormula.Parse(typed).Formula is { } under)
            Pair(over.Shape, under.Shape, cells);
        return cells;
    }

    private static void Pair(FormulaNode named, FormulaNode typed, Dictionary<string, string> cells)
    {
        if (named is NameNode name && typed is ReferenceNode)
            cells[name.Name] = FormulaShape.Text(typed).Replace("$", "", StringComparison.Ordinal);
        foreach (var (one, other) in named.Children().Zip(typed.Children()))
            Pair(one, other, cells);
    }

    /// <summary>Without what says how a function rounds.</summary>
    private static Flat Arithmetic(Flat formula) =>
        formula switch
        {
            Flat.Call call => call with { Arguments = [.. call.Arguments.Take(1).Select(Arithmetic)] },
            Flat.Row row => row with { Items = [.. row.Items.Select(item => item with { Term = Arithmetic(item.Term) })] },
            Flat.Power power => new Flat.Power(Arithmetic(power.Base), Arithmetic(power.Exponent)),
            _ => formula,
        };

    private static IEnumerable<string> Numbers(Flat formula) =>
        formula.Leaves().Where(leaf => leaf.Node is NumberNode or PercentNode).Select(leaf => leaf.Text()).Distinct();

    private static string Letter(Exercise exercise, Part part) =>
        Phrases.Letter(exercise.Parts.Index().First(other => other.Item.Id == part.Id).Index);
}
