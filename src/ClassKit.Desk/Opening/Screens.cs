using ClassKit.Desk.Look;
using ClassKit.Desk.Progress;
using ClassKit.Desk.Serving;
using ClassKit.Desk.Sums;
using ClassKit.Desk.Week;

namespace ClassKit.Desk.Opening;

/// <summary>Every page of the desk.</summary>
internal static class Screens
{
    /// <summary>Tells the server where they are.</summary>
    public static void AddTo(DeskRoutes routes)
    {
        LookFiles.AddTo(routes);
        PassScreen.AddTo(routes);
        ProgressScreen.AddTo(routes);
        SumsScreen.AddTo(routes);
    }
}
