namespace ClassKit.CellFormulas;

/// <summary>A parsed cell formula.</summary>
public sealed class CellFormula
{
    private CellFormula(string text) => Text = text;

    /// <summary>The formula as written, with its leading <c>=</c>.</summary>
    public string Text { get; }

    /// <summary>Parses a formula.</summary>
    public static CellFormula Parse(string text) => new(text);
}
