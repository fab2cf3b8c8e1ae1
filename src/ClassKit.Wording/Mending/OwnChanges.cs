using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Wording.Mending;

/// <summary>
/// Looks for the one change that makes a formula the key: in the tree that somebody wrote, and not in the key's, so that what is told of it
/// stands there. The change that is soonest recognised is tried first.
/// </summary>
internal sealed class OwnChanges
{
    private static readonly string[] Roundings = ["ROUND", "ROUNDUP", "ROUNDDOWN", "INT", "TRUNC", "CEILING", "FLOOR", "MROUND"];

    private readonly KeyTrial _trial;
    private readonly Flat _key;
    private readonly List<Flat> _simple;
    private readonly List<Flat> _longer;
    private readonly Dictionary<string, int> _mostTimes;
    private readonly HashSet<string> _amounts;

    /// <param name="exercise">The exercise.</param>
    /// <param name="part">The part.</param>
    public OwnChanges(Exercise exercise, Part part)
    {
        (_trial, _key) = (new(exercise, part), Flat.Of(part.Key.Shape));
        // Who works from the first givens in one go has the earlier parts' pieces in the formula.
        var before = exercise
            .Parts.TakeWhile(other => other.Id != part.Id)
            .Where(other => other.IsNumber)
            .Reverse()
            .Select(other => Flat.Of(other.Key.Shape));
        var pieces = new[] { _key }.Concat(before).SelectMany(Pieces).DistinctBy(piece => piece.Sorted).ToList();
        // 85 g are no share of anything, whatever 86 come to.
        _amounts = new(
            exercise.Givens.Where(given => !given.Unit.IsPercent && given.To > 1).Select(given => given.Id),
            StringComparer.OrdinalIgnoreCase
        );
        _mostTimes = InOneGo(exercise, part)
            .SelectMany(Times)
            .GroupBy(leaf => leaf.Key, leaf => leaf.Value, StringComparer.Ordinal)
            .ToDictionary(leaf => leaf.Key, times => times.Max(), StringComparer.Ordinal);
        _simple = [.. pieces.Where(piece => piece is Flat.Leaf)];
        _longer = [.. pieces.Where(piece => piece is not Flat.Leaf && piece.Sorted != _key.Sorted)];
    }

    /// <summary>The change; null where there is none, or where it would be the whole formula.</summary>
    /// <param name="written">The formula, over the exercise's names.</param>
    public OwnReading? Of(Flat written)
    {
        if (IsKey(written))
            return null;
        // What stands in the key as it is, is least likely to be what is wrong: both of two differences turned round come to the same.
        var right = _key.Places().Select(place => place.Piece.Sorted).ToHashSet(StringComparer.Ordinal);
        foreach (var kind in Kinds)
        {
            OwnReading? first = null;
            foreach (var found in kind(written))
            {
                if (first is not null && right.Contains(found.Piece.Sorted))
                    continue;
                var mended = found.Whole(found.Right);
                if (!IsKey(mended) || IsDetour(written, mended, found.Change))
                    continue;
                first = new(found.Change, mended, found.Piece, found.Right);
                if (!right.Contains(found.Piece.Sorted))
                    break;
            }
            if (first is not null)
                return first;
        }
        return null;
    }

    /// <summary>What a key is made of; not to how many digits it rounds.</summary>
    private static IEnumerable<Flat> Pieces(Flat formula) =>
        formula is Flat.Call { Arguments: [var rounded, ..] } call && Roundings.Contains(call.Name)
            ? Pieces(rounded).Prepend(formula)
            : formula.Places().Select(place => place.Piece).Where(piece => !IsDigits(formula, piece));

    private static bool IsDigits(Flat formula, Flat piece) =>
        formula
            .Places()
            .Any(place =>
                place.Piece is Flat.Call call
                && Roundings.Contains(call.Name)
                && call.Arguments.Skip(1).Any(argument => ReferenceEquals(argument, piece))
            );

