using System.Text;

namespace ClassKit.UseCases.Intake;

/// <summary>What lies in a folder under a name that is bytes to the system and may be no text.</summary>
/// <param name="Path">The whole path, as the system has it.</param>
/// <param name="Name">The last step of it, as it is shown.</param>
/// <param name="IsText">True if the name is text, so that everybody can open it by that.</param>
/// <param name="Kind">What it is.</param>
internal sealed record ByteNamed(byte[] Path, string Name, bool IsText, ByteNamed.Kinds Kind)
{
    /// <summary>What systems wrote names in before UTF-8, and archives of theirs still do.</summary>
    private static readonly Encoding Old = CodePagesEncodingProvider.Instance.GetEncoding(1252) ?? Encoding.Latin1;

    internal enum Kinds
    {
        File,
        Folder,
        Link,
        Other,
    }

    public static ByteNamed Of(byte[] folder, ReadOnlySpan<byte> name, Kinds kind)
    {
        var isText = System.Text.Unicode.Utf8.IsValid(name);
        return new([.. folder, (byte)'/', .. name], (isText ? Encoding.UTF8 : Old).GetString(name), isText, kind);
    }
}
