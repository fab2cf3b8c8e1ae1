namespace ClassKit.CellFormulas.Syntax;

/// <summary>An operator between two operands, from the one that binds tightest.</summary>
/// <remarks>Source: ECMA-376 Part 1, 18.17.2.2.</remarks>
public enum BinaryOperator
{
    /// <summary><c>:</c>, the smallest rectangle that holds both.</summary>
    Range,

    /// <summary>A space: the cells in both.</summary>
    Intersection,

    /// <summary><c>,</c>: the cells of one and then of the other.</summary>
    Union,

    /// <summary><c>^</c>; groups to the left, so <c>2^3^2</c> is 64.</summary>
    Power,

    /// <summary><c>*</c>.</summary>
    Multiply,

    /// <summary><c>/</c>.</summary>
    Divide,

    /// <summary><c>+</c>.</summary>
    Add,

    /// <summary><c>-</c>.</summary>
    Subtract,

    /// <summary><c>&amp;</c>, one text after the other.</summary>
    Concatenate,

    /// <summary><c>=</c>.</summary>
    Equal,

    /// <summary><c>&lt;&gt;</c>.</summary>
    NotEqual,

    /// <summary><c>&lt;</c>.</summary>
    Less,

    /// <summary><c>&lt;=</c>.</summary>
    LessOrEqual,

    /// <summary><c>&gt;</c>.</summary>
    Greater,

    /// <summary><c>&gt;=</c>.</summary>
    GreaterOrEqual,
}
