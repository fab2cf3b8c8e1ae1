using ClassKit.Content.Diagnostics;
using ClassKit.Content.Forms;
using ClassKit.Desk.Folders;
using ClassKit.Lessons.Measured;
using ClassKit.Pages.Numbers;
using ClassKit.UseCases.Observing;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.Prep;

/// <summary>
/// What one team measured, typed at the desk: kept among what the teams brought back, as the page for the bench saves it, so that all of it
/// is read alike.
/// </summary>
/// <param name="Place">Where a class's measurements of the lesson lie.</param>
/// <param name="Form">What is measured.</param>
/// <param name="Number">Which team, from 1.</param>
public sealed record TypedTeam(Measured Place, ObservationForm Form, int Number)
{
    private string File => Path.Combine(Place.Returned, TypedFile.Of(Number));

    private string Called => $"{Form.Lesson} – {Form.Cohort}";

    /// <summary>The team's name.</summary>
    public string Name => Form.TeamNames[Number - 1];

    /// <summary>
    /// What was typed before, by the names of the form's fields; nothing where nothing was, or where it was for another lesson or class.
    /// </summary>
    public IReadOnlyDictionary<string, string> Fields() =>
        System.IO.File.Exists(File)
        && FormFileReader.Read(File, System.IO.File.ReadAllBytes(File), saved => Form.IsOf(saved.Identity, saved.Called), Called)
            is { Succeeded: true } read
            ? read.Model.Fields
            : new Dictionary<string, string>();

    /// <summary>Keeps what was typed, whole or not at all.</summary>
    /// <param name="typed">What stands in a field.</param>
    /// <returns>Why it was not kept; empty if it was.</returns>
    public IReadOnlyList<Diagnostic> Keep(Func<string, string> typed)
    {
        var asked = ObservedField.All(Form).ToDictionary(field => field.Name);
        var fields = asked
            .Keys.Select(field => KeyValuePair.Create(field, typed(field)))
            .Where(field => field.Value.Length > 0)
            .Prepend(KeyValuePair.Create(ObservationForm.Team, Name))
            .ToDictionary();
        var read = TeamMeasurements.Of(Form, fields, Name);
        if (read.Unread.Count > 0)
            return
            [
                .. read.Unread.Select(one => new Diagnostic(
                    Name,
                    null,
                    $"{asked[one.Field].Label}: `{one.Found}` is no measurement",
                    $"Type a number above 0 without a unit, such as 81 or 81.5, or nothing{(asked[one.Field].Unit is { Length: > 0 } unit ? $". This line is in {unit}" : "")}."
                )),
            ];
        if (!read.HasMeasured)
            return [new(Name, null, "Nothing was typed", "Type at least one measurement of the team.")];
        try
        {
            Directory.CreateDirectory(Place.Returned);
            WholeFile.Write(File, FormFileWriter.Of(new(Form.Identity, fields), Called));
            return [];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return
            [
                new(
                    File,
                    null,
                    $"It could not be written: {failure.Message}",
                    "Check that there is room, and that no other program has the file open."
                ),
            ];
        }
    }
}
