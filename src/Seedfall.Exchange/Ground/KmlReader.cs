using System.Globalization;
using System.Xml;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Walks;

namespace Seedfall.Exchange.Ground;

/// <summary>KML 2.2: polygons with inner boundaries, lines and rings, tracks. Links are never followed; points are passed over.</summary>
internal sealed class KmlReader(OutlineGather gather, XmlReader reader) : XmlOutlineReader(reader)
{
    private readonly KmlCoordinates _coordinates = new(gather);
    private readonly List<IReadOnlyList<GeoPoint>> _holes = [];
    private readonly List<DateTimeOffset> _whens = [];
    private readonly List<GeoPoint> _coords = [];
    private IReadOnlyList<GeoPoint>? _outer;
    private string? _name;
    private Spot _start;

    protected override void Start(string element)
    {
        switch (element)
        {
            case "Placemark":
                _name = null;
                break;
            case "Polygon":
                (_outer, _start) = (null, XmlWalk.At(Node));
                _holes.Clear();
                break;
            case "Track":
                _start = XmlWalk.At(Node);
                _whens.Clear();
                _coords.Clear();
                break;
            case "NetworkLink":
                gather.Remark("a link to another file was passed over; links are never followed");
                break;
            case "Point":
                gather.Remark("a point was passed over");
                break;
        }
    }

    protected override void Text(string parent)
    {
        switch (Innermost)
        {
            case "name" when parent == "Placemark":
                _name = Node.Value;
                break;
            case "coordinates" when parent is "LinearRing" or "LineString":
                Ring(parent);
                break;
            case "when" when parent == "Track":
                _whens.Add(DateTimeOffset.TryParse(Node.Value, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out var time)
                    ? time
                    : throw new RefusedException(XmlWalk.At(Node), "a time like 2026-08-20T14:03:11Z", $"\"{GeoJsonReader.Cut(Node.Value)}\""));
                Most(_whens.Count);
                break;
            case "coord" when parent == "Track":
                TrackPoint();
                break;
        }
    }

    private void Ring(string parent)
    {
        var at = XmlWalk.At(Node);
        var points = _coordinates.Read(Node);
        if (!Within("Polygon"))
        {
            gather.Outline(_name, gather.Ring(points, parent == "LinearRing", at), [], at);
            return;
        }

        var ring = gather.Ring(points, closedByRule: true, at);
        if (Within("innerBoundaryIs"))
        {
            _holes.Add(ring);
            if (_holes.Count > OutlineLimits.MostHoles)
            {
                throw new RefusedException(at, $"at most {OutlineLimits.MostHoles} holes", "more");
            }
        }
        else if (_outer is null)
        {
            _outer = ring;
        }
        else
        {
            throw new RefusedException(at, "a polygon with one outer boundary", "a second one");
        }
    }

    /// <summary>A track's point has blanks where a tuple has commas.</summary>
    private void TrackPoint()
    {
        var (at, text) = (XmlWalk.At(Node), Node.Value);
        var parts = text.Length > OutlineLimits.MostTokenCharacters ? [] : text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length is < 2 or > 3 || Numbers.Finite(parts[0]) is not { } longitude || Numbers.Finite(parts[1]) is not { } latitude)
        {
            throw new RefusedException(at, "a track point like -84.12 42.31 0", $"\"{GeoJsonReader.Cut(text)}\"");
        }

        _coords.Add(gather.Point(longitude, latitude, at));
    }

    private void Most(int count)
    {
        if (count > OutlineLimits.MostPoints)
        {
            throw new RefusedException(XmlWalk.At(Node), $"at most {OutlineLimits.MostPoints:N0} times", "more");
        }
    }

    protected override void End(string element)
    {
        switch (element)
        {
            case "Polygon":
                gather.Outline(_name, _outer ?? throw new RefusedException(_start, "a polygon with an outer boundary", "none"), [.. _holes], _start);
                _outer = null;
                break;
            case "Track" when _coords.Count > 0:
                if (_whens.Count != 0 && _whens.Count != _coords.Count)
                {
                    throw new RefusedException(_start, "a track with as many times as points", $"{_whens.Count} times and {_coords.Count} points");
                }

                gather.Walk(_name, [.. _coords.Select((p, i) => new TrackFix(p, null, _whens.Count > 0 ? _whens[i] : null))], _start);
                break;
        }
    }
}
