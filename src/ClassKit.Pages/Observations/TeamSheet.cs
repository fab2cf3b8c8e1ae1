using ClassKit.Lessons.Packs;

namespace ClassKit.Pages.Observations;

/// <summary>What stands on the observation sheet of one team, or of every team where all bake the same.</summary>
/// <param name="Id">Part of the names on it: <c>team-2</c>, or <c>all</c>.</param>
/// <param name="Team">What the team is called; null on a sheet for every team.</param>
/// <param name="Breads">The team's breads and the instructor's, in the lesson's order.</param>
/// <param name="Members">How many have a line for a guess of their own; 1 or more.</param>
public sealed record TeamSheet(string Id, string? Team, IReadOnlyList<SheetBread> Breads, int Members)
{
    /// <summary>More lines leave too little room to write in them; a larger team guesses by twos.</summary>
    private const int MostLines = 4;

    /// <summary>One for all teams, or one for each where a series is shared out.</summary>
    public static IReadOnlyList<TeamSheet> All(LessonPack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        List<SheetBread> breads =
        [
            .. pack
                .Comparison.Zip(pack.Cards)
                .Index()
                .Select(each => SheetBread.Of(pack, each.Item.First, each.Item.Second, pack.AtSeaLevel.ElementAtOrDefault(each.Index))),
        ];
        var members = Math.Clamp((pack.Class.Students + pack.Class.Teams - 1) / pack.Class.Teams, 1, MostLines);
        return IsForEach(pack)
            ?
            [
                .. Enumerable
                    .Range(1, pack.Class.Teams)
                    .Select(team => new TeamSheet(
                        $"team-{team}",
                        pack.Class.TeamName(team),
                        [.. breads.Where(bread => bread.Card.IsInstructors || bread.Card.Teams.Contains(team))],
                        members
                    )),
            ]
            : [new("all", null, breads, members)];
    }

    /// <summary>True where teams bake different breads, so that each has a sheet of its own.</summary>
    public static bool IsForEach(ComputedPack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        return pack.Cards.Any(card => card.Bread.Place is not null);
    }
}
