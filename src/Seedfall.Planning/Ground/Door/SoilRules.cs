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
        found.Range("soil.bufferPh", soil.BufferPh, 4.0, 9.0, "");
        found.Range("soil.calcium", soil.CalciumPpm, 0.0, 50_000.0, "ppm");
        found.Range("soil.magnesium", soil.MagnesiumPpm, 0.0, 10_000.0, "ppm");
        found.Range("soil.cationExchange", soil.CationExchange, 0.0, 200.0, "meq/100 g");
        found.Range("soil.salts", soil.SaltsDsPerM, 0.0, 100.0, "dS/m");
        found.Range("soil.labLime", soil.LabLime?.PoundsPerThousandSquareFeet, 0.0, 500.0, "lb/M");
        found.Date("soil.testDate", soil.TestDate);
        found.Share("soil.organicMatter", soil.OrganicMatter);
    }
}
