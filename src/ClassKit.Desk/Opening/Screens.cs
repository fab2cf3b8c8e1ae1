using ClassKit.Desk.Again;
using ClassKit.Desk.Decisions;
using ClassKit.Desk.HandOut;
using ClassKit.Desk.Kitchen;
using ClassKit.Desk.Look;
using ClassKit.Desk.Marks;
using ClassKit.Desk.People;
using ClassKit.Desk.Prep;
using ClassKit.Desk.Progress;
using ClassKit.Desk.Returns;
using ClassKit.Desk.Rounds;
using ClassKit.Desk.Serving;
using ClassKit.Desk.Sums;
using ClassKit.Desk.Texts;
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
        FolderScreen.AddTo(routes);
        ProgressScreen.AddTo(routes);
        PrepScreen.AddTo(routes);
        PrintScreen.AddTo(routes);
        MeasuredScreen.AddTo(routes);
        HandOutScreen.AddTo(routes);
        RehearsalScreen.AddTo(routes);
        RoundScreen.AddTo(routes);
        ReturnsScreen.AddTo(routes);
        PaperScreen.AddTo(routes);
        DecisionsScreen.AddTo(routes);
        AgainScreen.AddTo(routes);
        LearnScreen.AddTo(routes);
        MarksScreen.AddTo(routes);
        RuleScreen.AddTo(routes);
        WorkScreen.AddTo(routes);
        PeopleScreen.AddTo(routes);
        KitchenScreen.AddTo(routes);
        RosterScreen.AddTo(routes);
        ArrangedScreen.AddTo(routes);
        TextScreen.AddTo(routes);
        PreviewScreen.AddTo(routes);
        SumsScreen.AddTo(routes);
        routes.LeadBack();
    }
}
