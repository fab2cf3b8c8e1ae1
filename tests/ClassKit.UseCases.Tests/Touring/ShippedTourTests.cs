using ClassKit.UseCases.Running;
using ClassKit.UseCases.Touring;

namespace ClassKit.UseCases.Tests.Touring;

/// <summary>The tour can be taken on a machine that has the program and nothing else of ours.</summary>
public class ShippedTourTests
{
    [Fact]
    public void The_tour_of_what_ships_is_that_of_the_checkout_byte_for_byte()
    {
        var checkout = Taken(DemoMaterial.Find(AppContext.BaseDirectory)!);
        var shipped = Taken(DemoMaterial.Shipped);
        Assert.Equal(checkout.Keys.Order(StringComparer.Ordinal), shipped.Keys.Order(StringComparer.Ordinal));
        Assert.All(checkout, file => Assert.True(file.Value.AsSpan().SequenceEqual(shipped[file.Key]), file.Key));
    }

    [Fact]
    public void A_folder_without_a_checkout_above_has_none() => Assert.Null(DemoMaterial.Find(Path.GetTempPath()));

    private static Dictionary<string, byte[]> Taken(DemoMaterial demo) =>
        TakeTour
            .Write(TakeTour.Run(demo.Read().Model!, Run.Unwatched).Model!)
            .Files.ToDictionary(file => file.Path, file => file.Content.ToArray());
}
