using ClassKit.Grading.NearMisses.Places;

namespace ClassKit.Grading.NearMisses.Families;

/// <summary>
/// What a formula can use, with what there is to say of each quantity before any formula: edits ask for it at every place of thousands of
/// trees.
/// </summary>
internal sealed class Sheet
{
    private readonly Dictionary<string, SheetQuantity> _byName = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<SheetQuantity, IReadOnlyList<SheetQuantity>> _others = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<SheetQuantity, IReadOnlyList<UnitStep>> _steps = new(ReferenceEqualityComparer.Instance);

    /// <param name="quantities">In the order in which they stand.</param>
    public Sheet(IReadOnlyList<SheetQuantity> quantities)
    {
        Quantities = quantities;
        foreach (var (row, own) in quantities.Index())
        {
            _byName.TryAdd(own.Id, own);
            _others[own] =
            [
                .. quantities
                    .Index()
                    .Where(other => other.Index != row)
                    .OrderBy(other => other.Item.Unit == own.Unit ? 0 : 1)
                    .ThenBy(other => Math.Abs(other.Index - row))
                    .Select(other => other.Item),
            ];
            _steps[own] = [.. UnitEdits.Steps(own, quantities)];
        }
    }

    /// <summary>All of them.</summary>
    public IReadOnlyList<SheetQuantity> Quantities { get; }

    /// <summary>The quantity of a name; null for none.</summary>
    public SheetQuantity? Find(string name) => _byName.GetValueOrDefault(name);

    /// <summary>The others: those in the same unit are the likelier, and then those that stand nearer.</summary>
    public IReadOnlyList<SheetQuantity> Others(SheetQuantity quantity) => _others[quantity];

    /// <summary>The steps to other units that somebody may take with it.</summary>
    public IReadOnlyList<UnitStep> Steps(SheetQuantity quantity) => _steps[quantity];
}
