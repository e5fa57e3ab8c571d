using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Tests.Plan;

/// <summary>Invented lawns for tests of the whole plan.</summary>
internal static class Lawns
{
    /// <summary>Only what is required.</summary>
    internal static Lawn Bare(Place place) => new()
    {
        Id = "bare",
        Name = "Bare facts",
        Place = place,
        Patches = [new Patch { Id = "front", Name = "Front", Shape = new PatchShape.Typed(Area.FromSquareFeet(2000)), Grasses = [GrassSpecies.TallFescue] }],
    };

    /// <summary>Most things known, good water.</summary>
    internal static Lawn Known(Place place) => Bare(place) with
    {
        Id = "known",
        Name = "Known lawn",
        TimeZone = place.LatitudeDeg < 0.0 ? "Pacific/Auckland" : "America/Chicago",
        RulePack = "general",
        Patches =
        [
            new Patch
            {
                Id = "front",
                Name = "Front",
                Shape = new PatchShape.Rectangle(Length.FromFeet(50), Length.FromFeet(40)),
                Grasses = [GrassSpecies.KentuckyBluegrass, GrassSpecies.PerennialRyegrass],
                LivingCover = Fraction.FromPercent(55),
                Cause = DamageCause.Drought,
                CauseCured = true,
                SunHours = 8,
                SlopePercent = 3,
                Thatch = Depth.FromInches(0.3),
                GrubsPerSquareFoot = 1,
                WeedCover = Fraction.FromPercent(8),
                Dormant = false,
            },
        ],
        Soil = new SoilFacts { Texture = SoilTexture.Loam, Ph = 6.5, PhosphorusPpm = 30, PotassiumPpm = 120, TestDate = new DateOnly(2022, 4, 1) },
        Water = new WaterSupply
        {
            Bucket = new BucketTest(Volume.FromGallons(5), 38),
            Timer = true,
            Sets = [new SprinklerSet { Name = "Front heads", PatchIds = ["front"], Kind = SprinklerKind.FixedSpray, Rate = PrecipitationRate.FromInchesPerHour(1.2), Flow = FlowRate.FromGallonsPerMinute(7.5) }],
        },
        Sprayer = new SprayerFacts { Kind = SprayerKind.Backpack, Tank = Volume.FromGallons(4), Carrier = VolumePerArea.FromGallonsPerThousandSquareFeet(1.5) },
        PreEmergent = new HerbicideLabel
        {
            ActiveIngredient = "mesotrione",
            Strength = ProductStrength.PerLiter(0.479),
            Rate = VolumePerArea.FromFluidOuncesPerAcre(5),
            MaximumRate = VolumePerArea.FromFluidOuncesPerAcre(8),
            MaximumPerYear = VolumePerArea.FromFluidOuncesPerAcre(16),
            LabeledAtSeeding = [GrassSpecies.KentuckyBluegrass, GrassSpecies.TallFescue, GrassSpecies.PerennialRyegrass],
            SeedingIntervalDays = 0,
        },
    };
}
