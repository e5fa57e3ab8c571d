using System.Globalization;
using System.Xml;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Walks;

namespace Seedfall.Exchange.Ground;

/// <summary>
/// GPX 1.0 and 1.1: tracks with times are walks, tracks without and routes are outlines; waypoints are passed over. The
/// segments of a track follow each other.
/// </summary>
internal sealed class GpxReader(OutlineGather gather, XmlReader reader) : XmlOutlineReader(reader)
{
    /// <summary>Namespace of the accuracy Seedfall writes beside a fix, m.</summary>
    internal const string OwnNamespace = "urn:seedfall:gpx:1";

    /// <summary>Meters of accuracy per unit of horizontal dilution of precision, where a fix carries that and nothing better: common practice.</summary>
    private const double AccuracyPerDilutionM = 4.0;

    private const string Own = "own:";

    private readonly List<TrackFix> _fixes = [];
    private string? _name;
    private Spot _start;
    private GeoPoint? _at;
    private double? _accuracyM;
    private double? _dilution;
    private DateTimeOffset? _time;

    protected override string NameOf(XmlReader at) => at.NamespaceURI == OwnNamespace ? Own + at.LocalName : at.LocalName;

    protected override void Start(string element)
    {
        switch (element)
        {
            case "trk" or "rte":
                _fixes.Clear();
                (_name, _start) = (null, XmlWalk.At(Node));
                break;
            case "trkpt" or "rtept":
                var at = XmlWalk.At(Node);
                _at = gather.Point(Degrees("lon", at), Degrees("lat", at), at);
                (_accuracyM, _dilution, _time) = (null, null, null);
                break;
            case "wpt":
                gather.Remark("a waypoint was passed over");
                break;
        }
    }

    private double Degrees(string attribute, Spot at)
    {
        var text = Node.GetAttribute(attribute) ?? throw new RefusedException(at, $"a point with {attribute}", "a point without it");
        return Numbers.Finite(text) ?? throw new RefusedException(at, $"degrees as a number in {attribute}", $"\"{GeoJsonReader.Cut(text)}\"");
    }

    protected override void Text(string parent)
    {
        switch (Innermost)
        {
            case "name" when parent is "trk" or "rte":
                _name = Node.Value;
                break;
            case "time" when parent is "trkpt":
                _time = DateTimeOffset.TryParse(Node.Value, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out var time)
                    ? time
                    : throw new RefusedException(XmlWalk.At(Node), "a time like 2026-08-20T14:03:11Z", $"\"{GeoJsonReader.Cut(Node.Value)}\"");
                break;
            case "hdop" when parent is "trkpt":
                _dilution = Positive();
                break;
            case Own + "accuracyM":
                _accuracyM = Positive();
                break;
        }
    }

    private double Positive() => Numbers.Finite(Node.Value) is > 0.0 and var value
        ? value
        : throw new RefusedException(XmlWalk.At(Node), "a number above 0", $"\"{GeoJsonReader.Cut(Node.Value)}\"");

    protected override void End(string element)
    {
        switch (element)
        {
            case "trkpt" or "rtept" when _at is { } at:
                if (_accuracyM is null && _dilution is not null)
                {
                    gather.Remark("the accuracy was taken from the dilution of precision, 4 m for each unit");
                }

                _fixes.Add(new(at, _accuracyM ?? _dilution * AccuracyPerDilutionM, _time));
                _at = null;
                break;
            case "trk" when _fixes.Exists(f => f.Time is not null):
                gather.Walk(_name, [.. _fixes], _start);
                break;
            case "trk" or "rte" when _fixes.Count > 0:
                OutlineGather.Grow(_fixes.Count, _start);
                gather.Outline(_name, gather.Ring([.. _fixes.Select(f => f.At)], closedByRule: false, _start), [], _start);
                break;
        }
    }
}

/// <summary>Numbers in XML text.</summary>
internal static class Numbers
{
    internal static double? Finite(ReadOnlySpan<char> text) =>
        double.TryParse(text.Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : null;
}
