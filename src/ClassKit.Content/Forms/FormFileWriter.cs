using System.Text;
using System.Text.Json;

namespace ClassKit.Content.Forms;

/// <summary>
/// Writes what was filled in as the page of a form saves it: what is typed elsewhere is read back by <see cref="FormFileReader"/> like
/// anything else.
/// </summary>
public static class FormFileWriter
{
    private static readonly JsonSerializerOptions Style = new() { WriteIndented = true };

    /// <summary>The bytes of the file; the same form and fields in the same order give the same.</summary>
    /// <param name="file">What was filled in.</param>
    /// <param name="form">What the form is called.</param>
    public static byte[] Of(FormFile file, string form)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(form);
        var content = JsonSerializer.Serialize(
            new
            {
                identity = file.Identity,
                form,
                fields = file.Fields,
            }
        );
        return Encoding.UTF8.GetBytes(
            JsonSerializer.Serialize(
                new
                {
                    kind = FormFileReader.Kind,
                    version = FormFileReader.Version,
                    digest = FormFileReader.DigestOf(content),
                    content,
                },
                Style
            ) + "\n"
        );
    }
}
