namespace Seedfall.Web.Tests;

/// <summary>An invented lawn that says everything about its water.</summary>
internal static class SupplyText
{
    public const string Lawn = """
        {
          "format": "seedfall-lawn/1",
          "id": "supply",
          "name": "Two taps and a well",
          "place": { "latitude": 42.3, "longitude": -84.1, "elevation": "920 ft" },
          "patches": [
            { "id": "front", "name": "Front", "shape": { "area": "2400 sq ft" }, "grasses": ["tall-fescue"] },
            { "id": "back", "name": "Back", "shape": { "area": "180 m2" }, "grasses": ["tall-fescue"] }
          ],
          "water": {
            "bucket": { "volume": "5 gal", "time": "55 s" },
            "pressure": { "still": "61.5 psi", "running": "2.4 bar", "at": "4.25 gpm" },
            "otherTaps": [{ "name": "garage", "flow": "4.5 gpm" }, { "name": "back wall", "flow": "13 L/min" }],
            "together": "8.2 gpm",
            "well": { "stored": "85 gal", "recovery": "11 L/min" },
            "reserved": "1.5 gpm",
            "household": [{ "from": "06:30", "to": "07:30", "flow": "2 gpm" }, { "from": "19:00", "to": "21:00", "flow": "5.5 L/min" }],
            "householdPerMonth": "23000 L",
            "sets": [
              { "name": "Front rotors", "patches": ["front"], "kind": "rotor", "hose": { "length": "75 ft", "bore": "0.625 in" }, "nozzle": { "flow": "3.1 gpm", "at": "45 psi" }, "tap": "garage", "timer": "box" },
              { "name": "Back", "patches": ["back"], "hose": { "length": "15 m", "bore": "1.3 cm" }, "nozzle": { "flow": "9 L/min", "at": "250 kPa" }, "timer": "hose timer", "cans": { "readings": ["0.21 in", "0.18 in", "0.25 in", "0.12 in"], "time": "15 min" } }
            ],
            "timers": [{ "name": "box", "programs": 3, "startsPerDay": 4 }, { "name": "hose timer", "programs": 1, "startsPerDay": 12 }],
            "meter": [{ "upTo": "4000 gal", "perThousandGallons": 3.1031 }, { "upTo": "10000 gal", "perThousandGallons": 5.25 }, { "perThousandGallons": 9.00 }],
            "timer": true
          }
        }
        """;
}
