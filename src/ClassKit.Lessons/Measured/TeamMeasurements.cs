using System.Globalization;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Measured;

/// <summary>What one team measured.</summary>
/// <param name="Team">Its name or number, as it was written.</param>
/// <param name="Values">What was measured; the loss worked out where both masses of a piece are there.</param>
/// <param name="Unread">Fields in which no number above 0 stands, each with what does.</param>
public sealed record TeamMeasurements(string Team, IReadOnlyList<Measurement> Values, IReadOnlyList<(string Field, string Found)> Unread)
{
    /// <summary>No bread of a teaching kitchen weighs or measures more, in any unit.</summary>
    private const double Most = 100_000;

    /// <summary>False where nothing is there but guesses, which nobody measures.</summary>
    public bool HasMeasured => Values.Any(value => value.Measure != Measure.GuessedHeight);

    /// <summary>Reads what stands in the fields of a form; unknown fields are passed over.</summary>
    /// <param name="form">The form.</param>
    /// <param name="fields">What was filled in.</param>
    /// <param name="source">What a team is called that gave no name.</param>
    public static TeamMeasurements Of(ObservationForm form, IReadOnlyDictionary<string, string> fields, string source)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(fields);
        List<Measurement> values = [];
        List<(string, string)> unread = [];
        foreach (var bread in form.Breads)
        {
            foreach (var measure in form.Typed(bread))
            {
                for (var piece = 1; piece <= form.PiecesOf(bread, measure); piece++)
                {
                    var field = ObservationForm.Field(bread, measure, piece);
                    var text = fields.GetValueOrDefault(field, "").Trim();
                    if (text.Length == 0)
                        continue;
                    if (Number(text) is { } value)
                        values.Add(new(bread.Formula.Id, measure, piece, value));
                    else
                        unread.Add((field, text));
                }
            }
        }
        var team = fields.GetValueOrDefault(ObservationForm.Team, "").Trim();
        return new(team.Length > 0 ? team : source, [.. values, .. Losses(values)], unread);
    }

    private static double? Number(string text) =>
        double.TryParse(
            text.Replace(',', '.'),
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out var value
        ) && value is > 0 and < Most
            ? value
            : null;

    private static IEnumerable<Measurement> Losses(IReadOnlyList<Measurement> values) =>
        from before in values.Where(value => value.Measure == Measure.MassBefore)
        join after in values.Where(value => value.Measure == Measure.MassAfter)
            on (before.Bread, before.Piece) equals (after.Bread, after.Piece)
        select new Measurement(before.Bread, Measure.BakeLoss, before.Piece, PerHundred.Of((before.Value - after.Value) / before.Value));
}
