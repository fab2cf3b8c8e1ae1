using ClassKit.Grading.NearMisses;

namespace ClassKit.Grading.Tests.NearMisses;

/// <summary>Held against looking through all of them.</summary>
public class ValueIndexTests
{
    [Fact]
    public void A_value_is_found_wherever_it_stands_in_the_order_of_places()
    {
        var random = new Random(20);
        List<double> numbers =
        [
            .. Enumerable.Range(0, 3000).Select(_ => Math.Round((random.NextDouble() * 8) - 4, 2, MidpointRounding.AwayFromZero)),
        ];
        var index = new ValueIndex(numbers.Count);
        for (var place = 0; place < numbers.Count; place++)
            index.Add(place, numbers[place]);

        foreach (var value in numbers.Distinct())
        {
            // A sign is not told apart, which whoever asks looks at again; 0 is never looked up.
            var expected = value == 0 ? [] : Enumerable.Range(0, numbers.Count).Where(place => Math.Abs(numbers[place]) == Math.Abs(value));
            Assert.Equal(expected, index.Of(value));
        }
        Assert.Empty(index.Of(17));
    }

    [Fact]
    public void What_differs_by_noise_is_found_too()
    {
        var index = new ValueIndex(2);
        index.Add(0, 0.1 + 0.2);
        index.Add(1, 0.3001);

        Assert.Equal([0], index.Of(0.3));
    }
}
