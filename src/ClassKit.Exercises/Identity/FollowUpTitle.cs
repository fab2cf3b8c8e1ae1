namespace ClassKit.Exercises.Identity;

/// <summary>What follow-up practice is called.</summary>
public static class FollowUpTitle
{
    /// <summary>The title of what follows up a lesson.</summary>
    public static string Of(string lessonTitle) => $"Follow-up to {lessonTitle}";
}
