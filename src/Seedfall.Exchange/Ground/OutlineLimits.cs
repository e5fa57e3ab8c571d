namespace Seedfall.Exchange.Ground;

/// <summary>What a file of outlines may hold; more is refused before it is kept.</summary>
internal static class OutlineLimits
{
    internal const int MostBytes = 16 << 20;
    internal const int MostRingPoints = 4000;
    internal const int MostPoints = 60_000;
    internal const int MostShapes = 500;
    internal const int MostHoles = 100;
    internal const int MostHolePoints = 8000;
    internal const int MostJsonDepth = 32;
    internal const int MostXmlDepth = 48;
    internal const int MostTokenCharacters = 100;
    internal const int MostZipEntries = 20;
    internal const int MostZipRatio = 200;
    internal const double LeastAreaM2 = 0.05;
    internal const double MostAreaM2 = 1.0e6;
}
