using System.Runtime.CompilerServices;
using ClassKit.CellFormulas.Budget;

namespace ClassKit.CellFormulas.Values;

/// <summary>What values cost those who take and make them.</summary>
internal static class Charges
{
    private const int CharactersPerTick = 8;

    /// <summary>Counts a value that is handed out: whoever gets it may read all of it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void TakeFor(this Meter meter, CellValue value) =>
        meter.Take(value.IsText ? 2 + value.Text.Length / CharactersPerTick : 1);

    /// <summary>Counts a long text that is made, so that no formula fills the memory with them.</summary>
    public static void TakeForMade(this Meter meter, CellValue made)
    {
        const int Short = 256;
        if (made.IsText && made.Text.Length > Short)
            meter.Spend(made.Text.Length);
    }
}
