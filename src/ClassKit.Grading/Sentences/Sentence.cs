using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>A sentence of ours that knows which of its pieces are students, files and typed texts, so that it can be told without saying who it is about.</summary>
/// <remarks>
/// Written as an interpolated string: a <see cref="Student"/>, a <see cref="FileMention"/> or a <see cref="TypedMention"/> between braces stays what it is until words are made
/// of the sentence; everything else becomes words at once, in the invariant culture.
/// </remarks>
[InterpolatedStringHandler]
public sealed class Sentence : IEquatable<Sentence>
{
    private readonly List<object> _pieces;

    /// <summary>For the compiler, which fills it piece by piece.</summary>
    public Sentence(int literalLength, int formattedCount) => _pieces = new(literalLength > 0 ? 2 * formattedCount + 1 : formattedCount);

    private Sentence(IEnumerable<object> pieces) => _pieces = [.. pieces];

    /// <summary>A sentence of words alone.</summary>
    public static implicit operator Sentence(string words) => new([words]);

    /// <summary>For the compiler: words.</summary>
    public void AppendLiteral(string words) => _pieces.Add(words);

    /// <summary>For the compiler: a student.</summary>
    public void AppendFormatted(Student student) => _pieces.Add(student);

    /// <summary>For the compiler: a file.</summary>
    public void AppendFormatted(FileMention file) => _pieces.Add(file);

    /// <summary>For the compiler: something that a student typed.</summary>
    public void AppendFormatted(TypedMention typed) => _pieces.Add(typed);

    /// <summary>For the compiler: a sentence within the sentence.</summary>
    public void AppendFormatted(Sentence sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        _pieces.AddRange(sentence._pieces);
    }

    /// <summary>For the compiler: anything else, as words.</summary>
    public void AppendFormatted<T>(T value, string? format = null) =>
        _pieces.Add(value is IFormattable formattable ? formattable.ToString(format, CultureInfo.InvariantCulture) : value?.ToString() ?? "");

    /// <summary>Sentences one after another, with commas between.</summary>
    public static Sentence List(IEnumerable<Sentence> sentences) => Join(", ", sentences);

    /// <summary>Sentences one after another, with something between.</summary>
    public static Sentence Join(string between, IEnumerable<Sentence> sentences)
    {
        ArgumentNullException.ThrowIfNull(sentences);
        return new(sentences.SelectMany((sentence, index) => index == 0 ? sentence._pieces : [between, .. sentence._pieces]));
    }

    /// <summary>A student alone.</summary>
    public static Sentence Of(Student student) => new([student]);

    /// <summary>A file alone.</summary>
    public static Sentence Of(FileMention file) => new([file]);

    /// <summary>A typed text alone.</summary>
    public static Sentence Of(TypedMention typed) => new([typed]);

    /// <summary>The same sentence about others.</summary>
    /// <param name="student">Whom to name instead of a student.</param>
    /// <param name="file">What to call a file instead.</param>
    /// <param name="typed">What to write instead of a typed text.</param>
    internal Sentence Told(Func<Student, Student> student, Func<string, string> file, Func<string, string> typed) => new(_pieces.Select(piece => piece switch
    {
        Student who => student(who),
        FileMention(var path) => new FileMention(file(path)),
        TypedMention quoted => quoted with { Text = typed(quoted.Text) },
        _ => piece,
    }));

    /// <summary>The sentence in words.</summary>
    public override string ToString()
    {
        var words = new StringBuilder();
        foreach (var piece in _pieces)
        {
            words.Append(piece switch
            {
                Student student => student.Shown,
                FileMention(var path) => ShownName.Of(path),
                TypedMention quoted => quoted.Shown,
                _ => piece,
            });
        }
        return words.ToString();
    }

    /// <inheritdoc/>
    public bool Equals(Sentence? other) => other is not null && ToString() == other.ToString();

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Sentence);

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);
}
