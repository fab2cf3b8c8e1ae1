using System.Globalization;
using ClassKit.Baking.Allergens;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Ingredients;

/// <summary>Makes an ingredient of a row of a file; see <see cref="IngredientColumn"/>.</summary>
public sealed class IngredientRow
{
    /// <summary>A row may miss 100 g by its own rounding, and by acids and alcohol that no column has.</summary>
    private const double Slack = 1;

    private const double TeaspoonsPerCup = 48;

    /// <summary>Labels count 2.5 g of salt for a gram of sodium: Regulation (EU) 1169/2011, Annex I, 11.</summary>
    private const double SaltPerSodium = 2.5;

    private static readonly Dictionary<string, IngredientRole> Kinds = new(StringComparer.OrdinalIgnoreCase)
    {
        ["flour"] = IngredientRole.Flour,
        ["liquid"] = IngredientRole.Liquid,
        ["egg"] = IngredientRole.Egg,
        ["fat"] = IngredientRole.Fat,
        ["sugar"] = IngredientRole.Sugar,
        ["salt"] = IngredientRole.Salt,
        ["yeast"] = IngredientRole.Yeast,
        ["leavening"] = IngredientRole.ChemicalLeavening,
        ["other"] = IngredientRole.Other,
    };

    private static readonly Dictionary<string, RaisingKind> Gases = new(StringComparer.OrdinalIgnoreCase)
    {
        ["soda"] = RaisingKind.Soda,
        ["potassium bicarbonate"] = RaisingKind.PotassiumBicarbonate,
        ["ammonia"] = RaisingKind.Ammonia,
        ["powder"] = RaisingKind.Powder,
    };

    private static readonly Dictionary<string, bool> Answers = new(StringComparer.OrdinalIgnoreCase) { ["yes"] = true, ["no"] = false };

    private readonly Func<string, string> _cell;
    private readonly List<IngredientFault> _faults = [];

    private IngredientRow(Func<string, string> cell) => _cell = cell;

    /// <summary>The kinds of ingredients, as a file names them.</summary>
    public static IReadOnlyCollection<string> KindNames => Kinds.Keys;

    /// <summary>What makes gas without yeast, as a file names it.</summary>
    public static IReadOnlyCollection<string> GasNames => Gases.Keys;

    /// <summary>The ingredient, or everything that is wrong with its row.</summary>
    /// <param name="cell">What stands in a column, without blanks around it; empty where the row or the file has none.</param>
    public static (Ingredient? Ingredient, IReadOnlyList<IngredientFault> Faults) Read(Func<string, string> cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        var row = new IngredientRow(cell);
        var ingredient = row.Build();
        return row._faults.Count == 0 ? (ingredient, []) : (null, row._faults);
    }

