using System.Text;

namespace ClassKit.Wording.Quoting;

/// <summary>
/// Names that others have chosen, put into sentences: they keep their letters and lose their power over what stands around them.
/// </summary>
/// <remarks>
/// Source: Unicode Standard Annex #9, 2.4 and 6.3: FIRST STRONG ISOLATE … POP DIRECTIONAL ISOLATE around a text of unknown direction.
/// Isolates that a name closes without having opened them, or leaves open, would break out of ours and are left out or closed.
/// </remarks>
public static class ShownName
{
    private const char Isolate = '\u2068';
    private const char Pop = '\u2069';

    /// <summary>The name as it can stand in a sentence; one of left-to-right letters only stays as it is.</summary>
    public static string Of(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (!name.Any(character => char.IsControl(character) || HasDirection(character)))
            return name;
        var text = new StringBuilder().Append(Isolate);
        var open = 0;
        foreach (var character in name)
        {
            if (character is >= '\u2066' and <= '\u2068')
                open++;
            else if (character == Pop && --open < 0)
            {
                open = 0;
                continue;
            }

            text.Append(char.IsControl(character) ? Picture(character) : character);
        }

        return text.Append(Pop, open + 1).ToString();
    }

    /// <summary>
    /// Marks of direction, and letters that are written from right to left (Hebrew to Arabic Extended, and their presentation forms; half
    /// characters may be such letters too).
    /// </summary>
    private static bool HasDirection(char character) =>
        character
            is (>= '\u0590' and <= '\u08FF')
                or '\u200E'
                or '\u200F'
                or (>= '\u202A' and <= '\u202E')
                or (>= '\u2066' and <= '\u2069')
                or (>= '\uFB1D' and <= '\uFDFF')
                or (>= '\uFE70' and <= '\uFEFF')
                or (>= '\uD802' and <= '\uD803')
                or (>= '\uD83A' and <= '\uD83B');

    /// <summary>The picture that Unicode has of a control character.</summary>
    private static char Picture(char control) =>
        control switch
        {
            < ' ' => (char)('\u2400' + control),
            '\u007F' => '\u2421',
            _ => '\uFFFD',
        };
}
