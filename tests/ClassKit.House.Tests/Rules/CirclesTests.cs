namespace ClassKit.House.Tests.Rules;

public class CirclesTests
{
    [Fact]
    public void Two_circles_are_found_and_what_only_leads_to_them_is_not() =>
        Assert.Equal(
            ["a b c", "d e"],
            Circles
                .In(Graph(("a", "b"), ("b", "c"), ("c", "a"), ("c", "d"), ("d", "e"), ("e", "d"), ("f", "a")))
                .Select(circle => string.Join(' ', circle))
        );

    [Fact]
    public void A_tree_has_none() => Assert.Empty(Circles.In(Graph(("a", "b"), ("a", "c"), ("b", "d"), ("c", "d"))));

    private static Dictionary<string, IReadOnlySet<string>> Graph(params (string From, string To)[] arrows) =>
        arrows
            .SelectMany(arrow => new[] { arrow.From, arrow.To })
            .Distinct()
            .ToDictionary(
                place => place,
                IReadOnlySet<string> (place) => arrows.Where(arrow => arrow.From == place).Select(arrow => arrow.To).ToHashSet()
            );
}
