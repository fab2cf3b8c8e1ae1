using ClassKit.Baking.Costing;

namespace ClassKit.Lessons.Classes;

/// <summary>How a kitchen buys its ingredients.</summary>
/// <param name="Title">What the list is called.</param>
/// <param name="Currency">What its prices are in: <c>USD</c>.</param>
/// <param name="Packs">How each ingredient is sold, by its id. Not every ingredient need be there.</param>
public sealed record PriceList(string Title, string Currency, IReadOnlyDictionary<string, PurchaseUnit> Packs);
