using System.Text.Json;

namespace ClassKit.UseCases.Dealing;

/// <summary>
/// What the types of a document do not say: no gaps in lists, no name twice in an object, no endless text, no number beyond reason.
/// </summary>
/// <remarks>A document is read piece by piece, so that a class of ten thousand takes no more memory than one of ten.</remarks>
internal ref struct JsonLimits
{
    private const int MostLetters = 100_000;

    private const double GreatestNumber = 1e15;

    /// <summary>A text of <see cref="MostLetters"/> fits in, written with as many bytes as any letter can take.</summary>
    private const int MostPiece = 8 * MostLetters;

    private const int Piece = 64 * 1024;

    private readonly Stream _content;
    private readonly bool _typed;

    /// <summary>The names in every open object; null for a list.</summary>
    private readonly Stack<HashSet<string>?> _open = new();

    private byte[] _bytes = new byte[Piece];
    private int _filled;
    private bool _isWhole;
    private long _lines;

    private JsonLimits(Stream content, bool typed) => (_content, _typed) = (content, typed);

    /// <summary>Reads a document to its end.</summary>
    /// <param name="content">The document, from its beginning.</param>
    /// <param name="typed">True where what students typed stands in it.</param>
    /// <param name="mostDepth">How deep things may lie in each other.</param>
    /// <exception cref="JsonException">It is beyond a limit, or no JSON.</exception>
    public static void Check(Stream content, bool typed, int mostDepth) => new JsonLimits(content, typed).Run(mostDepth);

    private void Run(int mostDepth)
    {
        var state = new JsonReaderState(new JsonReaderOptions { MaxDepth = mostDepth });
        Fill();
        Take(_bytes.AsSpan(0, _filled) is [0xEF, 0xBB, 0xBF, ..] ? 3 : 0);
        while (true)
        {
            var reader = new Utf8JsonReader(_bytes.AsSpan(0, _filled), _isWhole, state);
            while (reader.Read())
                Check(ref reader);
            state = reader.CurrentState;
            var read = (int)reader.BytesConsumed;
            _lines += _bytes.AsSpan(0, read).Count((byte)'\n');
            Take(read);
            if (_isWhole)
                return;
            if (read == 0 && _filled == _bytes.Length)
                Grow();
            Fill();
        }
    }

    private void Take(int read)
    {
        _filled -= read;
        Buffer.BlockCopy(_bytes, read, _bytes, 0, _filled);
    }

    private void Grow()
    {
        if (_bytes.Length >= MostPiece)
            throw new JsonException($"a text is longer than {MostLetters} bytes", null, _lines, null);
        Array.Resize(ref _bytes, _bytes.Length * 2);
    }

    private void Fill()
    {
        var more = _content.ReadAtLeast(_bytes.AsSpan(_filled), _bytes.Length - _filled, throwOnEndOfStream: false);
        _isWhole = more < _bytes.Length - _filled;
        _filled += more;
    }

    private readonly void Check(ref Utf8JsonReader reader)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.StartArray or JsonTokenType.StartObject:
                _open.Push(reader.TokenType == JsonTokenType.StartArray ? null : new(StringComparer.OrdinalIgnoreCase));
                break;
            case JsonTokenType.EndArray or JsonTokenType.EndObject:
                _open.Pop();
                break;
            case JsonTokenType.Null when _open.TryPeek(out var names) && names is null:
                throw At(reader.TokenStartIndex, "null stands in a list");
            case JsonTokenType.Number
                when !reader.TryGetDouble(out var number)
                    || !double.IsFinite(number)
                    || (!_typed && Math.Abs(number) > GreatestNumber && !reader.TryGetUInt64(out _)):
                throw At(reader.TokenStartIndex, "a number is beyond reason");
            case JsonTokenType.String or JsonTokenType.PropertyName when reader.ValueSpan.Length > MostLetters:
                throw At(reader.TokenStartIndex, $"a text is longer than {MostLetters} bytes");
            case JsonTokenType.String when !IsText(ref reader, _typed):
                throw At(reader.TokenStartIndex, "a text holds characters that are none");
            case JsonTokenType.PropertyName when !IsText(ref reader, _typed):
                throw At(reader.TokenStartIndex, "a name holds characters that are none");
            case JsonTokenType.PropertyName when reader.GetString() is { } name && !_open.Peek()!.Add(name):
                throw At(reader.TokenStartIndex, "a name stands twice in one object");
        }
    }

    private static bool IsText(ref Utf8JsonReader reader, bool typed)
    {
        try
        {
            return reader.GetString() is { } text
                && (typed || !text.Any(letter => letter is < ' ' and not '\n' and not '\t' and not '\r' or '\uFFFE' or '\uFFFF'));
        }
        catch (InvalidOperationException)
        {
            return false;
        }
    }

    private readonly JsonException At(long place, string what) =>
        new(what, null, _lines + _bytes.AsSpan(0, (int)place).Count((byte)'\n'), null);
}
