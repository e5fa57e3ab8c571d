namespace Seedfall.Exchange.Tests.Support;

internal static class LawnText
{
    /// <summary>The least a lawn file must say.</summary>
    public const string Least = """
        {
          "format": "seedfall-lawn/1",
          "id": "corner",
          "name": "The corner lawn",
          "place": { "latitude": 43.1, "longitude": -89.3, "elevation": "860 ft" },
          "patches": [
            { "id": "front", "name": "Front", "shape": { "area": "2400 sq ft" }, "grasses": ["tall-fescue"] }
          ]
        }
        """;
}