    /// <summary>
    /// True where something is written once more than the method has it, to undo what it stands for elsewhere: right by what it gives, and
    /// nothing that anybody would write or learn from.
    /// </summary>
    private bool IsDetour(Flat written, Flat mended, OwnChange change)
    {
        var (before, after) = (Times(written), Times(mended));
        // A difference over what it is a share of is as short as 1 less a quotient.
        if (change is OwnChange.LeftOut && mended.Leaves().Count() <= _key.Leaves().Count())
            return false;
        return after.Any(leaf =>
                before.TryGetValue(leaf.Key, out var had) && leaf.Value > had && leaf.Value > _mostTimes.GetValueOrDefault(leaf.Key)
            ) || (HasFactorOfOne(mended) && !HasFactorOfOne(written));
    }

    private static Dictionary<string, int> Times(Flat formula) =>
        formula
            .Leaves()
            .GroupBy(leaf => leaf.Sorted, StringComparer.Ordinal)
            .ToDictionary(leaf => leaf.Key, leaf => leaf.Count(), StringComparer.Ordinal);

    private static bool HasFactorOfOne(Flat formula) =>
        formula
            .Places()
            .Any(place =>
                place.Piece is Flat.Row { IsSum: false, Items: { Count: > 1 } items }
                && items.Any(one => IsOne(one.Term) && (one.IsInverse || items.Any(other => other != one && !other.IsInverse)))
            );

    /// <summary>The key, and with the earlier parts' keys in their places, as who works in one go has it, from further and further back.</summary>
    private static IEnumerable<Flat> InOneGo(Exercise exercise, Part part)
    {
        var formula = Flat.Of(part.Key.Shape);
        yield return formula;
        foreach (var before in exercise.Parts.TakeWhile(other => other.Id != part.Id).Where(other => other.IsNumber).Reverse())
            yield return formula = Replaced(formula, Named(before.Id), Flat.Of(before.Key.Shape));
    }

    private static string Named(string id) => new Flat.Leaf(new NameNode(null, id, default)).Sorted;

    private bool IsKey(Flat formula) =>
        !formula.Leaves().Any(leaf => leaf.Node is ReferenceNode) && _trial.IsKey(formula.Tree(isGrouped: true));

    private IEnumerable<Func<Flat, IEnumerable<Found>>> Kinds =>
        [
            Negated,
            Signs,
            Brackets,
            formula => OtherLeaves(formula, isSameKind: true),
            TurnedRound,
            SignsOfSeveral,
            Swaps,
            Roundeds,
            TakenIn,
            Shares,
            formula => LeftOut(formula, _simple),
            formula => OtherLeaves(formula, isSameKind: false),
            Operations,
            formula => LeftOut(formula, _longer),
            Everywhere,
            Exchanged,
            TooFar,
            OtherPieces,
        ];

    private sealed record Found(OwnChange Change, Flat Piece, Flat Right, Func<Flat, Flat> Whole);

    private static IEnumerable<Found> Negated(Flat formula) =>
        formula is Flat.Row { IsSum: true, Items: [{ IsInverse: true, Term: var whole }] }
            ? [new(new OwnChange.Negated(), formula, whole, right => right)]
            : [];

    private static IEnumerable<Found> Signs(Flat formula) =>
        from place in formula.Places()
        where place.Piece is Flat.Row { Items.Count: > 1 }
        let row = (Flat.Row)place.Piece
        from at in row.Items.Index()
        // The last is looked at first: what stands first was not done to anything.
        orderby at.Index == 0
        select new Found(
            new OwnChange.Sign(at.Item.Term, Done(row, at.Item.IsInverse), Done(row, !at.Item.IsInverse)),
            row,
            Flat.InRow(row.IsSum, row.Items.Select((item, index) => index == at.Index ? item with { IsInverse = !item.IsInverse } : item)),
            place.Whole
        );

    /// <summary>The same with a pair of brackets or two elsewhere.</summary>
    private static IEnumerable<Found> Brackets(Flat formula) =>
        Bracketed.Of(formula.Tree(isGrouped: false)).Select(other => new Found(new OwnChange.Brackets(), formula, other, whole => whole));

