using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.CellFormulas.Obstacles;

/// <summary>
/// Why a formula has no value, or what led to its error value. Whoever takes in all of them has taken in every obstacle there is.
/// </summary>
public abstract record Obstacle
{
    private Obstacle() { }

    /// <summary>The same with other words in place of those that the workbook's author chose.</summary>
    /// <param name="instead">From a name, a formula or part of one to what is said instead.</param>
    public virtual Obstacle Under(Func<string, string> instead) => this;

    /// <summary>The evaluation takes more work than one may.</summary>
    /// <param name="Most">How many steps one may take.</param>
    public sealed record TooManySteps(long Most) : Obstacle;

    /// <summary>All evaluations of the workbook together take more work than they may.</summary>
    public sealed record TooManyStepsTogether : Obstacle;

    /// <summary>An array is larger than one may be.</summary>
    /// <param name="Most">How many cells it may have.</param>
    public sealed record ArrayTooLarge(long Most) : Obstacle;

    /// <summary>An array has more rows or columns than a sheet.</summary>
    public sealed record ArrayBeyondSheet : Obstacle;

    /// <summary>A reference has more areas than one may have.</summary>
    /// <param name="Most">How many it may have.</param>
    public sealed record TooManyAreas(int Most) : Obstacle;

    /// <summary>Formulas lie too deep in one another.</summary>
    public sealed record NestedTooDeeply : Obstacle;

    /// <summary>Cells depend on each other in a circle.</summary>
    /// <param name="Cells">The first of them, in the order in which they are read.</param>
    /// <param name="Length">How many there are in all.</param>
    /// <param name="IsIterated">True if the workbook asks for circles to be gone round until they settle, which is not done here.</param>
    public sealed record Circle(IReadOnlyList<CellAddress> Cells, int Length, bool IsIterated) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) =>
            this with
            {
                Cells = [.. Cells.Select(cell => cell with { Sheet = instead(cell.Sheet) })],
            };

        /// <inheritdoc/>
        public bool Equals(Circle? other) =>
            other is not null && Length == other.Length && IsIterated == other.IsIterated && Cells.SequenceEqual(other.Cells);

        /// <inheritdoc/>
        public override int GetHashCode() => Cells.Aggregate(Length, HashCode.Combine);
    }

    /// <summary>A function that may be a macro of the workbook.</summary>
    /// <param name="Name">The function.</param>
    public sealed record MayBeMacro(string Name) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) => new MayBeMacro(instead(Name));
    }

    /// <summary>A function of some program, or of an addition to one, that is not evaluated here.</summary>
    /// <param name="Name">The function.</param>
    public sealed record UnknownFunction(string Name) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) => new UnknownFunction(instead(Name));
    }

    /// <summary>A function that no program has.</summary>
    /// <param name="Name">The function.</param>
    public sealed record NoFunction(string Name) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) => new NoFunction(instead(Name));
    }

    /// <summary>A function with too few or too many arguments.</summary>
    /// <param name="Function">The function, as it is registered.</param>
    /// <param name="Least">How many it takes at least.</param>
    /// <param name="Most">How many it takes at most; null for any number.</param>
    /// <param name="Given">How many it has.</param>
    public sealed record Arguments(string Function, int Least, int? Most, int Given) : Obstacle;

    /// <summary>A function that gives another value each time.</summary>
    /// <param name="Function">The function, as it is registered.</param>
    public sealed record ChangesEachTime(string Function) : Obstacle;

    /// <summary>A name that stands for nothing.</summary>
    /// <param name="Name">The name.</param>
    public sealed record NoName(string Name) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) => new NoName(instead(Name));
    }

    /// <summary>A name whose text is no formula.</summary>
    /// <param name="Name">The name.</param>
    public sealed record NameWithoutFormula(string Name) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) => new NameWithoutFormula(instead(Name));
    }

    /// <summary>A name that stands for itself.</summary>
    /// <param name="Name">The name.</param>
    public sealed record NameOfItself(string Name) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) => new NameOfItself(instead(Name));
    }

    /// <summary>A sheet that is not there.</summary>
    /// <param name="Sheet">Its name.</param>
    public sealed record NoSheet(string Sheet) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) => new NoSheet(instead(Sheet));
    }

    /// <summary>A reference to a cell where there are names only.</summary>
    public sealed record NoCells : Obstacle;

    /// <summary>A reference to a table where there are names only.</summary>
    /// <param name="Text">The reference.</param>
    public sealed record NoTables(string Text) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) => new NoTables(instead(Text));
    }

    /// <summary>A reference to the table that its formula stands in, outside of all tables.</summary>
    /// <param name="Text">The reference.</param>
    public sealed record InNoTable(string Text) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) => new InNoTable(instead(Text));
    }

    /// <summary>A table that is not there.</summary>
    /// <param name="Table">Its name.</param>
    public sealed record NoTable(string Table) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) => new NoTable(instead(Table));
    }

    /// <summary>A column that its table does not have.</summary>
    /// <param name="Table">The table.</param>
    /// <param name="Text">The reference.</param>
    public sealed record NoColumn(string Table, string Text) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) => new NoColumn(instead(Table), instead(Text));
    }

    /// <summary>A cell whose text begins like a formula and is none.</summary>
    /// <param name="Cell">The cell.</param>
    /// <param name="Error">Where it stops making sense.</param>
    public sealed record NoFormula(CellAddress Cell, SyntaxError Error) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) =>
            new NoFormula(Cell with { Sheet = instead(Cell.Sheet) }, Error.Under(instead));
    }

    /// <summary>A construct of the language that is recognised and not evaluated.</summary>
    /// <param name="What">Which.</param>
    /// <param name="Text">As written.</param>
    public sealed record NotEvaluated(Construct What, string Text) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) => this with { Text = instead(Text) };
    }

    /// <summary>A number format that is not evaluated.</summary>
    /// <param name="Code">The format.</param>
    public sealed record NumberFormat(string Code) : Obstacle
    {
        /// <inheritdoc/>
        public override Obstacle Under(Func<string, string> instead) => new NumberFormat(instead(Code));
    }

    /// <summary>INDIRECT with references by the numbers of row and column.</summary>
    public sealed record NumberedReference : Obstacle;

    /// <summary>A criterion that is a formula over the rows of a table.</summary>
    public sealed record FormulaCriterion : Obstacle;
}
