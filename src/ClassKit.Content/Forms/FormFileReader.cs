using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Forms;

/// <summary>Reads the file that a form's page saves: what was filled in as a text, and that text's digest.</summary>
/// <remarks>The digest finds what happens to files by accident; whoever forges one on purpose can work it out as the page does.</remarks>
public static class FormFileReader
{
    /// <summary>What every such file calls itself.</summary>
    internal const string Kind = "classkit-form";

    /// <summary>Of such files.</summary>
    internal const int Version = 1;

    private const int MostFields = 20_000;
    private const int MostLetters = 4_000;
    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = 4 };

    /// <summary>What was filled in, or why the file cannot be used.</summary>
    /// <param name="source">The file.</param>
    /// <param name="isOf">Whether a file is of the form that it must be of.</param>
    /// <param name="form">What that form is called.</param>
    public static Reading<FormFile> Read(Source source, Func<FormFile, bool> isOf, string form)
    {
        ArgumentNullException.ThrowIfNull(source);
        var problems = new ProblemList(source.Shown);
        return SourceFile.Read(source, problems) is { } text ? Read(text, isOf, form, problems) : problems.Fail<FormFile>();
    }

    /// <summary>The same of bytes, which may be anything.</summary>
    /// <param name="file">How messages name the file.</param>
    /// <param name="bytes">What is in it.</param>
    /// <param name="isOf">Whether a file is of the form that it must be of.</param>
    /// <param name="form">What that form is called.</param>
    public static Reading<FormFile> Read(string file, byte[] bytes, Func<FormFile, bool> isOf, string form) =>
        Read(Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF'), isOf, form, new(file));

    /// <summary>The digest that stands beside what was filled in, as the page works it out.</summary>
    internal static string DigestOf(string content) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content)));

    private static Reading<FormFile> Read(string text, Func<FormFile, bool> isOf, string form, ProblemList problems)
    {
        try
        {
            using var outer = JsonDocument.Parse(text, Strict);
            var (kind, version, digest, content) = (
                Text(outer, "kind"),
                Text(outer, "version"),
                Text(outer, "digest"),
                Text(outer, "content")
            );
            if (kind != Kind || content is null)
                problems.Add(null, "This is no file that the page of a form saved", $"Bring the file back that the page of {form} saved.");
            else if (version != Version.ToString(System.Globalization.CultureInfo.InvariantCulture))
                problems.Add(
                    null,
                    $"It is of version {version} of such files, and version {Version} is known here",
                    "Use the program that made the page."
                );
            else if (digest != DigestOf(content))
                problems.Add(
                    null,
                    "It is not as the page saved it: its digest does not fit what stands in it",
                    "Save it from the page once more, and do not open it in between. The digest finds accidents, not forgers."
                );
            else
                return Content(content, isOf, form, problems);
        }
        // Half of a pair of surrogates is no text, and JSON can hold one.
        catch (Exception failure) when (failure is JsonException or InvalidOperationException)
        {
            problems.Add(null, "It is cut off, or no file of a form", "Save it from the page once more.");
        }
        return problems.Fail<FormFile>();
    }

    private static Reading<FormFile> Content(string content, Func<FormFile, bool> isOf, string form, ProblemList problems)
    {
        using var inner = JsonDocument.Parse(content, Strict);
        if (inner.RootElement.ValueKind != JsonValueKind.Object)
            throw new JsonException();
        var fields = new Dictionary<string, string>(StringComparer.Ordinal);
        if (inner.RootElement.TryGetProperty("fields", out var all) && all.ValueKind == JsonValueKind.Object)
        {
            foreach (
                var field in all.EnumerateObject()
                    .Take(MostFields)
                    .Where(field => field.Value.ValueKind == JsonValueKind.String && field.Value.GetString()!.Length <= MostLetters)
            )
                fields[field.Name] = field.Value.GetString()!;
        }
        var file = new FormFile(Text(inner, "identity") ?? "", fields) { Called = Text(inner, "form") };
        if (!isOf(file))
            problems.Add(
                null,
                $"It is of another form: {file.Called ?? "one without a name"}",
                $"Here {form} is read: the class and the sheet that the page was made for. If the sheet was changed since, or most of the class list, put them back as they were to read this file."
            );
        return problems.Finish(() => file);
    }

    private static string? Text(JsonDocument document, string name) =>
        document.RootElement.ValueKind == JsonValueKind.Object && document.RootElement.TryGetProperty(name, out var value)
            ? value.ValueKind switch
            {
                JsonValueKind.String => value.GetString(),
                JsonValueKind.Number => value.GetRawText(),
                _ => null,
            }
            : null;
}
