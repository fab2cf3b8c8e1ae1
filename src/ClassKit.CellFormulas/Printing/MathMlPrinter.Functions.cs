using ClassKit.CellFormulas.Syntax;

namespace ClassKit.CellFormulas.Printing;

/// <summary>How functions are set: with the signs of arithmetic where there are any, in words where those read better.</summary>
internal sealed partial class MathMlPrinter
{
    private string Call(CallNode call) =>
        (call.Name, call.Arguments.Count) switch
        {
            ("SQRT", 1) => $"<msqrt>{Bare(call.Arguments[0])}</msqrt>",
            ("ABS", 1) => Fenced(Bare(call.Arguments[0]), "|", "|"),
            ("INT", 1) => Fenced(Bare(call.Arguments[0]), "⌊", "⌋"),
            ("PI", 0) => "<mi>π</mi>",
            ("POWER", 2) => Power(Base(call.Arguments[0]), call.Arguments[1]),
            ("QUOTIENT", 2) => Fenced($"<mfrac>{Bare(call.Arguments[0])}{Bare(call.Arguments[1])}</mfrac>", "⌊", "⌋"),
            ("ROUND", 1 or 2) => Rounded(call, "rounded to"),
            ("ROUNDUP", 1 or 2) => Rounded(call, "rounded up to"),
            ("ROUNDDOWN" or "TRUNC", 1 or 2) => Rounded(call, "rounded down to"),
            ("MROUND", 2) => ToMultiple(call, "rounded to a multiple of"),
            ("CEILING" or "CEILING.MATH", 2) => ToMultiple(call, "rounded up to a multiple of"),
            ("FLOOR" or "FLOOR.MATH", 2) => ToMultiple(call, "rounded down to a multiple of"),
            ("IF", 2 or 3) => Cases(call),
            ("SUM", > 1) when call.Arguments.All(IsSingle) => Joined(call, "+"),
            ("PRODUCT", > 1) when call.Arguments.All(IsSingle) => Joined(call, "×"),
            _ => Named(call),
        };

    /// <summary><c>ROUND(x, 1)</c>: x (rounded to 1 decimal place).</summary>
    private string Rounded(CallNode call, string words)
    {
        if (call.Arguments.Count == 1 || call.Arguments[1] is MissingNode)
            return Noted(call, $"{words} a whole number");
        var places =
            call.Arguments[1] is PrefixNode { Operator: PrefixOperator.Minus, Operand: NumberNode below } ? -below.Value
            : call.Arguments[1] is NumberNode above ? above.Value
            : double.NaN;
        return places switch
        {
            0 => Noted(call, $"{words} a whole number"),
            1 => Noted(call, $"{words} 1 decimal place"),
            > 1 and < 16 => Noted(call, $"{words} {(int)places} decimal places"),
            < 0 and > -16 => Noted(call, $"{words} a multiple of 1{new string('0', (int)-places)}"),
            _ => Named(call),
        };
    }

    private string Noted(CallNode call, string note) =>
        $"<mrow>{Loose(call.Arguments[0])}<mspace width=\"0.5em\"></mspace><mtext>({note})</mtext></mrow>";

    private string ToMultiple(CallNode call, string words) =>
        $"<mrow>{Loose(call.Arguments[0])}<mspace width=\"0.5em\"></mspace><mtext>({words}\u00a0</mtext>{Bare(call.Arguments[1])}<mtext>)</mtext></mrow>";

    // A note says what is rounded only if that stands apart.
    private string Loose(FormulaNode node) =>
        WithoutGroup(node) is var inner && inner is BinaryNode { Operator: not (BinaryOperator.Divide or BinaryOperator.Power) }
            ? Fenced(Print(inner))
            : Print(inner);

    private string Cases(CallNode call)
    {
        var condition = Bare(call.Arguments[0]);
        var otherwise = call.Arguments.Count > 2 ? Bare(call.Arguments[2]) : Words("false");
        return "<mrow><mo form=\"prefix\" stretchy=\"true\">{</mo><mtable>"
            + $"<mtr><mtd>{Bare(call.Arguments[1])}</mtd><mtd><mrow><mtext>if\u00a0</mtext>{condition}</mrow></mtd></mtr>"
            + $"<mtr><mtd>{otherwise}</mtd><mtd><mtext>otherwise</mtext></mtd></mtr>"
            + "</mtable></mrow>";
    }

    private static bool IsSingle(FormulaNode node) =>
        node
            is not (
                ReferenceNode { Last: not null }
                or MissingNode
                or ArrayNode
                or SpillNode
                or BinaryNode { Operator: BinaryOperator.Range or BinaryOperator.Union or BinaryOperator.Intersection }
            );

    private string Joined(CallNode call, string sign)
    {
        var terms = call.Arguments.Select(argument => argument is BinaryNode && sign == "×" ? Fenced(Print(argument)) : Side(argument));
        return Fenced(string.Join($"<mo>{sign}</mo>", terms));
    }

    private string Named(CallNode call)
    {
        var arguments = string.Join("<mo separator=\"true\">,</mo>", call.Arguments.Select(Bare));
        return $"<mrow><mi>{Escape(call.Name.ToLowerInvariant())}</mi>{Fenced(arguments)}</mrow>";
    }
}
