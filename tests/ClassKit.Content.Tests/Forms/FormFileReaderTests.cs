using System.Globalization;
using System.Text.Json;
using ClassKit.Content.Forms;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Tests.Forms;

/// <summary>The file that a form's page saves. Digests are those of sha256sum (GNU coreutils), not of our own.</summary>
public sealed class FormFileReaderTests : IDisposable
{
    private const string Content =
        """{"identity":"0123456789abcdef","form":"Bench – Class","fields":{"team.1.0":"Secure","marker":"Inés ½"}}""";

    private const string Digest = "1a3a5d87b636468a08c0a48f3d7d5d2259dd1cd6fa7b9f5a8698168fae9083e3";

    private readonly ContentFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void What_was_filled_in_is_read()
    {
        var reading = Read(File(Content, Digest));

        Assert.Empty(reading.Problems);
        Assert.Equal([("team.1.0", "Secure"), ("marker", "Inés ½")], reading.Model!.Fields.Select(field => (field.Key, field.Value)));
    }

    [Fact]
    public void One_changed_letter_another_form_and_another_version_are_refused()
    {
        Assert.Contains(
            "its digest does not fit",
            Refusal(File(Content.Replace("Secure", "Secura", StringComparison.Ordinal), Digest)),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "It is of another form: Bench – Class",
            Refusal(File(Content, Digest), identity: "fedcba9876543210"),
            StringComparison.Ordinal
        );
        Assert.Contains("version 2", Refusal(File(Content, Digest, version: 2)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{\"kind\":\"classkit-form\",\"version\":1,\"dig")]
    [InlineData("{\"kind\":\"other\",\"version\":1,\"digest\":\"\",\"content\":\"{}\"}")]
    [InlineData(
        "{\"kind\":\"classkit-form\",\"version\":1,\"digest\":\"e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855\",\"content\":\"\"}"
    )]
    [InlineData(
        "{\"kind\":\"classkit-form\",\"version\":1,\"digest\":\"4f53cda18c2baa0c0354bb5f9a3ecbe5ed12ab4d8e11ba873c2f11161202b945\",\"content\":\"[]\"}"
    )]
    [InlineData("{\"kind\":\"\\ud800\",\"version\":1,\"digest\":\"\",\"content\":\"{}\"}")]
    [InlineData("{\"kind\":\"classkit-form\",\"version\":1,\"digest\":\"x\",\"content\":\"\\ud800\"}")]
    [InlineData("{\"\\ud800\":1}")]
    [InlineData("student,Weighing\namara,Secure\n")]
    public void Whatever_else_comes_is_refused_in_words(string text) => Assert.NotEmpty(Refusal(text));

    /// <summary>Half of a pair of surrogates within what was filled in, under a digest that fits; digests by sha256 of Python's hashlib.</summary>
    [Theory]
    [InlineData("{\"identity\":\"0123456789abcdef\",\"fields\":{\"team.1.0\":\"\\ud800\"}}")]
    [InlineData("{\"identity\":\"0123456789abcdef\",\"fields\":{\"\\ud800\":\"Secure\"}}")]
    public void What_is_no_text_in_a_field_is_refused(string content) =>
        Assert.NotEmpty(
            Refusal(
                File(
                    content,
                    content.Contains("Secure", StringComparison.Ordinal)
                        ? "d66977c83420244ea22790a5fb84f52e1372997ba923eedb89704bda6062b124"
                        : "022e75dd1d75cff6640b1fe94c68948b2da1252f6d5505067a6a8369e09ba63c"
                )
            )
        );

    [Fact]
    public void Depth_without_end_is_refused() => Assert.NotEmpty(Refusal(new string('[', 100_000)));

    private static string File(string content, string digest, int version = 1) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{{\"kind\":\"classkit-form\",\"version\":{version},\"digest\":\"{digest}\",\"content\":{JsonSerializer.Serialize(content)}}}"
        );

    private Diagnostics.Reading<FormFile> Read(string text, string identity = "0123456789abcdef") =>
        FormFileReader.Read(Library.OfPaths().At(_folder.Write("form.json", text)), saved => saved.Identity == identity, "the form");

    private string Refusal(string text, string identity = "0123456789abcdef")
    {
        var reading = Read(text, identity);
        Assert.Null(reading.Model);
        return string.Join('\n', reading.Problems);
    }
}
