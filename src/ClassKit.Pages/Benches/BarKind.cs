namespace ClassKit.Pages.Benches;

/// <summary>How a bar of the timeline is filled; told apart without colour.</summary>
internal enum BarKind
{
    /// <summary>Somebody's hands are in it: dark.</summary>
    HandsOn,

    /// <summary>It rests, rises or cools by itself: white.</summary>
    Alone,

    /// <summary>It is in the oven: hatched.</summary>
    Oven,

    /// <summary>An oven with nothing in it, on its way to its heat: a broken frame.</summary>
    Empty,

    /// <summary>The instructor shows something: a frame with dots.</summary>
    Shown,
}
