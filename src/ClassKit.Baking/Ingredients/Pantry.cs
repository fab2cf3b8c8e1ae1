using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;

namespace ClassKit.Baking.Ingredients;

/// <summary>The ingredients that a lesson or a kitchen can name: those that ship, and its own.</summary>
public sealed class Pantry
{
    private static readonly Lazy<Pantry> Built = new(() => new(ShippedIngredients.Read()));

    private readonly Dictionary<string, Ingredient> _byId;
    private readonly ILookup<string, Ingredient> _byName;
    private readonly ILookup<string, Ingredient> _byOtherName;

    /// <summary>The starters that were named, so that one is the same wherever it is named.</summary>
    private readonly ConcurrentDictionary<string, Ingredient> _starters = new(StringComparer.Ordinal);

    private Pantry(IReadOnlyList<Ingredient> all)
    {
        All = all;
        _byId = all.ToDictionary(ingredient => ingredient.Id, StringComparer.Ordinal);
        _byName = all.ToLookup(ingredient => ingredient.Name, StringComparer.OrdinalIgnoreCase);
        _byOtherName = all.SelectMany(ingredient =>
                ingredient.OtherNames.Append(ingredient.PriceName).OfType<string>().Select(name => (Name: name, Ingredient: ingredient))
            )
            .ToLookup(named => named.Name, named => named.Ingredient, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>What ships. Read when it is first asked for.</summary>
    public static Pantry Shipped => Built.Value;

    /// <summary>All of them, the shipped ones first.</summary>
    public IReadOnlyList<Ingredient> All { get; }

    /// <summary>With more, each in the place of the one with its id if there is one.</summary>
    public Pantry With(IReadOnlyList<Ingredient> own)
    {
        ArgumentNullException.ThrowIfNull(own);
        if (own.Count == 0)
            return this;
        var byId = own.ToDictionary(ingredient => ingredient.Id, StringComparer.Ordinal);
        return new([
            .. All.Select(ingredient => byId.Remove(ingredient.Id, out var replacing) ? replacing : ingredient),
            .. own.Where(ingredient => byId.ContainsKey(ingredient.Id)),
        ]);
    }

    /// <summary>Looks an ingredient up by its id, letter for letter.</summary>
    /// <param name="id">As lessons write it.</param>
    /// <param name="ingredient">The ingredient; null if there is none.</param>
    public bool TryFind(string id, [MaybeNullWhen(false)] out Ingredient ingredient) => _byId.TryGetValue(id, out ingredient);

    /// <summary>
    /// What a text can mean: an id, else a name, else another name; several where it is the name of several, none where it is nobody's.
    /// </summary>
    public IReadOnlyList<Ingredient> Called(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (_byId.TryGetValue(text, out var byId))
            return [byId];
        if (Starter.Find(text, this) is { } starter)
            return [_starters.GetOrAdd(starter.Id, starter)];
        return _byName.Contains(text) ? [.. _byName[text]] : [.. _byOtherName[text].Distinct()];
    }
}
