using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.Judging.Slips;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.NearMisses;
using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.Judging;

/// <summary>Finds what a wrong answer has otherwise than the key, where no slip and no misconception explains it.</summary>
internal sealed class NearMissFinder
{
    private readonly ReturnedExercise _returned;
    private readonly IReadOnlyList<Trial> _trials;
    private readonly NeighbourTable _table;

    /// <param name="returned">The exercise as it came back.</param>
    /// <param name="trials">What answers are tried with, the dealt inputs first.</param>
    /// <param name="table">The wrong formulas near the part's key.</param>
    public NearMissFinder(ReturnedExercise returned, IReadOnlyList<Trial> trials, NeighbourTable table) =>
        (_returned, _trials, _table) = (returned, trials, table);

    /// <summary>What a formula has otherwise: it must do so under all trials, on right earlier answers or the student's own.</summary>
    public Slip? Find(TriedAnswer answer, Reading reading)
    {
        if (answer.AsWritten is { } written && !HasMethod(written.Shape))
            return null;
        foreach (var behaviour in answer.Grounds.All.Select(ground => answer.On(ground, reading)).Where(behaviour => behaviour.Varies))
        {
            if (Numbers(behaviour) is { } values && NearMissSearch.OneEdit(_table, Names(behaviour.Ground), values) is { } one)
                return HasMethod(one.Root) ? Of(one, isShown: true) : null;
        }
        var onRight = answer.On(answer.OnRight, reading);
        return
            onRight.Varies
            && Numbers(onRight) is { } right
            && reading.Of(answer.At(new(new(_table.Two.Input))), answer.Part) is { } there
            && NearMissSearch.TwoEdits(_table, there, Names(answer.OnRight), right) is { } two
            && HasMethod(two.Root)
            ? Of(two, isShown: true)
            : null;
    }

    /// <summary>
    /// What a formula over the exercise's names has otherwise, by what it does on everything drawn for the class: the same for everybody
    /// who wrote it.
    /// </summary>
    public Slip? Find(CellFormula formula)
    {
        var found = _table.Try(formula).Like(_trials[0].NamesOn(_trials[0].Right.Answers));
        return found is not null && HasMethod(formula.Shape) && HasMethod(found.Root) && Uses(formula, found)
            ? Of(found, isShown: true)
            : null;
    }

    /// <summary>
    /// False where it would be said that something was taken in or used instead which the formula does not have, or not as often: it comes
    /// to the same by another way, and the student would look for it in vain.
    /// </summary>
    private bool Uses(CellFormula formula, Neighbour found) =>
        found switch
        {
            { Family: EditFamily.TakenIn, Edits: [KeyEdit.TakenIn { Term: var term }] } => CellFormula
                .Of("=" + term)
                .Names.All(name => formula.Names.Contains(name, StringComparer.OrdinalIgnoreCase)),
            _ => !_table.IsApart
                || found
                    .Edits.OfType<KeyEdit.OtherCell>()
                    .All(cell => Tree.Times(formula.Root, cell.Written) >= Tree.Times(found.Root, cell.Written)),
        };

    /// <summary>What a typed number comes of, if it can only come of one thing.</summary>
    /// <param name="part">The part.</param>
    /// <param name="number">The number, which must be one that says how somebody came to it.</param>
    /// <param name="onOwn">True if it may have been worked out from the student's own earlier answers.</param>
    public Slip? Find(Part part, double number, bool onOwn)
    {
        var dealt = _trials[0];
        List<IReadOnlyDictionary<string, double>> grounds = [dealt.Right.Answers];
        if (onOwn)
            grounds.AddRange([dealt.HeldBefore(part), dealt.MeantBefore(part)]);
        return NearMissSearch.OfNumber(_table, [.. grounds.Select(dealt.NamesOn)], number) is { } found && HasMethod(found.Root)
            ? Of(found, isShown: false)
            : null;
    }

    /// <summary>
    /// False for a cell pointed at: whoever points at one cell for each answer has no method, and would have the share of a near miss of
    /// nearly every part. Where the key does one thing with that cell, only that thing is missing.
    /// </summary>
    private bool HasMethod(FormulaNode tree) =>
        !_table.IsOfTheMethod
        || tree switch
        {
            PrefixNode { Operator: PrefixOperator.Plus, Operand: var same } => HasMethod(same),
            NameNode { Name: var name } => Tree.IsOneStepFrom(_table.Part.Key.Shape, name),
            _ => true,
        };

    private static List<double>? Numbers(Behaviour behaviour) =>
        behaviour.Values.All(value => value is not null) ? [.. behaviour.Values.Select(value => value!.Value)] : null;

    private List<IReadOnlyDictionary<string, CellValue>> Names(Ground ground) =>
        [.. _trials.Zip(ground.Earlier, (trial, earlier) => trial.NamesOn(earlier))];

    private Slip Of(Neighbour neighbour, bool isShown)
    {
        return new(
            SlipKind.NearMiss,
            new AnswerFinding.NearMiss(neighbour.Edits, neighbour.Formula.ToString(), _returned.Cells(_trials[0].Right.Exercise), isShown)
        );
    }
}
