using CsCheck;
using Seedfall.Exchange.Ground;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Walks;

namespace Seedfall.Exchange.Tests.Ground;

/// <summary>Outlines anywhere cool-season lawns grow: stars round a center with a smaller star as a hole, and walks.</summary>
internal static class AnyOutline
{
    private static readonly string?[] Names = [null, "Front", "Vorgarten – süd", "a<b> & \"c\"", "芝生"];

    internal static readonly Gen<ImportedOutline> One =
        from latitude in Gen.Double[-60, 66]
        from longitude in Gen.Double[-180, 180]
        from radiiM in Gen.Double[5, 60].Array[3, 40]
        from hole in Gen.Bool
        from backward in Gen.Bool
        from name in Gen.Int[0, 4]
        select Make(new(latitude, longitude), radiiM, hole, backward, Names[name]);

    internal static readonly Gen<ImportedOutline[]> Some = One.Array[1, 5];

    internal static readonly Gen<ImportedWalk> Walk =
        from latitude in Gen.Double[-60, 66]
        from longitude in Gen.Double[-179, 179]
        from steps in Gen.Select(Gen.Double[-1e-4, 1e-4], Gen.Double[-1e-4, 1e-4], Gen.Int[1, 15], Gen.Bool).Array[2, 60]
        select new ImportedWalk("Edge", [.. steps.Select((s, i) => new TrackFix(
            new(Math.Round(latitude + s.Item1, 7), Math.Round(longitude + s.Item2, 7)),
            s.Item4 ? s.Item3 : null,
            new DateTimeOffset(2026, 8, 20, 14, 0, 0, TimeSpan.Zero).AddSeconds(i)))]);

    private static ImportedOutline Make(GeoPoint center, double[] radiiM, bool hole, bool backward, string? name)
    {
        var plane = new LocalPlane(center);
        return new(name, Ring(plane, radiiM, 1.0, backward), hole ? [Ring(plane, radiiM, 0.3, !backward)] : []);
    }

    private static IReadOnlyList<GeoPoint> Ring(LocalPlane plane, double[] radiiM, double scale, bool backward)
    {
        var ring = radiiM.Select((r, i) => plane.ToEarth(new GroundPoint(scale * r * Math.Cos(2 * Math.PI * i / radiiM.Length), scale * r * Math.Sin(2 * Math.PI * i / radiiM.Length))));
        return [.. backward ? ring.Reverse() : ring];
    }
}
