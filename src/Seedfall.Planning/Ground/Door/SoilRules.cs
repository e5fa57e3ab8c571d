namespace Seedfall.Planning.Ground.Door;

/// <summary>Soil test values.</summary>
internal static class SoilRules
{
    internal static void Check(Lawn lawn, Findings found)
    {
        if (lawn.Soil is not { } soil)
        {
            return;
        }

        found.Range("soil.ph", soil.Ph, 3.0, 10.0, "");
        found.Range("soil.phosphorus", soil.PhosphorusPpm, 0.0, 2000.0, "ppm");
        found.Range("soil.potassium", soil.PotassiumPpm, 0.0, 5000.0, "ppm");
        found.Date("soil.testDate", soil.TestDate);
        found.Share("soil.organicMatter", soil.OrganicMatter);
    }
}
