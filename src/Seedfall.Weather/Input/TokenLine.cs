namespace Seedfall.Weather.Input;

/// <summary>A line cut at blanks, without copying.</summary>
internal ref struct TokenLine
{
    private readonly ReadOnlySpan<byte> _line;
    private readonly Span<Range> _ranges;

    /// <param name="line">The text.</param>
    /// <param name="room">Room for the tokens; more tokens than fit are counted only up to the room.</param>
    internal TokenLine(ReadOnlySpan<byte> line, Span<Range> room)
    {
        _line = line;
        _ranges = room;
        var at = 0;
        while (Count < room.Length)
        {
            while (at < line.Length && line[at] is (byte)' ' or (byte)'\t')
            {
                at++;
            }

            if (at == line.Length)
            {
                break;
            }

            var start = at;
            while (at < line.Length && line[at] is not ((byte)' ' or (byte)'\t'))
            {
                at++;
            }

            room[Count++] = start..at;
        }
    }

    internal int Count { get; private set; }

    internal readonly ReadOnlySpan<byte> this[int i] => _line[_ranges[i]];

    /// <summary>Position of the token's first character, from 1.</summary>
    internal readonly int Column(int i) => _ranges[i].Start.Value + 1;
}
