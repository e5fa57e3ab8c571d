using Seedfall.Engine.Weather;
using Seedfall.Weather;

namespace Seedfall.Fit;

/// <summary>The stations to fit on; every one must be readable.</summary>
internal static class StationFiles
{
    internal static IReadOnlyList<WeatherHistory> Read(string folder) =>
        [.. StationFolders.Read(folder).Select(s => s.History ?? throw new InvalidDataException($"{s.Name}: {string.Join("; ", s.Problems)}"))];
}
