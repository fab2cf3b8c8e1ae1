using System.Globalization;
using System.Text;

namespace ClassKit.Cli.Reporting;

/// <summary>Breaks lines between words at a terminal's width. A line is written as soon as it ends, what has no end yet when flushed.</summary>
internal sealed class FoldedWriter(TextWriter terminal, int width) : TextWriter(CultureInfo.InvariantCulture)
{
    private readonly Lock _writing = new();
    private readonly StringBuilder _line = new();

    public override Encoding Encoding => terminal.Encoding;

    public override void Write(char value)
    {
        lock (_writing)
        {
            if (value == '\n')
                End();
            else if (value != '\r')
                _line.Append(value);
        }
    }

    public override void Write(string? value)
    {
        lock (_writing)
        {
            foreach (var character in value ?? "")
                Write(character);
        }
    }

    public override void WriteLine()
    {
        lock (_writing)
            End();
    }

    public override void WriteLine(string? value)
    {
        lock (_writing)
        {
            Write(value);
            End();
        }
    }

    public override void Flush()
    {
        lock (_writing)
        {
            terminal.Write(Folded());
            terminal.Flush();
        }
    }

    private void End() => terminal.WriteLine(Folded());

    private string Folded()
    {
        var rows = string.Join(terminal.NewLine, FoldedLine.Of(_line.ToString(), width));
        _line.Clear();
        return rows;
    }
}
