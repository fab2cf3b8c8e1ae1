using ClassKit.Content.Rosters;

namespace ClassKit.Content.Tests.Rosters;

/// <summary>What schools call the column that says what somebody must keep away from; from memory.</summary>
public sealed class AllergyTitlesTests : IDisposable
{
    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("Allergies / notes")]
    [InlineData("Diet")]
    [InlineData("Special diet")]
    [InlineData("Diets/needs")]
    [InlineData("Dietary requirements")]
    [InlineData("Dieet")]
    [InlineData("Dieta")]
    [InlineData("Diät")]
    [InlineData("Régime")]
    [InlineData("Régime alimentaire")]
    [InlineData("Coeliac")]
    [InlineData("Celiac")]
    [InlineData("Celíaca")]
    [InlineData("Celiachia")]
    [InlineData("Zöliakie")]
    [InlineData("Lactose")]
    [InlineData("Laktose")]
    [InlineData("Gluten-free")]
    [InlineData("Nuts")]
    [InlineData("Food restrictions")]
    [InlineData("Foods to avoid")]
    [InlineData("Medical")]
    [InlineData("Medical notes")]
    [InlineData("Health")]
    [InlineData("Santé")]
    [InlineData("Unverträglichkeiten")]
    [InlineData("Intolleranze")]
    public void A_title_of_it_is_known_with_its_accents_in_one_piece_or_apart(string title)
    {
        foreach (var written in new[] { title, Apart(title) })
            Assert.Equal([written], Titles($"Id,Name,{written}\n1,Mei Chen,see file\n"));
    }

    /// <summary>Whatever a column is called, a cell that is an allergen by name says what it is.</summary>
    [Theory]
    [InlineData("Bemerkungen", "Peanut", true)]
    [InlineData("Notes", "vegetarian; no nuts, milk", true)]
    [InlineData("Notes", "sits at the front", false)]
    [InlineData("Form", "10 B", false)]
    [InlineData("House", "Oak", false)]
    public void A_column_under_another_title_is_known_by_its_cells(string title, string cell, bool isOne) =>
        Assert.Equal(isOne ? [title] : null, Titles($"Id,Name,{title}\n1,Mei Chen,\"{cell}\"\n2,Awa Diallo,\n"));

    /// <summary>What was taken for something is not asked what its cells may mean: a student may be called Rye.</summary>
    [Fact]
    public void A_name_is_no_allergen() => Assert.Null(Titles("Id,First name,Last name\n1,Rye,Barley\n"));

    /// <summary>As a Mac writes it: each accent a character of its own.</summary>
    private static string Apart(string title) =>
        title
            .Replace("ä", "a\u0308", StringComparison.Ordinal)
            .Replace("ö", "o\u0308", StringComparison.Ordinal)
            .Replace("é", "e\u0301", StringComparison.Ordinal)
            .Replace("í", "i\u0301", StringComparison.Ordinal);

    private IReadOnlyList<string>? Titles(string list) =>
        RosterReader.Read(_folder.Write("roster.csv", list)).Model!.Origin!.Allergies?.Titles;
}
