using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using ClassKit.Pages.Layout;

namespace ClassKit.Pages.Forms;

/// <summary>
/// What a form that is filled in without a network consists of beside its questions: a script, a look, and what the script has to know.
/// </summary>
internal static class OfflineForm
{
    private static readonly JsonSerializerOptions Style = new(JsonSerializerDefaults.Web)
    {
        // Less-than signs and ampersands stay escaped, so that no text can end the element.
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
    };

    /// <summary>The script, the same on all such pages.</summary>
    public static InlineScript Script { get; } = new(Resource.Text("offline-form.js"));

    /// <summary>The look of what is touched.</summary>
    public static string Css { get; } = Resource.Text("offline-form.css");

    /// <summary>The element that tells the script which form it is; browsers do not run it.</summary>
    /// <param name="identity">Which form.</param>
    /// <param name="form">What it is called.</param>
    /// <param name="file">What its file is called, without what follows.</param>
    public static string Element(string identity, string form, string file) =>
        $"<script type=\"application/json\" id=\"form-data\">{JsonSerializer.Serialize(new { Identity = identity, Form = form, File = file }, Style)}</script>";
}
