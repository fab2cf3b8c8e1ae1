using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Obstacles;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Functions of the clock and of chance: recognised, and never given a value, since nothing could be compared with it.</summary>
internal static class Clock
{
    public static readonly FunctionRow[] Rows =
    [
        Of("NOW", 0, 0, ""),
        Of("TODAY", 0, 0, ""),
        Of("RAND", 0, 0, ""),
        Of("RANDBETWEEN", 2, 2, "VV"),
        Of("RANDARRAY", 0, 5, "VVVVV"),
    ];

    private static FunctionRow Of(string name, int least, int most, string parameters) =>
        new(
            name,
            least,
            most,
            parameters,
            call => call.Run.Halt(EvaluationStatus.Volatile, new Obstacle.ChangesEachTime(name)),
            FunctionTraits.Volatile | FunctionTraits.Lazy
        );
}
