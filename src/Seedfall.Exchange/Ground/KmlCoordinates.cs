using System.Xml;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Ground;

/// <summary>The text of a KML coordinates element, tuple by tuple: <c>longitude,latitude[,height]</c> with blanks between.</summary>
internal sealed class KmlCoordinates(OutlineGather gather)
{
    private readonly char[] _chunk = new char[4096];
    private readonly char[] _tuple = new char[OutlineLimits.MostTokenCharacters];
    private int _length;
    private Spot _at;

    /// <summary>The points of the text node the reader stands on; never kept as one string.</summary>
    internal List<GeoPoint> Read(XmlReader reader)
    {
        var points = new List<GeoPoint>();
        var (line, column) = (XmlWalk.At(reader).Line, XmlWalk.At(reader).Column);
        _length = 0;
        int count;
        while ((count = reader.ReadValueChunk(_chunk, 0, _chunk.Length)) > 0)
        {
            foreach (var c in _chunk.AsSpan(0, count))
            {
                Take(c, new(line, column), points);
                (line, column) = c == '\n' ? (line + 1, 1) : (line, column + 1);
            }
        }

        Finish(points);
        return points;
    }

    private void Take(char c, Spot at, List<GeoPoint> points)
    {
        if (char.IsWhiteSpace(c))
        {
            Finish(points);
            return;
        }

        _at = _length == 0 ? at : _at;
        if (_length == _tuple.Length)
        {
            throw new RefusedException(_at, "tuples like -84.12,42.31,0 with blanks between them", "one without an end");
        }

        _tuple[_length++] = c;
    }

    private void Finish(List<GeoPoint> points)
    {
        if (_length == 0)
        {
            return;
        }

        var tuple = _tuple.AsSpan(0, _length);
        _length = 0;
        Span<Range> parts = stackalloc Range[5];
        var count = tuple.Split(parts, ',');
        if (count is < 2 or > 3 || Numbers.Finite(tuple[parts[0]]) is not { } longitude || Numbers.Finite(tuple[parts[1]]) is not { } latitude)
        {
            throw new RefusedException(_at, "tuples like -84.12,42.31,0: longitude,latitude,height with no blank inside", $"\"{GeoJsonReader.Cut(tuple.ToString())}\"");
        }

        points.Add(gather.Point(longitude, latitude, _at));
        OutlineGather.Grow(points.Count - 1, _at);
    }
}
