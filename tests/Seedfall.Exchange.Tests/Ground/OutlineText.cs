using System.IO.Compression;
using System.Text;

namespace Seedfall.Exchange.Tests.Ground;

/// <summary>Small files of an invented lawn.</summary>
internal static class OutlineText
{
    internal const string GeoJson =
        """
        {
          "type": "FeatureCollection",
          "features": [
            { "type": "Feature", "properties": { "name": "Front", "owner": { "name": "no" } },
              "geometry": { "type": "Polygon", "coordinates": [
                [[-84.1200, 42.3100, 281.2], [-84.1197, 42.3100], [-84.1197, 42.3102], [-84.1200, 42.3102], [-84.1200, 42.3100]],
                [[-84.1199, 42.31005], [-84.1199, 42.3101], [-84.1198, 42.3101], [-84.1199, 42.31005]]] } }
          ]
        }
        """;

    internal const string Gpx =
        """
        <?xml version="1.0" encoding="UTF-8"?>
        <gpx version="1.1" creator="example" xmlns="http://www.topografix.com/GPX/1/1">
        <wpt lat="42.31" lon="-84.12"><name>Tap</name></wpt>
        <trk><name>Back lawn edge</name><trkseg>
        <trkpt lat="42.310012" lon="-84.120034"><ele>281.2</ele><time>2026-08-20T14:03:11Z</time><hdop>1.5</hdop></trkpt>
        <trkpt lat="42.310145" lon="-84.120021"><time>2026-08-20T14:03:24Z</time></trkpt></trkseg></trk></gpx>
        """;

    internal const string Kml =
        """
        <?xml version="1.0" encoding="UTF-8"?>
        <kml xmlns="http://www.opengis.net/kml/2.2"><Document><Placemark><name>Front &amp; side</name>
        <MultiGeometry><Polygon><outerBoundaryIs><LinearRing><coordinates>
          -84.1200,42.3100,0 -84.1197,42.3100,0
          -84.1197,42.3102,0 -84.1200,42.3102,0 -84.1200,42.3100,0
        </coordinates></LinearRing></outerBoundaryIs>
        <innerBoundaryIs><LinearRing><coordinates>-84.1199,42.31005 -84.1199,42.3101 -84.1198,42.3101 -84.1199,42.31005</coordinates></LinearRing></innerBoundaryIs>
        </Polygon><LineString><coordinates>-84.1190,42.3100 -84.1188,42.3100 -84.1188,42.3101</coordinates></LineString></MultiGeometry></Placemark></Document></kml>
        """;

    internal static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    internal static byte[] Zip(params (string Name, byte[] Bytes)[] entries)
    {
        var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, bytes) in entries)
            {
                using var inside = archive.CreateEntry(name).Open();
                inside.Write(bytes);
            }
        }

        return zip.ToArray();
    }
}
