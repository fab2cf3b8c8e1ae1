using ClassKit.UseCases;

namespace ClassKit.EndToEnd.Tests.Tools;

/// <summary>The checkout that the tests run in.</summary>
internal static class Checkout
{
    public static DemoMaterial Demo { get; } = DemoMaterial.Find(AppContext.BaseDirectory) ?? throw new InvalidOperationException("The tests run inside a checkout.");
}
