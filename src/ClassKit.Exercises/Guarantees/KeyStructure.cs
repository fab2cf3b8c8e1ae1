using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Guarantees;

/// <summary>What can be said of an exercise's keys without any numbers: worked out once, asked for every draw.</summary>
internal sealed class KeyStructure
{
    /// <summary>Functions whose value moves by as little as their arguments do; any other may jump.</summary>
    private static readonly HashSet<string> Smooth = new(StringComparer.Ordinal)
    {
        "SUM",
        "PRODUCT",
        "AVERAGE",
        "ABS",
        "MIN",
        "MAX",
        "SQRT",
        "POWER",
        "EXP",
        "LN",
        "LOG",
        "LOG10",
        "PI",
        "SUMPRODUCT",
        "SIN",
        "COS",
        "CONVERT",
    };

    private readonly Dictionary<string, HashSet<string>> _uses = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> _jumping = new(StringComparer.OrdinalIgnoreCase);

    public KeyStructure(Exercise exercise)
    {
        Exercise = exercise;
        foreach (var part in exercise.Parts)
        {
            var uses = new HashSet<string>(part.Key.Names, StringComparer.OrdinalIgnoreCase);
            foreach (var name in part.Key.Names)
            {
                if (!_uses.TryGetValue(name, out var through))
                    continue;
                uses.UnionWith(through);
                if (_jumping.Contains(name))
                    _jumping.Add(part.Id);
            }
            _uses[part.Id] = uses;
            if (Jumps(part.Key.Root))
                _jumping.Add(part.Id);
        }
    }

    public Exercise Exercise { get; }

    /// <summary>True if a part's key uses a given or an earlier part, itself or through parts in between.</summary>
    public bool Uses(Part part, string name) => _uses[part.Id].Contains(name);

    /// <summary>True if a hair's breadth in a given may make a step in the answer, as rounding does.</summary>
    public bool MayJump(Part part) => _jumping.Contains(part.Id);

    private static bool Jumps(FormulaNode node) =>
        node switch
        {
            BinaryNode { Operator: > BinaryOperator.Subtract } => true,
            CallNode call when !Smooth.Contains(call.Name) => true,
            _ => node.Children().Any(Jumps),
        };
}
