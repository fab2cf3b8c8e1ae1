using System.IO.Hashing;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Workbooks.Returned.Packages;

/// <summary>
/// A part being unpacked: counts what comes out, against bombs, and checks it against the archive's checksum, against damage that still
/// reads as XML.
/// </summary>
internal sealed class PartStream : Stream
{
    private readonly string _part;
    private readonly Stream _inner;
    private readonly long _packed;
    private readonly uint _checksum;
    private readonly ReadLimits _limits;
    private readonly Action<int> _count;
    private readonly Crc32 _crc = new();
    private long _unpacked;
    private long _sinceMark;

    public PartStream(string part, Stream inner, long packed, uint checksum, ReadLimits limits, Action<int> count)
    {
        _part = part;
        _inner = inner;
        _packed = packed;
        _checksum = checksum;
        _limits = limits;
        _count = count;
    }

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override int Read(Span<byte> buffer)
    {
        var read = _inner.Read(buffer);
        _unpacked += read;
        _count(read);
        if (_unpacked > _limits.RatioFromBytes && _unpacked / _limits.Ratio > _packed)
            throw RefusalException.TooLarge(Excess.PackingRatio, _limits.Ratio, _part);
        CheckMarks(buffer[..read]);
        _crc.Append(buffer[..read]);
        return read;
    }

    /// <summary>A reader of XML keeps an attribute, and much of a text, until it ends.</summary>
    private void CheckMarks(ReadOnlySpan<byte> read)
    {
        var mark = read.LastIndexOf((byte)'<');
        _sinceMark = mark < 0 ? _sinceMark + read.Length : read.Length - mark;
        if (_sinceMark > _limits.ElementBytes)
            throw RefusalException.TooLarge(Excess.ElementMegabytes, _limits.ElementBytes / 1024 / 1024, _part);
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    /// <summary>Reads what is left and compares the checksum of all that was read.</summary>
    public void Finish()
    {
        Span<byte> rest = stackalloc byte[1024];
        while (Read(rest) > 0) { }

        if (_crc.GetCurrentHashAsUInt32() != _checksum)
            throw RefusalException.Damaged(new Damage.Checksum(_part));
    }

    public override void Flush() { }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            _inner.Dispose();
        base.Dispose(disposing);
    }
}
