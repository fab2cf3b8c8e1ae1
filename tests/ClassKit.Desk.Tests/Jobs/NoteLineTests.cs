using ClassKit.Desk.Jobs;
using ClassKit.Notes;

namespace ClassKit.Desk.Tests.Jobs;

/// <summary>Where a page of the desk has the same, a note names that page and no file.</summary>
public sealed class NoteLineTests
{
    public static TheoryData<Note> Notes =>
        [
            new Note.Dealt(24, 8, 2026, "dealt.json"),
            new Note.FollowingUp(3, 20, 2026),
            new Note.WrittenAnswers(1, "written-answers.html"),
            new Note.WrittenAnswers(5, "written-answers.html"),
            new Note.Undecided("Percentages", 2, "corrections.csv"),
            new Note.CameBackEmpty([new("ada", "Ada Berg")], "corrections.csv"),
            new Note.MarkedTwice("Bench day one", "marking-agreement.html"),
        ];

    [Theory]
    [MemberData(nameof(Notes))]
    public void No_note_at_the_desk_speaks_of_seeds_or_of_files_that_its_pages_show(Note note) =>
        Assert.DoesNotMatch(@"seed|\.json|\.csv|written-answers|marking-agreement", string.Join(' ', NoteLineWords.Of(note)));

    [Fact]
    public void Any_other_note_is_said_as_everywhere() =>
        Assert.Equal(ClassKit.Wording.Notes.NoteWords.Of(new Note.HeldBack(9)), NoteLineWords.Of(new Note.HeldBack(9)));
}