    /// <summary>What belongs in one bracket behind a minus or under the line.</summary>
    private static IEnumerable<Found> SignsOfSeveral(Flat formula)
    {
        foreach (var (piece, whole) in formula.Places())
        {
            if (piece is not Flat.Row { Items.Count: > 2 } row)
                continue;
            for (var from = 1; from < row.Items.Count - 1; from++)
            {
                for (var to = row.Items.Count; to >= from + 2; to--)
                {
                    var (first, last, isInverse) = (from, to, row.Items[from].IsInverse);
                    var several = row
                        .Items.Skip(first)
                        .Take(last - first)
                        .Select(item => item with { IsInverse = item.IsInverse != isInverse });
                    yield return new(
                        new OwnChange.Sign(Flat.InRow(row.IsSum, several), Done(row, isInverse), Done(row, !isInverse)),
                        piece,
                        Flat.InRow(
                            row.IsSum,
                            row.Items.Select((item, at) => at >= first && at < last ? item with { IsInverse = !item.IsInverse } : item)
                        ),
                        whole
                    );
                }
            }
        }
    }

    private IEnumerable<Found> OtherLeaves(Flat formula, bool isSameKind) =>
        from place in formula.Places()
        where place.Piece is Flat.Leaf
        from other in _simple
        // A factor of 1 is none: that is one too many.
        where other.Sorted != place.Piece.Sorted && IsNumber(other) == IsNumber(place.Piece) == isSameKind
        where
            (!IsOne(other) && !IsOne(place.Piece))
            || formula
                .Places()
                .Any(at => at.Piece is Flat.Row { IsSum: true } sum && sum.Items.Any(item => ReferenceEquals(item.Term, place.Piece)))
        select new Found(new OwnChange.OtherLeaf(place.Piece, other), place.Piece, other, place.Whole);

    private static IEnumerable<Found> Swaps(Flat formula)
    {
        List<(Flat Piece, Func<Flat, Flat> Whole)> places = [.. formula.Places()];
        List<int> leaves = [.. places.Index().Where(place => place.Item.Piece is Flat.Leaf).Select(place => place.Index)];
        foreach (var (at, one) in leaves.Index())
        {
            foreach (var other in leaves.Skip(at + 1))
            {
                if (places[one].Piece.Sorted == places[other].Piece.Sorted || IsOne(places[one].Piece) || IsOne(places[other].Piece))
                    continue;
                yield return new(
                    new OwnChange.Swapped(places[one].Piece, places[other].Piece),
                    formula,
                    Swapped(formula, places[one].Piece, places[other].Piece),
                    whole => whole
                );
            }
        }
    }

    /// <summary>Those very two, which may be equal to others: by reference.</summary>
    private static Flat Swapped(Flat formula, Flat one, Flat other) =>
        ReferenceEquals(formula, one) ? other
        : ReferenceEquals(formula, other) ? one
        : formula switch
        {
            Flat.Row row => Flat.InRow(row.IsSum, row.Items.Select(item => item with { Term = Swapped(item.Term, one, other) })),
            Flat.Power power => new Flat.Power(Swapped(power.Base, one, other), Swapped(power.Exponent, one, other)),
            Flat.Call call => call with { Arguments = [.. call.Arguments.Select(argument => Swapped(argument, one, other))] },
            _ => formula,
        };

    private static IEnumerable<Found> TurnedRound(Flat formula)
    {
        foreach (var (piece, whole) in formula.Places())
        {
            if (piece is Flat.Power power)
                yield return new(
                    new OwnChange.Turned(BinaryOperator.Power, power.Base, power.Exponent),
                    piece,
                    new Flat.Power(power.Exponent, power.Base),
                    whole
                );
            if (piece is not Flat.Row { Items.Count: > 1 } row)
                continue;
            List<Flat.Item> forth = [.. row.Items.Where(item => !item.IsInverse)];
            List<Flat.Item> back = [.. row.Items.Where(item => item.IsInverse)];
            var isPlain = forth.Count > 0 && back.Count > 0;
            yield return new(
                new OwnChange.Turned(
                    row.IsSum ? BinaryOperator.Subtract : BinaryOperator.Divide,
                    isPlain ? Flat.InRow(row.IsSum, forth) : null,
                    isPlain ? Flat.InRow(row.IsSum, back.Select(item => item with { IsInverse = false })) : null
                ),
                piece,
                Flat.InRow(row.IsSum, row.Items.Select(item => item with { IsInverse = !item.IsInverse })),
                whole
            );
        }
    }

