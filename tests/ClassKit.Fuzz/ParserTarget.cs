using System.Xml.Linq;
using ClassKit.CellFormulas.Formulas;

namespace ClassKit.Fuzz;

/// <summary>Parsing never throws; what parses prints, and its print parses to the same print.</summary>
internal sealed class ParserTarget : ITarget
{
    private long _parsed;
    private long _refused;

    public string Summary => $"{_parsed} parsed, {_refused} refused";

    public string Mutate(Mutator mutator) => mutator.Formula();

    public string? Run(string input)
    {
        var parse = CellFormula.Parse(input);
        if (parse.Error is { } error)
        {
            _refused++;
            _ = error.ToString();
            return error.Position < 0 || error.Position + error.Length > error.Text.Length + 1 ? "an error points outside the text" : null;
        }

        _parsed++;
        var formula = parse.Formula!;
        var printed = formula.ToString();
        if (CellFormula.Parse(printed).Formula is not { } again)
            return printed.Length > 8192 ? null : "what is printed does not parse";
        if (again.ToString() != printed)
            return "what is printed parses to another print";
        if (CellFormula.Parse(formula.ToFileText()).Formula is not { } fromFile)
            return formula.ToFileText().Length > 8191 ? null : "what is stored does not parse";
        if (fromFile.ToString() != printed)
            return "what is stored parses to another print";
        _ = formula.Names;
        XElement.Parse(MathMl.Write(formula, _ => null));
        return null;
    }
}
