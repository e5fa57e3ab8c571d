using Seedfall.Engine.Units;
using Seedfall.Planning.Calibration.Spreader;

namespace Seedfall.Planning.Tests.Calibration;

/// <summary>A spreader with a plain scale, and runs of it.</summary>
internal static class Spreaders
{
    internal static readonly DateTimeOffset Morning = new(2026, 9, 8, 8, 0, 0, TimeSpan.FromHours(-5));

    internal static KeptSpreader With(params SpreaderEntry[] entries) => new() { Id = "push", Name = "push", Scale = new(0.0, 10.0, 0.25), Entries = entries };

    internal static SpreaderEntry.Run Run(int number, double opening, double poundsPerThousand, SpreadMaterial material = SpreadMaterial.CoarseSeed, double thousands = 4.0, string? job = null, int day = 0) => new()
    {
        Id = new Guid(number, 0, 0, new byte[8]),
        At = Morning.AddDays(day).AddMinutes(number),
        Material = material,
        What = material.ToString(),
        Opening = opening,
        Covered = Area.FromThousandSquareFeet(thousands),
        Used = Mass.FromPounds(poundsPerThousand * thousands),
        LawnId = job is null ? null : "lawn",
        JobId = job,
    };

    internal static RunAhead Ahead(SpreadMaterial material = SpreadMaterial.CoarseSeed, int day = 0) => new(material, material.ToString(), DateOnly.FromDateTime(Morning.AddDays(day).DateTime));

    internal static MassPerArea Rate(double poundsPerThousand) => MassPerArea.FromPoundsPerThousandSquareFeet(poundsPerThousand);
}
