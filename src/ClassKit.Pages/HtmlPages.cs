using ClassKit.Exercises;
using ClassKit.Grading;
using ClassKit.Pages.Feedback;
using ClassKit.Pages.Rendering;

namespace ClassKit.Pages;

/// <summary>Every HTML page that ClassKit makes, as the text of one complete file.</summary>
/// <remarks>
/// A page needs nothing beside itself: no script, no picture file, no request. The same models give the same text.
/// All methods can be called from several threads at once.
/// </remarks>
public static class HtmlPages
{
    /// <summary>What one student reads about their returned workbook.</summary>
    public static string Feedback(StudentGrade grade, DealtClass dealt) =>
        PageRenderer.Render<FeedbackPage>((nameof(FeedbackPage.Grade), grade), (nameof(FeedbackPage.Dealt), dealt));
}
