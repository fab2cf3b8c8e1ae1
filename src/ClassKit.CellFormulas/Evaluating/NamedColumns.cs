using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Operations;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>
/// Evaluates many trees on several inputs at once, as <see cref="NamedValues"/> does one after the other, and quicker: arithmetic is done
/// for all inputs at each node, and what a tree shares with one that is kept was worked out before. Not to be used from several threads at
/// once.
/// </summary>
/// <remarks>
/// A function but rounding is left to the interpreter, and so is a tree in which anything but a number meets an operator.
/// </remarks>
public sealed class NamedColumns
{
    private readonly IReadOnlyList<IReadOnlyDictionary<string, CellValue>> _inputs;
    private readonly int _steps;
    private readonly NamedValues?[] _interpreters;
    private readonly Dictionary<string, Column> _names = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<FormulaNode, Column> _kept = new(new SameNode());
    private readonly Stack<double[]> _spare = new();

    /// <param name="inputs">What each name stands for on every input, whatever its letter case.</param>
    /// <param name="steps">The most that one tree may take on one input; past it it gives no number.</param>
    public NamedColumns(IReadOnlyList<IReadOnlyDictionary<string, CellValue>> inputs, int steps = EvaluationLimits.DefaultSteps)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        (_inputs, _steps, _interpreters) = (inputs, steps, new NamedValues?[inputs.Count]);
    }

    /// <summary>How many steps all trees together have taken, on all inputs.</summary>
    public long Spent { get; private set; }

    /// <summary>
    /// Works out a tree and every tree in it, for others that have nodes in common with it. What was kept before is forgotten.
    /// </summary>
    public void Keep(FormulaNode root)
    {
        ArgumentNullException.ThrowIfNull(root);
        _kept.Clear();
        KeepBelow(root);
    }

    /// <summary>What a tree gives on every input, in their order; empty if on any of them it gives anything but a number.</summary>
    /// <param name="root">The tree.</param>
    /// <returns>Numbers that stand until the next tree is asked for.</returns>
    public ReadOnlySpan<double> Numbers(FormulaNode root)
    {
        ArgumentNullException.ThrowIfNull(root);
        var column = Of(root);
        if (column.IsForInterpreter)
            column = Interpreted(root);
        Spent += column.Steps * _inputs.Count;
        GiveBack(column);
        return column.Steps > _steps ? [] : column.Numbers;
    }

    private void KeepBelow(FormulaNode node)
    {
        if (_kept.ContainsKey(node))
            return;
        foreach (var operand in node is CallNode ? [] : node.Children())
            KeepBelow(operand);
        _kept[node] = Of(node) with { IsSpare = false };
    }

    private Column Of(FormulaNode node)
    {
        if (_kept.TryGetValue(node, out var kept))
            return kept;
        return node switch
        {
            NumberNode number => Constant(number.Value),
            NameNode { Sheet: null } name => OfName(name.Name),
            GroupNode group => Of(group.Inner).After(1),
            PrefixNode { Operator: PrefixOperator.Plus } plus => Of(plus.Operand).After(1),
            PrefixNode { Operator: PrefixOperator.Minus } minus => Each(Of(minus.Operand), Operators.Negate),
            BinaryNode { Operator: >= BinaryOperator.Power and <= BinaryOperator.Subtract } binary => Compute(
                binary.Operator,
                Of(binary.Left),
                Of(binary.Right)
            ),
            _ => PlainRounding.In(node) is var (rounded, round) ? Each(Of(rounded), round) : Interpreted(node),
        };
    }

    private Column Constant(double value)
    {
        var numbers = Take();
        if (!double.IsFinite(value))
            return Failed(numbers, 1);
        Array.Fill(numbers, value);
        return new(numbers, 1, IsSpare: true);
    }

    private Column OfName(string name)
    {
        if (_names.TryGetValue(name, out var known))
            return known;
        return _names[name] = Interpreted(new NameNode(null, name, default)) with { IsSpare = false };
    }

    private Column Each(Column operand, Func<double, double> compute)
    {
        if (operand.Numbers is not { } numbers)
            return operand.After(1);
        var into = operand.IsSpare ? numbers : Take();
        for (var at = 0; at < into.Length; at++)
            into[at] = compute(numbers[at]);
        return new(into, operand.Steps + 1, IsSpare: true);
    }

    private Column Compute(BinaryOperator op, Column left, Column right)
    {
        var steps = left.Steps + right.Steps + 1;
        if (left.Numbers is not { } a || right.Numbers is not { } b)
        {
            GiveBack(left);
            GiveBack(right);
            return new(null, steps) { IsForInterpreter = left.IsForInterpreter || right.IsForInterpreter };
        }
        var into =
            left.IsSpare ? a
            : right.IsSpare ? b
            : Take();
        var isNumber = true;
        for (var at = 0; at < into.Length; at++)
        {
            var number = Operators.Number(op, a[at], b[at]);
            isNumber &= double.IsFinite(number);
            into[at] = number;
        }
        if (left.IsSpare && right.IsSpare)
            GiveBack(right);
        return isNumber ? new(into, steps, IsSpare: true) : Failed(into, steps);
    }

    /// <summary>An error in arithmetic is an error of all that is made of it.</summary>
    private Column Failed(double[] spare, long steps)
    {
        _spare.Push(spare);
        return new(null, steps);
    }

    private Column Interpreted(FormulaNode node)
    {
        var numbers = Take();
        var steps = 1L;
        for (var at = 0; at < numbers.Length; at++)
        {
            var interpreter = _interpreters[at] ??= new(_inputs[at], _steps);
            var before = interpreter.Spent;
            // It may be an error or a text: what becomes of that, the interpreter knows.
            if (interpreter.Number(node) is not { } number)
                return Failed(numbers, steps) with { IsForInterpreter = true };
            numbers[at] = number;
            steps = Math.Max(steps, interpreter.Spent - before);
        }
        return new(numbers, steps, IsSpare: true);
    }

    private double[] Take() => _spare.TryPop(out var spare) ? spare : new double[_inputs.Count];

    private void GiveBack(Column column)
    {
        if (column is { IsSpare: true, Numbers: { } numbers })
            _spare.Push(numbers);
    }

    /// <summary>
    /// A node is itself. What an edit makes of it stands where it stood: the hash of an object would have to be made for each of thousands
    /// of nodes.
    /// </summary>
    private sealed class SameNode : IEqualityComparer<FormulaNode>
    {
        public bool Equals(FormulaNode? x, FormulaNode? y) => ReferenceEquals(x, y);

        public int GetHashCode(FormulaNode node) =>
            node is BinaryNode binary ? (node.Span.Start * 16) + (int)binary.Operator : node.Span.Start;
    }

    /// <summary>What a node gives on every input.</summary>
    /// <param name="Numbers">Null if it gives no number on some.</param>
    /// <param name="Steps">What it took on one input.</param>
    /// <param name="IsSpare">True if nobody else needs the numbers, so that others can be written over them.</param>
    private readonly record struct Column(double[]? Numbers, long Steps, bool IsSpare = false)
    {
        /// <summary>True if the tree that it stands in is for the interpreter.</summary>
        public bool IsForInterpreter { get; init; }

        public Column After(int steps) => this with { Steps = Steps + steps };
    }
}
