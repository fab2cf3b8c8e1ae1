using System.Text;
using ClassKit.Exercises.Dealing;

namespace ClassKit.Workbooks.Dealing;

/// <summary>One part of a template's package, cut open at its blanks.</summary>
internal sealed class TemplatePart
{
    private readonly byte[] _whole;
    private readonly List<(string Before, Blank Blank)> _cuts = [];
    private string _rest = "";

    private TemplatePart(string name, byte[] whole) => (Name, _whole) = (name, whole);

    /// <summary>The part's name within the package.</summary>
    public string Name { get; }

    /// <summary>Cuts a part open wherever one of the blanks is found.</summary>
    public static TemplatePart Of(string name, byte[] content, IReadOnlyList<Blank> blanks)
    {
        var part = new TemplatePart(name, content);
        var text = Encoding.UTF8.GetString(content);
        var at = 0;
        List<Blank> findable = [.. blanks.Where(blank => blank.Found.Length > 0)];
        while (Next(text, at, findable) is var (place, blank))
        {
            part._cuts.Add((text[at..place], blank));
            at = place + blank.Found.Length;
        }
        part._rest = text[at..];
        return part;
    }

    /// <summary>The part for one student; as it is where it has no blank.</summary>
    public byte[] Fill(DealtStudent student)
    {
        if (_cuts.Count == 0)
            return _whole;
        var text = new StringBuilder();
        foreach (var (before, blank) in _cuts)
            text.Append(before).Append(blank.Fill(student));
        return Encoding.UTF8.GetBytes(text.Append(_rest).ToString());
    }

    private static (int Place, Blank Blank)? Next(string text, int from, List<Blank> blanks) =>
        blanks
            .Select(blank => (Place: text.IndexOf(blank.Found, from, StringComparison.Ordinal), Blank: blank))
            .Where(found => found.Place >= 0)
            .OrderBy(found => found.Place)
            .Select(found => ((int, Blank)?)found)
            .FirstOrDefault();
}
