namespace ClassKit.CellFormulas.Syntax;

/// <summary>Finds the names that a formula takes from outside.</summary>
internal sealed class FreeNames : TreeRewriter
{
    private readonly List<string> _names = [];

    public static IReadOnlyList<string> In(FormulaNode root)
    {
        var finder = new FreeNames();
        finder.Rewrite(root);
        return finder._names;
    }

    protected override FormulaNode Replace(NameNode name)
    {
        if (!_names.Contains(name.Name, StringComparer.OrdinalIgnoreCase))
            _names.Add(name.Name);
        return name;
    }
}
