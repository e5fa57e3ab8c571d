using System.Globalization;
using System.Text.Json;
using Seedfall.Engine.Weather;

namespace Seedfall.Weather.Soils;

/// <summary>What is asked of the soil survey of the United States (Soil Data Access, tabular service).</summary>
public static class SoilDataQuery
{
    /// <summary>The one address asked.</summary>
    public static Uri Address { get; } = new("https://sdmdataaccess.sc.egov.usda.gov/tabular/post.rest");

    /// <summary>Decimals of the coordinates sent, 0.0001 degrees is about 11 m: map units are larger, and no front door is given away.</summary>
    private const int Decimals = 4;

    private const string Columns =
        "mu.mukey, mu.muname, co.cokey, co.compname, co.comppct_r, co.compkind, co.drainagecl, co.hydgrp, co.slope_r, " +
        "ch.hzdept_r, ch.hzdepb_r, ch.sandtotal_r, ch.silttotal_r, ch.claytotal_r, ch.om_r, ch.ph1to1h2o_r, ch.awc_r, ch.ksat_r";

    /// <summary>True where the survey may know the ground: the states, Puerto Rico and the Pacific islands lie within.</summary>
    public static bool MayKnow(Place place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return place.LatitudeDeg is >= -15.0 and <= 72.0 && place.LongitudeDeg is <= -64.0 or >= 130.0;
    }

    /// <summary>The query. Only the place's own numbers enter it, in digits, sign and point.</summary>
    public static string Text(Place place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return $"SELECT {Columns} FROM mapunit mu JOIN component co ON co.mukey = mu.mukey LEFT JOIN chorizon ch ON ch.cokey = co.cokey " +
            $"WHERE mu.mukey IN (SELECT mukey FROM SDA_Get_Mukey_from_intersection_with_WktWgs84('point({Number(place.LongitudeDeg)} {Number(place.LatitudeDeg)})')) " +
            "ORDER BY co.comppct_r DESC, co.cokey, ch.hzdept_r";
    }

    /// <summary>The body of the request, JSON in UTF-8.</summary>
    public static byte[] Body(Place place) =>
        JsonSerializer.SerializeToUtf8Bytes(new Dictionary<string, string> { ["format"] = "JSON+COLUMNNAME+METADATA", ["query"] = Text(place) });

    private static string Number(double degrees) => Math.Round(degrees, Decimals).ToString("0.####", CultureInfo.InvariantCulture);
}