    /// <summary>What an id is made of where there is only a name.</summary>
    public static string IdOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return string.Join(
            '_',
            name.ToLowerInvariant()
                .Split(
                    [.. name.ToLowerInvariant().Where(letter => !char.IsAsciiLetterLower(letter) && !char.IsAsciiDigit(letter)).Distinct()],
                    StringSplitOptions.RemoveEmptyEntries
                )
        );
    }

    private Ingredient Build()
    {
        var name = Required("name");
        var id = _cell("id") is { Length: > 0 } written ? written : IdOf(name);
        if (name.Length > 0 && (id.Length == 0 || IdOf(id) != id))
            Fault("id", IngredientFaultKind.NoId);
        var role = Kinds.TryGetValue(Required("kind"), out var known) ? known : default;
        if (_cell("kind").Length > 0 && !Kinds.ContainsKey(_cell("kind")))
            Fault("kind", IngredientFaultKind.UnknownKind);
        Required("water");
        var water = Share("water") ?? 0;
        var (cup, teaspoon) = Household();
        var source = Required("source");
        return new(id, name, role, PerHundred.Share(water), cup, teaspoon, Allergens(), source)
        {
            Solids = Solids(water),
            SugarShare = PerHundred.Share(Share("sugar")),
            SodiumShare = PerHundred.Share(Share("sodium") ?? Share("salt") / SaltPerSodium),
            LacticAcidShare = Shares("acid"),
            Raises = Raises(),
            NeutralizingValue = Weight("neutralises"),
            Piece = Piece(),
            Doubts = [.. Items("label").SelectMany(IngredientDoubts.Of)],
            OtherNames = [.. Items("other names")],
            CupFilling = _cell("cup filled") is { Length: > 0 } filling ? filling : null,
            IsSaidCold = Cold(),
            PriceName = _cell("price name") is { Length: > 0 } price ? price : null,
        };
    }

    private bool? Cold()
    {
        if (_cell("cold") is not { Length: > 0 } written)
            return null;
        if (Answers.TryGetValue(written, out var cold))
            return cold;
        Fault("cold", IngredientFaultKind.NoAnswer);
        return null;
    }

    private FoodSolids Solids(double water)
    {
        var (protein, fat, ash) = (Share("protein") ?? 0, Share("fat") ?? 0, Share("ash") ?? 0);
        var solids = new FoodSolids(protein, fat, Share("carbohydrate") ?? Math.Max(0, 100 - water - protein - fat - ash), ash);
        if (water + protein + fat + Math.Max(solids.Carbohydrate, Share("sugar") ?? 0) + ash > 100 + Slack)
            Fault("water", IngredientFaultKind.TooMuch);
        return solids;
    }

    private (double? Cup, double? Teaspoon) Household() =>
        (
            Weight("cup") ?? Weight("density") * Volume.LitresPerCup * 1000,
            Weight("teaspoon") ?? (_cell("cup").Length == 0 ? Weight("density") * Volume.LitresPerCup * 1000 / TeaspoonsPerCup : null)
        );

    private HouseholdPiece? Piece() =>
        Weight("piece weight") is { } grams && Required("piece") is { Length: > 0 } one
            ? new(one, _cell("pieces") is { Length: > 0 } many ? many : one, grams)
            : null;

    private RaisingPower? Raises()
    {
        if (_cell("gives") is not { Length: > 0 } written)
        {
            // Gas of nothing that makes it would be left out without a word.
            foreach (var column in new[] { "gas", "gas at once" }.Where(column => _cell(column).Length > 0))
                Fault(column, IngredientFaultKind.UnknownGas);
            return null;
        }
        if (!Gases.TryGetValue(written, out var kind))
            Fault("gives", IngredientFaultKind.UnknownGas);
        return new(kind) { GasShare = Shares("gas"), BenchShare = Shares("gas at once") };
    }

    /// <summary>A share as one number or as lowest-usual-highest.</summary>
    private Band<double>? Shares(string column)
    {
        var numbers = _cell(column)
            .Split('-', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(Number)
            .ToList();
        if (numbers.Count == 0)
            return null;
        if (numbers.Exists(number => number is null) || numbers.Count is 2 or > 3)
            Fault(column, IngredientFaultKind.NoNumber);
        else if (numbers.Exists(number => number is < 0 or > 100) || !numbers.SequenceEqual(numbers.Order()))
            Fault(column, IngredientFaultKind.NoShare);
        return numbers is [{ } low, { } usual, { } high] ? ShareBand(low, usual, high)
            : numbers is [{ } only] ? ShareBand(only, only, only)
            : null;
    }

    private static Band<double> ShareBand(double low, double usual, double high) =>
        new(PerHundred.Share(low), PerHundred.Share(usual), PerHundred.Share(high));

    private List<Allergen> Allergens()
    {
        var found = new List<Allergen>();
        foreach (var word in Items("allergens"))
        {
            if (AllergenCatalog.All.FirstOrDefault(allergen => allergen.Name.Equals(word, StringComparison.OrdinalIgnoreCase)) is { } named)
                found.AddRange(found.Contains(named) ? [] : [named]);
            else if (AllergenWords.Find(word) is { } known)
                found.AddRange(known.Means.Except(found));
            else
                _faults.Add(new("allergens", word, IngredientFaultKind.UnknownAllergen));
        }
        return found;
    }

    private double? Share(string column) =>
        Value(column) is not { } value ? null
        : value is >= 0 and <= 100 ? value
        : Fault(column, IngredientFaultKind.NoShare);

    private double? Weight(string column) =>
        Value(column) is not { } value ? null
        : value > 0 ? value
        : Fault(column, IngredientFaultKind.NoWeight);

    private double? Value(string column) =>
        _cell(column) is not { Length: > 0 } text ? null : Number(text) ?? Fault(column, IngredientFaultKind.NoNumber);

    private static double? Number(string text) =>
        double.TryParse(
            text.Replace(',', '.'),
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out var number
        )
            ? number
            : null;

    private string Required(string column)
    {
        if (_cell(column).Length == 0)
            Fault(column, IngredientFaultKind.Missing);
        return _cell(column);
    }

    private string[] Items(string column) =>
        _cell(column).Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    private double? Fault(string column, IngredientFaultKind kind)
    {
        if (!_faults.Exists(fault => fault.Column == column))
            _faults.Add(new(column, _cell(column), kind));
        return null;
    }
}
