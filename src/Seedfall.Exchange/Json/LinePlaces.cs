namespace Seedfall.Exchange.Json;

/// <summary>Turns byte offsets, asked for in ascending order, into lines and columns from 1.</summary>
internal ref struct LinePlaces(ReadOnlySpan<byte> text)
{
    private readonly ReadOnlySpan<byte> _text = text;
    private int _line = 1;
    private int _lineStart;
    private int _seen;

    public (int Line, int Column) At(int offset)
    {
        for (; _seen < offset; _seen++)
        {
            if (_text[_seen] == (byte)'\n')
            {
                _line++;
                _lineStart = _seen + 1;
            }
        }

        return (_line, offset - _lineStart + 1);
    }
}
