using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ClassKit.Exercises.Randomness;
using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Packs;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Touring;

namespace ClassKit.DemoCohort;

/// <summary>What the teams of the invented class measured of the lesson's breads, as the offline page saves it.</summary>
/// <remarks>
/// Numbers lie within what is predicted, each team with a hand of its own; one team opened the oven door too early, and its popovers fell.
/// </remarks>
public static class TeamsMeasured
{
    private const int OpenedTheDoor = 4;

    private const string Popovers = "popovers";

    private static readonly JsonSerializerOptions Style = new()
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        WriteIndented = true,
    };

    private static readonly JsonSerializerOptions Tight = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A file a team, by its name.</summary>
    public static IEnumerable<(string Name, byte[] Content)> Of(PackRequest pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        if (!ComputedPack.Build(pack.Lesson, pack.Profile).TryGet(out var computed, out var why))
            throw new InvalidOperationException(why.Message);
        var form = new ObservationForm(computed);
        var breads = MeasuredClass.Of(computed, []).Breads;
        return Enumerable.Range(1, form.Teams).Select(team => ($"observations-team-{team}.json", Saved(form, Fields(form, breads, team))));
    }

    private static Dictionary<string, string> Fields(ObservationForm form, IReadOnlyList<MeasuredBread> breads, int team)
    {
        var fields = new Dictionary<string, string>
        {
            [ObservationForm.Team] = string.Create(CultureInfo.InvariantCulture, $"Team {team}"),
        };
        foreach (var bread in breads)
        {
            var formula = bread.Compared.Bread;
            foreach (
                var quantity in bread.Quantities.Where(quantity =>
                    quantity.Expected is not null && form.Typed(formula).Contains(quantity.Asked.Measure)
                )
            )
            {
                for (var piece = 1; piece <= form.PiecesOf(formula, quantity.Asked.Measure); piece++)
                {
                    var field = ObservationForm.Field(formula, quantity.Asked.Measure, piece);
                    // A team has a hand of its own, and its pieces differ by less than the teams do.
                    var along = 0.3 + (0.4 * Chance(formula.Formula.Id, fields)) + (0.2 * (Chance(field, fields) - 0.5));
                    var expected = quantity.Expected!.Value;
                    var value = expected.Low + ((expected.High - expected.Low) * along);
                    var fell = team == OpenedTheDoor && quantity == bread.Height && formula.Formula.Id == Popovers;
                    fields[field] = (fell ? value / 2 : value).ToString(
                        "F" + quantity.Unit.Decimals.ToString(CultureInfo.InvariantCulture),
                        CultureInfo.InvariantCulture
                    );
                }
            }
        }
        return fields;
    }

    private static double Chance(string what, Dictionary<string, string> fields) =>
        SeededDraws.For(DemoMaterial.Seed, what, fields[ObservationForm.Team]).Fraction();

    /// <summary>As the page's own script writes it.</summary>
    private static byte[] Saved(ObservationForm form, Dictionary<string, string> fields)
    {
        var content = JsonSerializer.Serialize(
            new
            {
                identity = form.Identity,
                form = $"{form.Lesson} – {form.Cohort}",
                fields,
            },
            Tight
        );
        var digest = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content)));
        return Encoding.UTF8.GetBytes(
            JsonSerializer.Serialize(
                new
                {
                    kind = "classkit-form",
                    version = 1,
                    digest,
                    content,
                },
                Style
            ) + "\n"
        );
    }
}
