using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.Tests.Ingredients;

public sealed class IngredientRowTests
{
    private static readonly Dictionary<string, string> Sound = new()
    {
        ["name"] = "Emmer flour",
        ["kind"] = "flour",
        ["water"] = "12,5",
        ["source"] = "its label",
        ["allergens"] = "emmer",
    };

    private static (Ingredient? Ingredient, IReadOnlyList<IngredientFault> Faults) Read(params (string Column, string Text)[] cells)
    {
        var row = new Dictionary<string, string>(Sound);
        foreach (var (column, text) in cells)
            row[column] = text;
        return IngredientRow.Read(column => row.GetValueOrDefault(column, ""));
    }

    [Fact]
    public void Name_kind_water_and_source_are_enough()
    {
        var emmer = Read().Ingredient!;

        Assert.Equal(("emmer_flour", 0.125, 87.5), (emmer.Id, emmer.WaterShare, emmer.Solids!.Value.Carbohydrate));
        Assert.Equal(["wheat", "spelt", "khorasan wheat"], emmer.Allergens.Select(allergen => allergen.Name));
    }

    /// <summary>Regulation (EU) 1169/2011, Annex I, 11: salt is sodium times 2.5. NIST SP 811: a US cup is 236.588 mL.</summary>
    [Fact]
    public void Salt_is_counted_as_labels_count_it_and_a_density_gives_the_cup()
    {
        var broth = Read(("salt", "2.5"), ("density", "1.1")).Ingredient!;

        Assert.Equal(0.01, broth.SodiumShare!.Value, 1e-12);
        Assert.Equal(260.247, broth.GramsPerCup!.Value, 0.001);
        Assert.Equal(260.247 / 48, broth.GramsPerTeaspoon!.Value, 0.001);
    }

    [Theory]
    [InlineData("name", "", IngredientFaultKind.Missing)]
    [InlineData("kind", "", IngredientFaultKind.Missing)]
    [InlineData("kind", "grain", IngredientFaultKind.UnknownKind)]
    [InlineData("water", "", IngredientFaultKind.Missing)]
    [InlineData("water", "wet", IngredientFaultKind.NoNumber)]
    [InlineData("water", "120", IngredientFaultKind.NoShare)]
    [InlineData("fat", "95", IngredientFaultKind.TooMuch, "water")]
    [InlineData("cup", "0", IngredientFaultKind.NoWeight)]
    [InlineData("allergens", "sunshine", IngredientFaultKind.UnknownAllergen)]
    [InlineData("id", "Emmer Flour", IngredientFaultKind.NoId)]
    [InlineData("source", "", IngredientFaultKind.Missing)]
    [InlineData("acid", "1-2", IngredientFaultKind.NoNumber)]
    [InlineData("acid", "3-2-1", IngredientFaultKind.NoShare)]
    [InlineData("gives", "steam", IngredientFaultKind.UnknownGas)]
    [InlineData("gas", "0.6", IngredientFaultKind.UnknownGas)]
    [InlineData("neutralises", "0", IngredientFaultKind.NoWeight)]
    public void What_is_wrong_is_found_in_its_column(string column, string text, IngredientFaultKind kind, string? where = null)
    {
        var (ingredient, faults) = Read((column, text));

        Assert.Null(ingredient);
        Assert.Equal((where ?? column, kind), (Assert.Single(faults).Column, faults[0].Kind));
    }

    [Fact]
    public void What_makes_gas_says_how_much_and_how_much_of_it_at_once()
    {
        var flour = Read(("gives", "Powder"), ("gas", "0.5-0.6-0.75"), ("gas at once", "60")).Ingredient!;

        Assert.Equal(RaisingKind.Powder, flour.Raises!.Kind);
        Assert.Equal(
            (0.005, 0.006, 0.0075),
            (flour.Raises.GasShare!.Value.Low, flour.Raises.GasShare.Value.Typical, flour.Raises.GasShare.Value.High)
        );
        Assert.Equal(0.6, flour.Raises.BenchShare!.Value.Typical);
        Assert.Null(Read().Ingredient!.Raises);
    }
}