    /// <summary>1 less a share, 1 and a share, and the share itself.</summary>
    private IEnumerable<Found> Shares(Flat formula)
    {
        var one = new Flat.Leaf(new NumberNode(1, default));
        Flat With(Flat share, bool isLess) => Flat.InRow(isSum: true, [new(false, one), new(isLess, share)]);
        foreach (var (piece, whole) in formula.Places())
        {
            if (piece is Flat.Leaf { Node: NameNode name } && !_amounts.Contains(name.Name))
            {
                yield return new(new OwnChange.Share(piece, With(piece, isLess: true)), piece, With(piece, isLess: true), whole);
                yield return new(new OwnChange.Share(piece, With(piece, isLess: false)), piece, With(piece, isLess: false), whole);
            }
            if (
                piece is Flat.Row
                {
                    IsSum: true,
                    Items: [{ IsInverse: false, Term: var first }, { IsInverse: var isLess, Term: Flat.Leaf share }]
                }
            )
            {
                if (first.Sorted != "1" || share.Node is not NameNode)
                    continue;
                yield return new(new OwnChange.Share(piece, share), piece, share, whole);
                yield return new(new OwnChange.Share(piece, With(share, !isLess)), piece, With(share, !isLess), whole);
            }
        }
    }

    private static IEnumerable<Found> Roundeds(Flat formula) =>
        from place in formula.Places()
        where place.Piece is Flat.Call
        let call = (Flat.Call)place.Piece
        where call.Arguments.Count > 0 && Roundings.Contains(call.Name)
        select new Found(new OwnChange.Rounded(call), call, call.Arguments[0], place.Whole);

    private static IEnumerable<Found> TakenIn(Flat formula)
    {
        foreach (var (piece, whole) in formula.Places())
        {
            if (piece is Flat.Power power)
                yield return new(new OwnChange.TakenIn(power.Exponent, BinaryOperator.Power, Beside: 0), piece, power.Base, whole);
            if (piece is not Flat.Row { Items.Count: > 1 } row)
                continue;
            foreach (var (at, item) in row.Items.Index().Reverse())
            {
                var others = row.Items.Where((_, place) => place != at).ToList();
                var again = others.Count(other => other.IsInverse == item.IsInverse && other.Term.Sorted == item.Term.Sorted);
                yield return new(
                    new OwnChange.TakenIn(item.Term, Done(row, item.IsInverse), again),
                    piece,
                    Flat.InRow(row.IsSum, others),
                    whole
                );
            }
        }
    }

    /// <summary>At every piece, and at every few items of a row that stand side by side.</summary>
    private IEnumerable<Found> LeftOut(Flat formula, List<Flat> missing)
    {
        var standing = formula.Places().Select(place => place.Piece.Sorted).ToHashSet(StringComparer.Ordinal);
        foreach (var (piece, right, whole) in Runs(formula))
        {
            foreach (var term in missing)
            {
                var isElsewhere = standing.Contains(term.Sorted);
                // Of what stands there already, something else would be told than what happened.
                var isThere = term.Leaves().Any(leaf => leaf.Node is NameNode && piece.Leaves().Any(own => own.Sorted == leaf.Sorted));
                if (isThere && term is not Flat.Leaf)
                    continue;
                foreach (var isSum in new[] { false, true })
                {
                    if (isSum && isThere && !IsTerm(term))
                        continue;
                    var (forth, back) = (Doing(isSum, isInverse: false), Doing(isSum, isInverse: true));
                    foreach (var isBack in new[] { false, true })
                        yield return new(
                            new OwnChange.LeftOut(term, isBack ? back : forth, piece, IsFirst: false, isElsewhere),
                            right,
                            Flat.InRow(isSum, [new(false, piece), new(isBack, term)]),
                            whole
                        );
                    yield return new(
                        new OwnChange.LeftOut(term, back, piece, IsFirst: true),
                        right,
                        Flat.InRow(isSum, [new(false, term), new(true, piece)]),
                        whole
                    );
                }
                yield return new(
                    new OwnChange.LeftOut(term, BinaryOperator.Power, piece, IsFirst: false),
                    right,
                    new Flat.Power(piece, term),
                    whole
                );
            }
        }
    }

    /// <summary>True for what the key adds or subtracts by itself.</summary>
    private bool IsTerm(Flat term) =>
        _key.Places().Any(place => place.Piece is Flat.Row { IsSum: true } row && row.Items.Any(item => item.Term.Sorted == term.Sorted));

