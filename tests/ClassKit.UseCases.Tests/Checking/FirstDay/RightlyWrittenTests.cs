namespace ClassKit.UseCases.Tests.Checking.FirstDay;

/// <summary>What instructors who had only the handbook wrote, and what is right: nothing is said of it.</summary>
public sealed class RightlyWrittenTests
{
    public static TheoryData<string, string, string, string> Written =>
        new()
        {
            { "a scale with fractions of an ounce", "class.md", "\nscale: 1 g\n", "\nscale: 1/8 oz\n" },
            { "a scale with decimals of an ounce", "class.md", "\nscale: 1 g\n", "\nscale: 0.05 oz\n" },
            { "a kitchen in °F", "class.md", "kitchen temperature: 22 °C", "kitchen temperature: 72 °F" },
            { "an oven in °F", TeachingFolder.Formula, "oven 210 °C", "oven 410 °F" },
            {
                "a part of the milk is heated",
                TeachingFolder.Formula,
                "**Mix** (1–2 min, no wait). Pour {whole_milk} of milk in",
                "**Mix** (3–4 min, kettle, boils a third of the whole milk, no wait). Pour {whole_milk} of milk in"
            },
            {
                "a roux",
                TeachingFolder.Formula,
                "3. **Mix** (1–2 min, no wait).",
                "3. **Roux** (3–4 min, burner, cooks 5 % of the all-purpose flour, cooks 20 % of the whole milk). Stir to a paste.\n4. **Mix** (1–2 min, no wait)."
            },
            {
                "a wait between two bakes",
                TeachingFolder.Formula,
                "5. **Bake** (14–17 min, oven 210 °C).",
                "5. **Par-bake** (9–10 min, oven 200 °C, wait 10–15 min). Until set.\n6. **Bake** (5–7 min, oven 220 °C)."
            },
            {
                "a filling called by the end of its name",
                TeachingFolder.Formula,
                "## Method\n",
                "## Filling\n\n| Ingredient | Amount |\n|---|---|\n| House sprinkle | 1 g a piece |\n| Cardamom | 0.1 g a piece |\n| Dried apricots | 5 g a piece |\n\n## Method\n\n<!-- Fill with apricots. -->\n"
            },
            {
                "a caution by a name of its own",
                TeachingFolder.Formula,
                "- **Raw flour** (in place of: raw flour). No tasting of dough.",
                "- **Raw flour and raw milk** (in place of: raw flour). Nobody tastes dough."
            },
            {
                "a list with first and last names",
                "roster.csv",
                null!,
                "First name,Last name,E-mail\nAda,Ferrow,ada@example.org\nBo,Tamsin,bo@example.org\n"
            },
        };

    [Theory]
    [MemberData(nameof(Written))]
    public void It_passes_without_a_word(string name, string file, string? from, string to)
    {
        Assert.NotEmpty(name);
        var folder = new TeachingFolder();
        if (from is null)
            folder.Put(file, to);
        else
            folder.Change(file, from, to);

        var proof = folder.Check(provesExercises: false);

        Assert.Empty(
            proof.Problems.Concat(proof.Doubts).Concat(proof.Notes.Where(note => note.File != "prices.md")).Select(told => told.ToString())
        );
    }
}
