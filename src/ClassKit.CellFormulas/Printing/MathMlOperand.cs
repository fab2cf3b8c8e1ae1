namespace ClassKit.CellFormulas.Printing;

/// <summary>What stands in a typeset formula for a name: words, or a quantity with its unit.</summary>
public sealed record MathMlOperand
{
    private MathMlOperand(string text, string? unit, bool isQuantity) => (Text, Unit, IsQuantity) = (text, unit, isQuantity);

    /// <summary>The words, or the number as it is to be shown.</summary>
    public string Text { get; }

    /// <summary>The unit after a number; null for none.</summary>
    public string? Unit { get; }

    /// <summary>True for a number.</summary>
    public bool IsQuantity { get; }

    /// <summary>Words, such as "flour weight".</summary>
    public static MathMlOperand Words(string words) => new(words, null, false);

    /// <summary>A number as it is to be shown, such as "1 250" or "-3.5", with its unit if it has one.</summary>
    public static MathMlOperand Quantity(string number, string? unit = null) => new(number, string.IsNullOrEmpty(unit) ? null : unit, true);
}
