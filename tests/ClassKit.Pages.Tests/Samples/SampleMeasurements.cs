using System.Globalization;
using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Packs;

namespace ClassKit.Pages.Tests.Samples;

/// <summary>What six teams measured of every bread; one height is far from the rest, one team measured nothing but one piece.</summary>
internal static class SampleMeasurements
{
    public static MeasuredClass Of(ComputedPack pack)
    {
        var form = new ObservationForm(pack);
        return MeasuredClass.Of(pack, [.. Enumerable.Range(1, 6).Select(team => Team(form, team))]);
    }

    private static TeamMeasurements Team(ObservationForm form, int team)
    {
        var fields = new Dictionary<string, string> { [ObservationForm.Team] = $"Team <{team}>" };
        foreach (var bread in form.Breads)
        {
            foreach (var (at, measure) in form.Typed(bread).Index())
                for (var piece = 1; piece <= (team == 6 ? 1 : 3); piece++)
                    fields[ObservationForm.Field(bread, measure, piece)] = (
                        team == 3 && piece == 2 && at == 4 ? 9 : 46 + (at * 3) + team - piece
                    ).ToString(CultureInfo.InvariantCulture);
        }
        return TeamMeasurements.Of(form, fields, "file");
    }
}