    private static IEnumerable<(Flat Piece, Flat Stands, Func<Flat, Flat> Whole)> Runs(Flat formula)
    {
        foreach (var (piece, whole) in formula.Places())
        {
            yield return (piece, piece, whole);
            if (piece is not Flat.Row { Items.Count: > 2 } row)
                continue;
            for (var from = 0; from < row.Items.Count - 1; from++)
            {
                for (var to = from + 2; to <= row.Items.Count; to++)
                {
                    if (to - from == row.Items.Count)
                        continue;
                    var (first, last) = (from, to);
                    // As it would stand in brackets: what is taken away begins with what is there without its sign.
                    var isInverse = row.Items[first].IsInverse;
                    var run = Flat.InRow(
                        row.IsSum,
                        row.Items.Skip(first).Take(last - first).Select(item => item with { IsInverse = item.IsInverse != isInverse })
                    );
                    yield return (run, run, other =>
                        whole(Flat.InRow(row.IsSum, [.. row.Items.Take(first), new Flat.Item(isInverse, other), .. row.Items.Skip(last)]))
                    );
                }
            }
        }
    }

    /// <summary>One sign of arithmetic for another between two that stay.</summary>
    private static IEnumerable<Found> Operations(Flat formula)
    {
        foreach (var (piece, whole) in formula.Places())
        {
            if (piece is Flat.Power power)
            {
                foreach (var (isSum, isInverse) in Four)
                    yield return new(
                        new OwnChange.Sign(power.Exponent, BinaryOperator.Power, Doing(isSum, isInverse)),
                        piece,
                        Flat.InRow(isSum, [new(false, power.Base), new(isInverse, power.Exponent)]),
                        whole
                    );
            }
            if (piece is not Flat.Row { Items.Count: > 1 } row)
                continue;
            for (var at = row.Items.Count - 1; at > 0; at--)
            {
                var item = row.Items[at];
                var before = Flat.InRow(row.IsSum, row.Items.Take(at));
                var behind = row.Items.Skip(at + 1).ToList();
                foreach (var isInverse in new[] { false, true })
                {
                    // With all that stands before it, or with what stands next to it alone.
                    var all = Flat.InRow(!row.IsSum, [new(false, before), new(isInverse, item.Term)]);
                    yield return new(
                        new OwnChange.Sign(item.Term, Done(row, item.IsInverse), Doing(!row.IsSum, isInverse)),
                        row,
                        Flat.InRow(row.IsSum, [new(false, all), .. behind]),
                        whole
                    );
                    var next = row.Items[at - 1];
                    var two = Flat.InRow(!row.IsSum, [new(false, next.Term), new(isInverse, item.Term)]);
                    yield return new(
                        new OwnChange.Sign(item.Term, Done(row, item.IsInverse), Doing(!row.IsSum, isInverse)),
                        row,
                        Flat.InRow(row.IsSum, [.. row.Items.Take(at - 1), new(next.IsInverse, two), .. behind]),
                        whole
                    );
                    // What follows goes along with it.
                    var rest = Flat.InRow(row.IsSum, [new(false, item.Term), .. behind]);
                    yield return new(
                        new OwnChange.Sign(rest, Done(row, item.IsInverse), Doing(!row.IsSum, isInverse)),
                        row,
                        Flat.InRow(!row.IsSum, [new(false, before), new(isInverse, rest)]),
                        whole
                    );
                }
                yield return new(
                    new OwnChange.Sign(item.Term, Done(row, item.IsInverse), BinaryOperator.Power),
                    row,
                    Flat.InRow(row.IsSum, [new(false, new Flat.Power(before, item.Term)), .. behind]),
                    whole
                );
            }
        }
    }

    private static readonly (bool IsSum, bool IsInverse)[] Four = [(false, false), (false, true), (true, false), (true, true)];

    private IEnumerable<Found> Everywhere(Flat formula) =>
        from leaf in formula.Leaves().GroupBy(leaf => leaf.Sorted)
        let times = leaf.Count()
        where times > 1
        from other in _simple.Concat(_longer)
        where other.Sorted != leaf.Key
        select new Found(new OwnChange.Everywhere(leaf.First(), other, times), formula, Replaced(formula, leaf.Key, other), whole => whole);

