using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Tests.Ground;

/// <summary>Invented lawns for tests.</summary>
internal static class Some
{
    internal static readonly DateOnly SeedDown = new(2025, 9, 8);
    internal static readonly DateOnly LateFeed = new(2025, 11, 5);

    internal static Choices Choices { get; } = new() { Season = 2025, SeedDown = SeedDown };

    internal static Patch Patch(string id, double squareFeet, double? cover = 0.6, params GrassSpecies[] grasses) => new()
    {
        Id = id,
        Name = id,
        Shape = new PatchShape.Typed(Area.FromSquareFeet(squareFeet)),
        Grasses = grasses.Length == 0 ? [GrassSpecies.KentuckyBluegrass] : grasses,
        LivingCover = cover is { } c ? Fraction.Of(c) : null,
        SunHours = 8,
        SlopePercent = 0,
    };

    internal static Lawn Lawn(params Patch[] patches) => new()
    {
        Id = "some",
        Name = "Some lawn",
        Place = new Place(40.4, -86.9, 190),
        Patches = patches.Length == 0 ? [Patch("front", 7500)] : patches,
    };

    internal static IReadOnlyList<PatchSummary> Summaries(Lawn lawn) => PatchGround.Summarize(lawn).Value!;
}
