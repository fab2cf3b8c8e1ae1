using System.Globalization;
using System.Xml.Linq;

namespace ClassKit.ItemBanks.Vocabulary;

/// <summary>
/// The vocabulary of 1EdTech QTI 3.0: elements are in lower case with hyphens, and every element that is not HTML begins with <c>qti-</c>.
/// </summary>
internal static class Qti
{
    public const string Float = "float";
    public const string Identifier = "identifier";
    public const string String = "string";

    /// <summary>The namespace of assessment items.</summary>
    public static readonly XNamespace Space = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";

    /// <summary>An element of the vocabulary; the prefix is added.</summary>
    public static XElement Of(string name, params object?[] content) => new(Space + ("qti-" + name), content);

    /// <summary>An element of HTML within an item.</summary>
    public static XElement Html(string name, params object?[] content) => new(Space + name, content);

    /// <summary>An attribute.</summary>
    public static XAttribute With(string name, string value) => new(name, value);

    /// <summary>A number where an expression is expected.</summary>
    public static XElement Number(double value) => Of("base-value", With("base-type", Float), Text(value));

    /// <summary>A variable where an expression is expected.</summary>
    public static XElement Variable(string identifier) => Of("variable", With("identifier", identifier));

    /// <summary>How large a number is, whatever its sign.</summary>
    public static XElement Size(XElement value) => Of("math-operator", With("name", "abs"), value);

    /// <summary>A number as XML Schema writes a double.</summary>
    public static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