    private static Flat Replaced(Flat formula, string leaf, Flat other) =>
        formula switch
        {
            Flat.Leaf => formula.Sorted == leaf ? other : formula,
            Flat.Row row => Flat.InRow(row.IsSum, row.Items.Select(item => item with { Term = Replaced(item.Term, leaf, other) })),
            Flat.Power power => new Flat.Power(Replaced(power.Base, leaf, other), Replaced(power.Exponent, leaf, other)),
            Flat.Call call => call with { Arguments = [.. call.Arguments.Select(argument => Replaced(argument, leaf, other))] },
            _ => formula,
        };

    /// <summary>A term gone from a row, and something else done to what is left of it.</summary>
    private IEnumerable<Found> Exchanged(Flat formula)
    {
        foreach (var (piece, whole) in formula.Places())
        {
            if (piece is not Flat.Row { Items.Count: > 1 } row)
                continue;
            foreach (var (at, item) in row.Items.Index().Reverse())
            {
                var left = Flat.InRow(row.IsSum, row.Items.Where((_, place) => place != at));
                if (!left.Leaves().Any(leaf => leaf.Node is NameNode))
                    continue;
                foreach (var term in _simple.Concat(_longer))
                {
                    foreach (var (isSum, isInverse) in Four)
                        yield return new(
                            new OwnChange.Exchanged(item.Term, Done(row, item.IsInverse), term, Doing(isSum, isInverse)),
                            row,
                            Flat.InRow(isSum, [new(false, left), new(isInverse, term)]),
                            whole
                        );
                }
            }
        }
    }

    private static IEnumerable<Found> TooFar(Flat formula)
    {
        foreach (var (piece, whole) in formula.Places())
        {
            if (piece is not Flat.Row { IsSum: false } row)
                continue;
            foreach (var (at, sum) in row.Items.Index().Where(item => item.Item is { IsInverse: false, Term: Flat.Row { IsSum: true } }))
            {
                var terms = ((Flat.Row)sum.Term).Items;
                foreach (var (by, factor) in row.Items.Index().Where(item => item.Index != at))
                {
                    foreach (var (only, term) in terms.Index())
                        yield return new(
                            new OwnChange.TooFar(factor.Term, Doing(isSum: false, factor.IsInverse), term.Term),
                            row,
                            Flat.InRow(
                                isSum: false,
                                [
                                    new(
                                        false,
                                        Flat.InRow(
                                            isSum: true,
                                            terms.Select(
                                                (own, place) =>
                                                    place == only
                                                        ? own with
                                                        {
                                                            Term = Flat.InRow(isSum: false, [new(false, own.Term), factor]),
                                                        }
                                                        : own
                                            )
                                        )
                                    ),
                                    .. row.Items.Where((_, place) => place != at && place != by),
                                ]
                            ),
                            whole
                        );
                }
            }
        }
    }

    /// <summary>
    /// A piece for one name or number, or one of these for a piece; the whole never, and where nothing of the sheet is left beside it
    /// nobody would know theirs again.
    /// </summary>
    private IEnumerable<Found> OtherPieces(Flat formula)
    {
        var names = formula.Leaves().Count(leaf => leaf.Node is NameNode);
        foreach (var (piece, stands, whole) in Runs(formula))
        {
            if (ReferenceEquals(piece, formula) || piece.Leaves().Count(leaf => leaf.Node is NameNode) >= names)
                continue;
            foreach (var other in piece is Flat.Leaf ? _longer : _simple)
                yield return new(new OwnChange.OtherPiece(piece, other), stands, other, whole);
        }
    }

    private static bool IsOne(Flat leaf) => leaf is Flat.Leaf { Node: NumberNode { Value: 1 } };

    private static bool IsNumber(Flat leaf) => leaf is Flat.Leaf { Node: NumberNode or PercentNode };

    private static BinaryOperator Done(Flat.Row row, bool isInverse) => Doing(row.IsSum, isInverse);

    private static BinaryOperator Doing(bool isSum, bool isInverse) =>
        (isSum, isInverse) switch
        {
            (true, false) => BinaryOperator.Add,
            (true, true) => BinaryOperator.Subtract,
            (false, false) => BinaryOperator.Multiply,
            _ => BinaryOperator.Divide,
        };
}
